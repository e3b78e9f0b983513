import {
  type AmbulatoryResult,
  type AmbulatoryRules,
  dipBeside,
  type PeriodCategories,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { exactText } from '../figure/times.js';

/** The fall by night with its class, and that of the diastolic where it is another; null where it is not known. */
export function fallText(
  { dip, day, night }: Pick<AmbulatoryResult, 'dip' | 'day' | 'night'>,
  words: Words,
): string | null {
  const { systolicPercent: systolic, diastolicPercent: diastolic, class: dipClass } = dip;
  if (systolic === null || diastolic === null) return null;
  const fall = words.sentence('series.fallOf', { systolic, diastolic });
  if (dipClass === null) return fall;
  const { diastolicClass } = dipBeside(day.mean, night.mean, true);
  return words.sentence('series.fallWithClass', {
    fall,
    class: words.title('dipClass', dipClass),
    diastolic:
      diastolicClass === null || diastolicClass === dipClass ? null : words.title('dipClass', diastolicClass),
  });
}

/** What the rule set calls the means of a recording, and what is to be known of the names. */
export type CategoriesSaid = { readonly text: string; readonly flags: PeriodCategories['flags'] };

/**
 * What the rule set calls the means of a recording; null where the pattern says as much, that is where it knows no more than high or
 * not of each.
 */
export function periodCategoriesSaid(
  { names, flags }: PeriodCategories,
  pattern: AmbulatoryResult['pattern'],
  words: Words,
): CategoriesSaid | null {
  const saysNoMore = names.every(({ category }) => category === 'high' || category === 'not-high');
  if (names.length === 0 || (saysNoMore && pattern !== null)) return null;
  const text = words.sentence('series.periodCategories', {
    categories: names
      .map(({ period, category }) =>
        words.sentence('series.periodCategory', {
          period: words.title('period', period),
          category: words.title('homeCategory', category),
        }),
      )
      .join(', '),
  });
  return { text, flags };
}

/** Which mean stands for 24 hours, and the plain one beside it: the two can lie on different sides of a limit. */
export function wholeText(
  { whole }: Pick<AmbulatoryResult, 'whole'>,
  rules: Pick<AmbulatoryRules, 'wholeSystolic' | 'wholeDiastolic' | 'wholeMean'>,
  words: Words,
): string {
  const { systolic, diastolic } = whole.arithmetic;
  const plain = `${exactText(systolic, rules.wholeSystolic, words)}/${exactText(diastolic, rules.wholeDiastolic, words)}`;
  return words.sentence('report.wholeBy', { by: words.title('wholeMean', rules.wholeMean), plain });
}
