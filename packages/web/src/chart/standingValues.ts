import type { RoundSign } from '@evenfall/clinical';
import type { ChartRound } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { chartedText, signOfCharted } from '../parts/charted.js';
import { contentOfEntry } from './contentOfEntry.js';

/** A value of a round as it stands, in figures. */
export type StandingValue = { readonly entry: string; readonly sign: RoundSign; readonly text: string };

/** Every value of a round as it stands now, in the order of the work; of one that amendments dispute, every claim. */
export function standingValues({ values }: Pick<ChartRound, 'values'>, words: Words): StandingValue[] {
  return values.flatMap(({ current }) =>
    current.flatMap((entry) => {
      const given = contentOfEntry(entry);
      if (given === null) return [];
      return [{ entry: entry.id, sign: signOfCharted(given), text: chartedText(given, words) }];
    }),
  );
}
