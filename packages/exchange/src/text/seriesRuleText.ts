import type { SeriesContent } from '@evenfall/record';
import type { Words } from '@evenfall/words';

/** By which rule set a series was averaged: its name and id, and the rule of the program. */
export function seriesRuleText({ of, computedBy }: SeriesContent, words: Words): string {
  const { preset, rule } = computedBy;
  if (preset === null) return words.sentence('exchanged.noRuleSet', { rule });
  return words.sentence('exchanged.byRuleSet', { title: words.title(of, preset), preset, rule });
}

/** The mean of a series as it stands beside the limits of its rule set, so that rounding puts it on no other side; and the rule set. */
export function seriesMeanText(
  content: SeriesContent,
  { mean, shown }: SeriesContent['value'],
  words: Words,
): string {
  const rule = seriesRuleText(content, words);
  if (mean.systolic === null) return words.sentence('exchanged.noMean', { rule });
  const text = `${shown.systolic ?? '–'}/${shown.diastolic ?? '–'}`;
  return words.sentence('exchanged.meanOfSeries', { mean: text, rule });
}
