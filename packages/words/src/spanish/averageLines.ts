import type { averageLines as lines, averageOptions as options } from '../english/averageLines.js';
import type { Reworded } from '../reworded.js';

/** As in `english/averageLines`. */
export const averageLines: Reworded<typeof lines> = {
  average: 'Media',
  rule: 'Según',
  none: 'ninguna todavía',
  of: (f, say) =>
    `${f.pressure}, de ${say.form(f.count, { one: 'la lectura', other: 'las lecturas' })} ${f.readings}`,
};

export const averageOptions: Reworded<typeof options> = {
  averageRule: 'la guía según la cual se promedian las lecturas',
  irregular: 'el pulso se notó irregular: al menos tres lecturas, todas promediadas',
  raisedFrom: 'para un niño según aap-2017: sus percentiles 90, desde los que una primera lectura es elevada',
};
