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
