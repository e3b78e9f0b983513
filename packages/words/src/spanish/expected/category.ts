import type { category as english } from '../../english/expected/category.js';
import type { Reworded } from '../../reworded.js';

/** As in `english/expected/category`. */
export const category: Reworded<typeof english> = {
  'from-under-months': (f, say) =>
    `una edad desde ${say.short(f.value('fromMonths'))} hasta menos de ${say.short(f.value('underMonths'))} meses`,
  'adult-years': (f, say) =>
    `una edad de ${say.short(f.value('adultFromYears'))} años o más: la infancia tiene su propio esquema`,
  'height-of-age': (f, say) =>
    `una talla a menos de ${say.limit(f.value('limitZ'))} DE de la mediana de esa edad y sexo: revise la talla, la edad y el sexo`,
  'child-years': (f, say) =>
    `una edad desde ${say.short(f.value('fromYears'))} hasta menos de ${say.short(f.value('adultFromYears'))} años`,
};
