import { roundTo } from '@evenfall/clinical';

/** What an attribute holds; null leaves it out. */
export type Attributes = { readonly [name: string]: string | number | null };

/** A piece of SVG, already text. */
export type Svg = string;

/** Text as it stands between tags and in quotes. */
export function escaped(text: string): string {
  return text
    .replaceAll('&', '&amp;')
    .replaceAll('<', '&lt;')
    .replaceAll('>', '&gt;')
    .replaceAll('"', '&quot;');
}

/** Decimals of a coordinate: a hundredth of a pixel is less than any screen or printer shows. */
const COORDINATE_DECIMALS = 2;

/** One element. Numbers are written to a hundredth; one that is none is a fault of the program. */
export function element(name: string, attributes: Attributes, children: readonly Svg[] = []): Svg {
  const written = Object.entries(attributes)
    .filter(([, value]) => value !== null)
    .map(
      ([key, value]) => ` ${key}="${typeof value === 'number' ? coordinate(value) : escaped(value ?? '')}"`,
    )
    .join('');
  return children.length === 0 ? `<${name}${written}/>` : `<${name}${written}>${children.join('')}</${name}>`;
}

/** A coordinate as it is written. Errors: throws where it is no number, so that nothing is drawn at a place nobody can see. */
export function coordinate(value: number): string {
  if (!Number.isFinite(value)) throw new Error(`a coordinate that is ${value}`);
  return String(roundTo(value, COORDINATE_DECIMALS));
}

/** A path through points, broken where a point is null. */
export function pathThrough(points: readonly (readonly [x: number, y: number] | null)[]): string {
  let isBroken = true;
  const steps: string[] = [];
  for (const point of points) {
    if (point !== null) steps.push(`${isBroken ? 'M' : 'L'}${coordinate(point[0])} ${coordinate(point[1])}`);
    isBroken = point === null;
  }
  return steps.join('');
}
