import { type SidedLimit, shownPressure } from '@evenfall/clinical';
import type { SeriesContent } from '@evenfall/record';
import type { Words } from '@evenfall/words';

/**
 * By which rule set a series was averaged: its name and id, and the rule of the program.
 *
 * @param isGeneral whether the general rules made it, since those it came in under are not at hand
 */
export function seriesRuleText({ of, computedBy }: SeriesContent, isGeneral: boolean, words: Words): string {
  const { preset, rule } = computedBy;
  if (preset === null) return words.sentence('exchanged.noRuleSet', { rule });
  if (isGeneral) return words.sentence('exchanged.notByRuleSet', { rule, preset });
  return words.sentence('exchanged.byRuleSet', { title: words.title(of, preset), preset, rule });
}

/** The mean of a series as it stands beside the limits of its rule set, so that rounding puts it on no other side; and the rule set. */
export function seriesMeanText(
  content: SeriesContent,
  { mean, shown }: SeriesContent['value'],
  isGeneral: boolean,
  words: Words,
): string {
  const rule = seriesRuleText(content, isGeneral, words);
  if (mean.systolic === null) return words.sentence('exchanged.noMean', { rule });
  const text = `${digitsText(shown.systolic, words)}/${digitsText(shown.diastolic, words)}`;
  return words.sentence('exchanged.meanOfSeries', { mean: text, rule });
}

/** A mean in mmHg beside its limit, null for one that the rule set does not have. */
export function meanBeside(mmHg: number | null, limit: SidedLimit | null, words: Words): string {
  return digitsText(mmHg === null ? null : shownPressure(mmHg, limit === null ? [] : [limit]), words);
}

/** A number in digits with a point, as it is shown beside a limit, with the decimal mark of the language. */
function digitsText(text: string | null, words: Words): string {
  return text === null ? '–' : words.say.number(Number(text), (text.split('.')[1] ?? '').length);
}
