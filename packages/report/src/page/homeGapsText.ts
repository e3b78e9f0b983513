import type { HomeAsked, HomeGap } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { dayText } from '../figure/times.js';

/** How many of the readings that were asked for came, and which are blank; null where all came. */
export function homeGapsText(of: HomeAsked | null, words: Words): string | null {
  if (of === null || of.gaps.length === 0) return null;
  const blank = of.gaps.filter(({ came }) => came === 0).map((gap) => gapText(gap, words));
  const short = of.gaps
    .filter(({ came }) => came > 0)
    .map((gap) =>
      words.sentence('series.gapShort', { came: gap.came, asked: gap.asked, text: gapText(gap, words) }),
    );
  const { asked, came } = of;
  return [
    words.sentence('series.ofAsked', { came, asked }),
    ...(blank.length === 0
      ? []
      : [words.sentence('series.gapsBlank', { gaps: words.say.allOf(blank), count: blank.length })]),
    ...short,
  ].join('; ');
}

function gapText({ part, from, until }: HomeGap, words: Words): string {
  const text = dayText(from, words, true);
  if (part !== 'day') return words.sentence(`series.gap-${part}`, { text });
  return from === until
    ? words.sentence('series.gap-day', { text })
    : words.sentence('series.gap-days', { from: text, until: dayText(until, words, true) });
}
