import type { Stamp, StoredEntry } from '@evenfall/record';

const LETTERS = 2;

/** Whether a text can be a name or a sentence at all: it has two letters or more, of any script. */
export function hasWords(text: string): boolean {
  return (text.match(/\p{L}/gu) ?? []).length >= LETTERS;
}

const MINUTE_MS = 60_000;

/** Whether somebody would have been told before anything of the round was measured; a time of day is typed in whole minutes. */
export function isBeforeMeasured(
  toldAt: Pick<Stamp, 'at'>,
  saw: readonly Pick<StoredEntry, 'kind' | 'measuredAt'>[],
): boolean {
  const measured = saw
    .filter(({ kind }) => kind === 'count' || kind === 'taps' || kind === 'run' || kind === 'sign')
    .map(({ measuredAt }) => Date.parse(measuredAt.at));
  return measured.length > 0 && Date.parse(toldAt.at) + MINUTE_MS <= Math.min(...measured);
}
