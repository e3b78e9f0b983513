import {
  type AmbulatoryResult,
  type AmbulatoryRules,
  dipBeside,
  type PeriodCategory,
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

/**
 * What the rule set calls the means of a recording; null where the pattern says as much, that is where it knows no more than high or
 * not of each.
 */
export function periodCategoriesText(
  categories: readonly PeriodCategory[],
  pattern: AmbulatoryResult['pattern'],
  words: Words,
): string | null {
  const saysNoMore = categories.every(({ category }) => category === 'high' || category === 'not-high');
  if (categories.length === 0 || (saysNoMore && pattern !== null)) return null;
  return words.sentence('series.periodCategories', {
    categories: categories
      .map(({ period, category }) =>
        words.sentence('series.periodCategory', {
          period: words.title('period', period),
          category: words.title('homeCategory', category),
        }),
      )
      .join(', '),
  });
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
