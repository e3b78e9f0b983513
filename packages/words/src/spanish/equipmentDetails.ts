import type { equipmentDetails as english } from '../english/equipmentDetails.js';
import type { Reworded } from '../reworded.js';

const PRESSURES = { one: 'presión', other: 'presiones' };

/** As in `english/equipmentDetails`. */
export const equipmentDetails: Reworded<typeof english> = {
  'gauge-rest-out': (f, say) =>
    `Sin presión el manómetro marca ${say.short(f.value('errorMmHg'), 1)} mmHg, y se admiten como máximo ${say.limit(f.value('limitMmHg'))} hacia cada lado: retírelo del uso, según su protocolo local.`,
  'gauge-reads-high': (f, say) =>
    `A ${say.short(f.value('atMmHg'))} mmHg el manómetro marca ${say.short(f.value('byMmHg'), 1)} de más, y se admiten como máximo ${say.limit(f.value('limitMmHg'))}: retírelo del uso. Las presiones cercanas se registraron más o menos otro tanto de más.`,
  'gauge-reads-low': (f, say) =>
    `A ${say.short(f.value('atMmHg'))} mmHg el manómetro marca ${say.short(f.value('byMmHg'), 1)} de menos, y se admiten como máximo ${say.limit(f.value('limitMmHg'))}: retírelo del uso. Las presiones cercanas se registraron más o menos otro tanto de menos.`,
  'gauge-few-points': (f, say) =>
    `Comparado con el otro manómetro en ${say.counted(f.value('points'), PRESSURES)}: desde ${say.limit(f.value('fewest'))} se puede dar por bueno.`,
  'gauge-narrow-points': (f, say) =>
    `Comparado con el otro manómetro de ${say.short(f.value('lowMmHg'))} a ${say.short(f.value('highMmHg'))} mmHg: empiece en ${say.limit(f.value('fromMmHg'))} o menos y llegue a ${say.limit(f.value('toMmHg'))}, para que lo que se registra quede dentro.`,
  'gauge-leaks': (f, say) =>
    `Pierde ${say.short(f.value('leakMmHgPerMinute'), 1)} mmHg por minuto con la válvula cerrada, y se admiten como máximo ${say.limit(f.value('limitMmHgPerMinute'))}: revise el manguito, los tubos y la válvula. La aguja baja más deprisa de lo que la mano deja. Confirme el límite con su protocolo local.`,
  'gauge-leak-short': (f, say) =>
    `Observado durante ${say.short(f.value('seconds'))} s: una fuga se juzga en ${say.limit(f.value('shortest'))} s o más.`,
};
