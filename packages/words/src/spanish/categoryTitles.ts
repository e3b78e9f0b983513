import type { categoryTitles as english } from '../english/categoryTitles.js';
import type { Reworded } from '../reworded.js';

/** As in `english/categoryTitles`. */
export const categoryTitles: Reworded<typeof english> = {
  scheme: {
    'acc-aha-2017': 'ACC/AHA 2017, adultos',
    'acc-aha-2025': 'AHA/ACC 2025, adultos',
    'esc-2024': 'ESC 2024, adultos',
    'esc-esh-2018': 'ESC/ESH 2018, adultos',
    'esh-2023': 'ESH 2023, adultos',
    'nice-ng136': 'NICE NG136, adultos en consulta',
    'jsh-2019': 'JSH 2019, adultos',
    'ish-2020': 'ISH 2020, adultos',
    'who-2021': 'OMS 2021, cuándo tratar a adultos (sin categoría)',
    pregnancy: 'Embarazo y las seis semanas siguientes',
    'aap-2017': 'AAP 2017, cribado desde 1 año, límites desde los 13',
    'fourth-report-2004': 'Cuarto Informe 2004, de 2 a 17 años por sexo, edad y talla',
  },
  category: {
    below: 'Por debajo de los límites',
    'below-stage-1': 'Por debajo del estadio 1',
    elevated: 'Elevada',
    'grade-1': 'Grado 1',
    'grade-2': 'Grado 2',
    'grade-3': 'Grado 3',
    'high-normal': 'Normal-alta',
    hypertension: 'En el intervalo de hipertensión',
    'non-elevated': 'No elevada',
    normal: 'Normal',
    optimal: 'Óptima',
    severe: 'Grave',
    'stage-1': 'Estadio 1',
    'stage-2': 'Estadio 2',
    treat: 'Tratar, una vez confirmada',
    'treat-if-high-risk': 'Tratar, una vez confirmada, si el riesgo es alto',
  },
  screening: {
    below: 'Por debajo de los límites del cribado',
    'at-or-above': 'En los límites del cribado o por encima: valore a fondo',
  },
  isolated: { systolic: 'solo la sistólica', diastolic: 'solo la diastólica' },
};
