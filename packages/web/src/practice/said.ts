/** What somebody in the room said: where the first sound came, and the last one if they said it; mmHg. */
export type Said = { readonly first: number; readonly last: number | null };

const LEAST_MMHG = 20;
const MOST_MMHG = 300;

/** `124/78`, or one number for the first sound alone; null where it is neither. */
export function parseSaid(text: string): Said | null {
  const found = /^\s*(\d{2,3})\s*(?:\/\s*(\d{2,3})\s*)?$/.exec(text);
  if (found === null) return null;
  const first = Number(found[1]);
  const last = found[2] === undefined ? null : Number(found[2]);
  const isIn = (mmHg: number) => mmHg >= LEAST_MMHG && mmHg <= MOST_MMHG;
  if (!isIn(first) || (last !== null && (!isIn(last) || last >= first))) return null;
  return { first, last };
}
