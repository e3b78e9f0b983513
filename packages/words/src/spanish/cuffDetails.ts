import type { cuffDetails as english } from '../english/cuffDetails.js';
import type { Reworded } from '../reworded.js';

/** As in `english/cuffDetails`. */
export const cuffDetails: Reworded<typeof english> = {
  'cuff-too-small': (f, say) =>
    `El manguito a mano es demasiado pequeño para un brazo de ${say.length(f.value('armCm'))}, así que las lecturas salen demasiado altas: busque uno mayor, o registre qué manguito se usó. No se resta nada.`,
  'cuff-too-large': (f, say) =>
    `El manguito a mano es demasiado grande para un brazo de ${say.length(f.value('armCm'))}, así que las lecturas salen demasiado bajas: busque uno menor, o registre qué manguito se usó. No se suma nada.`,
  'arm-below-scheme': (f, say) =>
    `Estos manguitos empiezan en un brazo mayor de ${say.length(f.value('armCm'))}: tome un manguito infantil, según su protocolo local.`,
  'arm-above-scheme': (f, say) =>
    `Estos manguitos acaban antes de un brazo de ${say.length(f.value('armCm'))}: tome un manguito de muslo o cónico, u otro sitio, según su protocolo local, y regístrelo.`,
  'not-compared': () =>
    'Ningún ensayo comparó estos dos manguitos, así que solo hay el intervalo de muchos estudios y ningún número único que esperar.',
  'other-site': () =>
    'No se tomó en el brazo: se registra con su sitio, y nunca se promedia, puntúa ni clasifica junto con lecturas del brazo.',
  'thigh-reads-higher': (f, say) =>
    `En el muslo la sistólica suele ser de ${say.short(f.value('higherByPercentLow'))} a ${say.short(f.value('higherByPercentHigh'))} % más alta que en el brazo: registre el sitio y no compare las dos.`,
  'arm-overridden': () =>
    'Era mejor no usar este brazo, y se tomó con un nombre y un motivo, que quedan junto a la lectura.',
  'arm-barred': () => 'Un brazo no debe usarse para el manguito: tome el otro.',
  'prefer-other-arm': () =>
    'Es mejor no usar uno de los brazos: tome el otro, o dé su nombre y el motivo, según su protocolo local.',
  'both-arms-barred': (f, say) =>
    `Ninguno de los brazos puede usarse para el manguito: tome un muslo, boca abajo si es posible, según su protocolo local; su sistólica suele ser de ${say.short(f.value('higherByPercentLow'))} a ${say.short(f.value('higherByPercentHigh'))} % más alta que la del brazo.`,
  'child-right-arm': (f, say) =>
    `Antes de los ${say.limit(f.value('childUnderMonths') / 12)} años se toma el brazo derecho, pues en él se hicieron las tablas con las que se compara.`,
  'late-pregnancy-not-flat': (f, say) =>
    `Desde la semana ${say.limit(f.value('latePregnancyFromWeeks'))} de embarazo, o si no se sabe la semana, nadie se acuesta boca arriba: tome el lado izquierdo.`,
  'cannot-stand': () => 'No puede ponerse de pie: se midió en posición sentada y así se registró.',
};
