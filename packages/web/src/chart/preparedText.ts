import type { RoundContent } from '@evenfall/record';
import type { Words } from '@evenfall/words';

type Exceptions = NonNullable<RoundContent['evidence']>['exceptions'];

/** How the person was made ready, in one sentence that says what it is of: in a chart it stands under other numbers. */
export function preparedText(exceptions: Exceptions, words: Words): string {
  if (exceptions === null) return words.sentence('prepare.notLooked');
  if (exceptions.length === 0) return words.sentence('chart.madeReady');
  return words.sentence('chart.madeReadyBut', {
    text: exceptions.map((one) => words.sentence(`prepare.${one}`)).join(', '),
  });
}
