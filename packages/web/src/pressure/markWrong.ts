import type { Refusal } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { ReadMarks } from './marks.js';
import type { Mark } from './pressureDraft.js';

/**
 * What is wrong with the marks of a run in words, by the place of the mark that it stands beside. Those that were not read
 * back yet are named together, beside the first of them.
 *
 * @param wrong as of `readMarks`
 */
export function markWrong(
  marks: readonly Mark[],
  wrong: NonNullable<ReadMarks['wrong']>,
  words: Words,
): ReadonlyMap<number | 'run', string> {
  const nameOf = (at: number | 'run') =>
    words.title('mark', (at === 'run' ? undefined : marks[at]?.what) ?? 'first sound');
  const unread = [...wrong].filter(([, { code }]) => code === 'missing').map(([at]) => at);
  return new Map(
    [...wrong].flatMap(([at, refused]): [number | 'run', string][] => {
      if (refused.code === 'missing') {
        const text = words.say.allOf(unread.map(nameOf));
        return at === unread[0] ? [[at, words.sentence('moments.unread', { text })]] : [];
      }
      return [[at, wrongText(refused, nameOf(at), words)]];
    }),
  );
}

function wrongText(refused: Refusal, name: string, words: Words): string {
  return refused.code === 'not-a-number' && refused.got !== null
    ? words.sentence('moments.noNumber', { text: name, got: String(refused.got) })
    : words.problem(refused, { nameOf: () => name }).message;
}
