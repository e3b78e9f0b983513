import type { EarlierReading } from '@evenfall/practice';
import type { Words } from '@evenfall/words';

/** A pressure as it was written: `148/92`, `118/62/0`, `122/P`; null: none was. */
export function pressureText(
  { systolic, muffled, diastolic }: EarlierReading['entered'],
  { say }: Words,
): string | null {
  if (systolic === null) return null;
  const ends = [muffled, diastolic].filter((one) => one !== null).map((one) => say.number(one));
  return [say.number(systolic), ...(ends.length === 0 ? ['P'] : ends)].join('/');
}
