import type { factTitles as english } from '../english/factTitles.js';
import type { Reworded } from '../reworded.js';

/** As in `english/factTitles`. */
export const factTitles: Reworded<typeof english> = {
  fact: {
    fistula: 'Fístula',
    graft: 'Injerto',
    shunt: 'Derivación para diálisis',
    drip: 'Vía o gotero',
    amputation: 'Amputado',
    'axillary-surgery': 'Cirugía en la axila',
    lymphoedema: 'Linfedema',
    weakness: 'Débil o paralizado',
    injury: 'Lesión, yeso, quemadura o herida abierta',
    'lower-arm': 'Da valores más bajos que el otro',
    'higher-arm': 'Da valores más altos que el otro',
    pregnancy: 'Embarazo',
    'gave-birth': 'Parto',
    'cannot-stand': 'No puede ponerse de pie',
    'irregular-rhythm': 'Pulso irregular',
    tremor: 'Temblor',
    pacemaker: 'Marcapasos',
    'rate-slowing-drug': 'Toma un fármaco que frena el corazón',
    'spinal-injury': 'Lesión medular',
    gap: 'Laguna auscultatoria',
    'usual-cuff': 'Manguito habitual',
    'oxygen-scale-2': 'Saturación juzgada con la escala 2',
    'reference-sex': 'Sexo para las tablas de referencia',
  },
};
