import type { Expectation } from './expectation.js';

/** Rules of a pressure that is to be put into a category. */
export const category = {
  'from-under-months': (f, say) =>
    `an age from ${say.short(f.value('fromMonths'))} to under ${say.short(f.value('underMonths'))} months`,
  'adult-years': (f, say) =>
    `an age of ${say.short(f.value('adultFromYears'))} or over: a child has a scheme of its own`,
  'height-of-age': (f, say) =>
    `a height within ${say.limit(f.value('limitZ'))} SD of the median of that age and sex: check height, age and sex`,
  'child-years': (f, say) =>
    `an age from ${say.short(f.value('fromYears'))} to under ${say.short(f.value('adultFromYears'))} years`,
} as const satisfies Record<string, Expectation>;
