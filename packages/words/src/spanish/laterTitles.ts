import type { laterTitles as english } from '../english/laterTitles.js';
import type { Reworded } from '../reworded.js';

export const laterTitles: Reworded<typeof english> = {
  accountRole: {
    owner: 'Titular',
    clinician: 'Profesional',
    supervisor: 'Supervisor/a',
    learner: 'Estudiante',
  },
  limb: {
    'right upper-arm': 'Brazo derecho',
    'right forearm': 'Antebrazo derecho',
    'right wrist': 'Muñeca derecha',
    'right thigh': 'Muslo derecho',
    'right calf': 'Pantorrilla derecha',
    'left upper-arm': 'Brazo izquierdo',
    'left forearm': 'Antebrazo izquierdo',
    'left wrist': 'Muñeca izquierda',
    'left thigh': 'Muslo izquierdo',
    'left calf': 'Pantorrilla izquierda',
  },
  clock: { beat: 'El reloj empieza en un latido', any: 'El reloj empieza en cualquier momento' },
  first: { 0: 'Al primer latido se le llama cero', 1: 'Al primer latido se le llama uno' },
  start: {
    'beat-0':
      'El reloj empieza en un latido, y a ese latido se le llama cero: en promedio medio latido de menos (30 / ventana por minuto)',
    'beat-1':
      'El reloj empieza en un latido, y a ese latido se le llama uno: en promedio medio latido de más (30 / ventana por minuto)',
    'any-1':
      'El reloj empieza en cualquier momento, y al primer latido se le llama uno: en promedio ni de más ni de menos',
    'any-0':
      'El reloj empieza en cualquier momento, y al primer latido se le llama cero: en promedio un latido de menos (60 / ventana por minuto)',
  },
  preset: {
    'thirty-seconds': 'Medio minuto, uno entero en caso de duda',
    'fifteen-seconds-at-rest': 'Quince segundos en reposo, un minuto entero en caso de duda',
    'full-minute': 'Siempre un minuto entero',
    'pulse-breaths-pressure': 'Pulso, respiraciones y presión',
    'scored-set': 'Todo lo que necesita una puntuación de alerta temprana',
    'pressure-alone': 'Solo la presión',
    'margin-thirty': 'Inflar 30 mmHg por encima de donde desaparece el pulso',
    'margin-twenty': 'Inflar 20 mmHg por encima de donde desaparece el pulso',
    'margin-ten': 'Inflar 10 mmHg por encima de donde desaparece el pulso',
    'two-to-three-a-second': 'Desinflar de 2 a 3 mmHg por segundo, por latidos si es lento o irregular',
    'two-a-beat': 'Desinflar 2 mmHg por latido, sea cual sea el pulso',
    'mark-above': 'Leer la marca de arriba cuando la aguja queda entre dos',
    'aha-2005': 'Manguitos americanos, cuatro para adultos',
    'uk-arm-bands': 'Manguitos británicos y europeos, tres para adultos',
    'fourth-report-2004': 'Manguitos de recién nacido a muslo',
    'no-scores': 'Sin puntuaciones: solo los números',
    'adult-early-warning': 'La puntuación de alerta temprana para adultos',
    'no-categories': 'Sin categorías: solo los números',
    'acc-aha-2017': 'Como ACC/AHA 2017',
    'acc-aha-2025': 'Como AHA/ACC 2025',
    'esc-2024': 'Como ESC 2024',
    'esc-esh-2018': 'Como ESC/ESH 2018',
    'esh-2023': 'Como ESH 2023',
    'nice-ng136': 'Como NICE NG136',
    'jsh-2019': 'Como JSH 2019',
    'ish-2020': 'Como ISH 2020',
    'who-2021': 'Como OMS 2021',
  },
  format: {
    csv: 'Una tabla de cada valor registrado alguna vez (CSV)',
    text: 'La ronda firmada más reciente en texto',
    fhir: 'El registro entero de una persona para otro sistema u otro Evenfall (FHIR R4)',
  },
  repair: { missed: 'Perdido', doubled: 'Doble' },
};
