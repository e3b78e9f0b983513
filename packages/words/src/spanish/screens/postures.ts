import type { postures as english } from '../../english/screens/postures.js';
import type { Reworded } from '../../reworded.js';
import { stopwatch } from '../../stopwatch.js';

/** As in `english/screens/postures`. */
export const postures: Reworded<typeof english> = {
  wantStandingSays: (f, say) =>
    `Pide una lectura en decúbito, tras ${say.limit(f.lying)} min acostada, y luego una a ${say.limit(f.first)} y otra a ${say.limit(f.third)} min de pie. Cuente el pulso en cada una.`,
  lyingBegin: 'Se acuesta ahora',
  lyingBeginHint: (f, say) =>
    `Desde este toque cuentan los minutos: la lectura llega tras ${say.limit(f.minutes)}. Si ya llevaba más tiempo, escriba los minutos con la lectura.`,
  lyingFor: (f, say) => `En decúbito ${stopwatch(f.seconds, say)}`,
  lyingDueIn: (f, say) =>
    `Lectura tras ${say.limit(f.minutes)} min en decúbito: infle dentro de ${stopwatch(f.seconds, say)}.`,
  lyingDueNow: (f, say) => `En decúbito desde hace ${say.limit(f.minutes)} min o más: infle ahora.`,
  lyingPutBack: (f, say) => `Ha seguido en decúbito: ${stopwatch(f.seconds, say)}`,
  lyingLost: 'No se sabe desde cuándo está en decúbito: escriba los minutos.',
  lyingHint: 'Déjelo en blanco si nadie lo sabe.',
  lyingWrong: (f, say) => `Escriba minutos de 0 a ${say.limit(f.minutes)}, o déjelo en blanco.`,
  lyingAt: (f, say) => `${say.short(f.minutes)} min en decúbito antes`,
  pulseAt: (f, say) => `pulso ${say.rate(f.perMinute)}`,
  pulseAmended: (f, say) => `pulso ${say.rate(f.perMinute)} (enmendado, era ${say.rate(f.was)})`,
  pulseInError: (f, say) => `pulso ${say.rate(f.was)}, marcado después como registrado por error`,
  feltUnwell: 'mareo, desmayo o malestar de pie',
  feltWell: 'bien de pie',
  noRangePulse: 'Sin intervalo: necesita el pulso.',
  noRangeTimes: 'Sin intervalo: necesita los tiempos del inflado.',
  noRangeAtAll: 'De este inflado no se puede dar un intervalo.',
  missed: (f, say) => `No se tomó la lectura a ${say.limit(f.minutes)} min.`,
  missedNow: (f, say) =>
    `No se tomó la lectura a ${say.limit(f.minutes)} min: tome una ahora, si la persona puede estar de pie. Guarda sus propios minutos.`,
  notUpUnwell: 'Se encuentra mal: no se pide nada de pie. Deje las lecturas de pie y avise.',
  feelsFaint: 'Siente mareo o desmayo: se tumba',
  toLieDown: 'Tiene que acostarse: no se pide nada más de pie.',
};
