/** Numbers of a reading as they were written, before anything is asked of them. */
export type WrittenPressure = {
  readonly systolic: number;
  readonly diastolic: number;
  readonly pulse: number | null;
};

const NUMBER = String.raw`\d{1,3}(?:[.,]\d+)?`;
const PRESSURE = new RegExp(
  String.raw`^(${NUMBER})\s?[/\\]\s?(${NUMBER})(?:\s?mm\s?hg)?(?:[\s,;/x@p:-]+(\d{2,3})(?:\s?(?:bpm|/min))?)?$`,
  'i',
);

/** `142/88`, `142/88 74`, `142/88, 74`. Null where a cell is nothing like it. */
export function pressureOf(cell: string): WrittenPressure | null {
  if (!cell.includes('/') && !cell.includes('\\')) return null;
  const found = PRESSURE.exec(cell);
  if (found === null) return null;
  const [, systolic = '', diastolic = '', pulse] = found;
  return {
    systolic: asNumber(systolic),
    diastolic: asNumber(diastolic),
    pulse: pulse === undefined ? null : Number(pulse),
  };
}

const PLAIN = /^(\d{1,4}(?:[.,]\d+)?)(?:\s?(?:mm\s?hg|k\s?pa|bpm|\/\s?min|lpm))?$/i;

/** A number with a point or a comma, and its unit. NaN where it is none. */
export function numberOf(cell: string): number {
  // Nearly every cell is two or three digits.
  const n = cell.length;
  if (n === 2 || n === 3) {
    const [a, b] = [cell.charCodeAt(0) - 48, cell.charCodeAt(1) - 48];
    const c = n === 3 ? cell.charCodeAt(2) - 48 : 0;
    if (a >= 0 && a <= 9 && b >= 0 && b <= 9 && c >= 0 && c <= 9) {
      return n === 2 ? a * 10 + b : a * 100 + b * 10 + c;
    }
  }
  const found = PLAIN.exec(cell);
  return found === null ? Number.NaN : asNumber(found[1] as string);
}

function asNumber(text: string): number {
  return Number(text.replace(',', '.'));
}
