import type { patternTitles as english } from '../english/patternTitles.js';
import type { Reworded } from '../reworded.js';

/** As in `english/patternTitles`. */
export const patternTitles: Reworded<typeof english> = {
  ambulatoryPattern: {
    'none-high': 'ningún periodo alto',
    'day-and-night-high': 'presión alta de día y de noche',
    'day-alone-high': 'presión alta solo de día',
    'night-alone-high': 'presión alta solo de noche',
    'whole-alone-high': 'presión alta en las 24 horas, ni solo de día ni solo de noche',
  },
  dipClass: {
    reverse: 'más alta de noche que de día',
    'non-dipper': 'un descenso nocturno pequeño',
    dipper: 'el descenso nocturno habitual',
    extreme: 'un descenso nocturno grande',
  },
  surgeName: {
    sleepTrough: 'desde el mínimo del sueño',
    preWaking: 'en torno al despertar',
    rising: 'al levantarse',
    movingTrough: 'desde la hora más baja del sueño',
    fourReadings: 'con cuatro lecturas',
    ratePerHour: 'velocidad de la subida',
    eveningFall: 'descenso de la noche',
  },
  surgeDefinition: {
    sleepTrough: 'dos horas tras despertar menos las tres lecturas en torno a la más baja del sueño',
    preWaking: 'las dos horas tras despertar menos las dos de antes',
    rising:
      'la primera lectura de pie menos la última acostado, cada una a media hora del despertar como mucho',
    movingTrough:
      'dos horas tras despertar menos la hora de sueño con la media más baja, de dos lecturas o más',
    fourReadings: 'las cuatro primeras lecturas tras despertar menos las tres más bajas del sueño',
    ratePerHour: 'pendiente desde la lectura más baja del sueño hasta dos horas tras despertar',
    eveningFall: 'dos horas antes de acostarse menos las tres lecturas en torno a la más baja del sueño',
  },
  phenotype: {
    'sustained-normotension': 'presiones no altas dentro ni fuera de la consulta',
    'white-coat-hypertension': 'hipertensión de bata blanca',
    'masked-hypertension': 'hipertensión enmascarada',
    'sustained-hypertension': 'hipertensión sostenida',
    controlled: 'presiones en tratamiento no altas dentro ni fuera de la consulta',
    'white-coat-effect': 'un efecto de bata blanca en tratamiento',
    'masked-uncontrolled': 'presión enmascarada no controlada en tratamiento',
    uncontrolled: 'presión no controlada en tratamiento',
  },
};
