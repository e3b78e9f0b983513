import { areCuffPointsKnown, isRestKnown } from '@evenfall/clinical';
import type { RoundContent } from '@evenfall/record';
import type { Words } from '@evenfall/words';

type Prepared = {
  readonly exceptions: NonNullable<RoundContent['evidence']>['exceptions'];
  readonly rest: RoundContent['rest'];
  readonly isCuffAsked: RoundContent['isCuffAsked'];
  /** Of an older round, which does not say whether the cuff was on, whether it has a pressure stands for that. */
  readonly signs: RoundContent['signs'];
};

/**
 * How the person was made ready, in a sentence that says what it is of: in a chart it stands under other numbers. A rest that
 * nobody began nor answered for is said not to be known, and the cuff where it was not on in the round.
 */
export function preparedText({ exceptions, rest, isCuffAsked, signs }: Prepared, words: Words): string {
  if (exceptions === null) return words.sentence('prepare.notLooked');
  const isKnown = isRestKnown(exceptions, rest);
  const isTaken = signs.some((one) => one.sign === 'pressure' && 'entries' in one);
  const isCuff = areCuffPointsKnown(exceptions, isCuffAsked ?? isTaken);
  const said =
    exceptions.length > 0
      ? words.sentence('chart.madeReadyBut', {
          text: exceptions.map((one) => words.sentence(`prepare.${one}`)).join(', '),
        })
      : words.sentence(isKnown && isCuff ? 'chart.madeReady' : 'chart.madeReadyElse');
  return [
    said,
    ...(isKnown ? [] : [words.sentence('rest.notKnown')]),
    ...(isCuff ? [] : [words.sentence(isTaken ? 'prepare.cuffNotAsked' : 'prepare.cuffNotKnown')]),
  ].join(' ');
}
