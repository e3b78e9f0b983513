import { isRestKnown } from '@evenfall/clinical';
import type { RoundContent } from '@evenfall/record';
import type { Words } from '@evenfall/words';

type Prepared = {
  readonly exceptions: NonNullable<RoundContent['evidence']>['exceptions'];
  readonly rest: RoundContent['rest'];
};

/**
 * How the person was made ready, in a sentence that says what it is of: in a chart it stands under other numbers. A rest that
 * nobody began nor answered for is said not to be known.
 */
export function preparedText({ exceptions, rest }: Prepared, words: Words): string {
  if (exceptions === null) return words.sentence('prepare.notLooked');
  const isKnown = isRestKnown(exceptions, rest);
  const said =
    exceptions.length > 0
      ? words.sentence('chart.madeReadyBut', {
          text: exceptions.map((one) => words.sentence(`prepare.${one}`)).join(', '),
        })
      : words.sentence(isKnown ? 'chart.madeReady' : 'chart.madeReadyElse');
  return isKnown ? said : `${said} ${words.sentence('rest.notKnown')}`;
}
