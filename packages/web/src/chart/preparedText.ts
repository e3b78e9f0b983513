import { areCuffPointsKnown, isRestKnown } from '@evenfall/clinical';
import type { RoundContent } from '@evenfall/record';
import type { Words } from '@evenfall/words';

type Prepared = {
  readonly exceptions: NonNullable<RoundContent['evidence']>['exceptions'];
  readonly rest: RoundContent['rest'];
  /** Whether the round has a pressure says whether what is of the cuff was asked. */
  readonly signs: RoundContent['signs'];
};

/**
 * How the person was made ready, in a sentence that says what it is of: in a chart it stands under other numbers. A rest that
 * nobody began nor answered for is said not to be known, and the cuff where it was never on.
 */
export function preparedText({ exceptions, rest, signs }: Prepared, words: Words): string {
  if (exceptions === null) return words.sentence('prepare.notLooked');
  const isKnown = isRestKnown(exceptions, rest);
  const isCuff = areCuffPointsKnown(
    exceptions,
    signs.some((one) => one.sign === 'pressure' && 'entries' in one),
  );
  const said =
    exceptions.length > 0
      ? words.sentence('chart.madeReadyBut', {
          text: exceptions.map((one) => words.sentence(`prepare.${one}`)).join(', '),
        })
      : words.sentence(isKnown && isCuff ? 'chart.madeReady' : 'chart.madeReadyElse');
  return [
    said,
    ...(isKnown ? [] : [words.sentence('rest.notKnown')]),
    ...(isCuff ? [] : [words.sentence('prepare.cuffNotKnown')]),
  ].join(' ');
}
