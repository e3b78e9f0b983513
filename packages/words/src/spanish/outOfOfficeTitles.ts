import type { outOfOfficeTitles as english } from '../english/outOfOfficeTitles.js';
import type { Reworded } from '../reworded.js';

/** As in `english/outOfOfficeTitles`. */
export const outOfOfficeTitles: Reworded<typeof english> = {
  home: {
    'means-alone-at-home': 'Solo medias: sin límite ni categoría',
    'nice-ng136': 'NICE NG136: sin el primer día, estadio 1 desde 135/85',
    'hypertension-canada': 'Hypertension Canada: sin el primer día, alta desde 135/85',
    'aha-ama-2020': 'AHA/AMA 2020: doce lecturas en tres días, alta desde 130/80',
    'acc-aha-2017': 'ACC/AHA 2017: todas las lecturas, estadio 1 desde 130/80',
    'acc-aha-2025': 'AHA/ACC 2025: todas las lecturas, estadio 1 desde 130/80',
    'esc-2024': 'ESC 2024: todas las lecturas, hipertensión desde 135/85',
    'esh-2023': 'ESH 2023: sin el primer día, doce lecturas, alta desde 135/85',
    'ish-2020': 'ISH 2020: sin el primer día, alta desde 135/85',
    'jsh-2019': 'JSH 2019: todas las lecturas, mañana o noche desde 135/85',
    'korea-2018': 'Corea 2018: todas las lecturas, sin límite propio',
    'australia-2016': 'Australia 2016: sin el primer día, alta desde 135/85',
    'family-practice-table':
      'Tabla de una revista de medicina familiar: sin dos días ni la primera de cada toma',
    'france-rule-of-three': 'Regla de tres francesa: tres lecturas, tres días, alta desde 135/85',
    'taiwan-2022': 'Taiwán 2022: sin el primer día, alta desde 130/80',
    'early-proposals-at-home':
      'Primeras propuestas (hacia 2000): claramente alta por encima de 140/90, ni una cosa ni otra entre 135/85 y eso',
  },
  ambulatory: {
    'means-alone-over-24-hours': 'Solo medias: sin límite ni categoría',
    'nice-ng136': 'NICE NG136: catorce lecturas en vigilia, alta desde 135/85 de día',
    'hypertension-canada': 'Hypertension Canada: alta desde 130/80 en 24 horas o 135/85 de día',
    'acc-aha-2017': 'ACC/AHA 2017: alta desde 125/75 en 24 horas o 130/80 de día',
    'acc-aha-2025': 'AHA/ACC 2025: alta desde 125/75 en 24 horas o 130/80 de día',
    'esc-2024': 'ESC 2024: alta desde 130/80 en 24 horas, 135/85 de día o 120/70 de noche',
    'esh-2023': 'ESH 2023: alta desde 130/80 en 24 horas, 135/85 de día o 120/70 de noche',
    'ish-2020': 'ISH 2020: alta desde 130/80 en 24 horas',
    'jsh-2019': 'JSH 2019: alta desde 130/80 en 24 horas, 135/85 de día o 120/70 de noche',
    'australia-2016': 'Australia 2016: alta desde 130/80 en 24 horas, 135/85 de día o 120/70 de noche',
    'australia-clinic-equivalents':
      'Australia, equivalentes de 140/90 en la consulta: 133/84 en 24 horas, 136/87 de día o 121/76 de noche',
    'taiwan-2022': 'Taiwán 2022: alta desde 130/80 en 24 horas o de día, o desde 110/65 de noche',
    'early-proposals-over-24-hours':
      'Primeras propuestas (hacia 2000): claramente alta por encima de 135/85 en 24 horas, 140/90 de día o 125/75 de noche',
    'research-levels': 'Investigación de niveles: ocho lecturas en vigilia y cuatro durante el sueño',
    'research-levels-older':
      'Investigación de niveles, regla anterior: diez lecturas de día y cinco de noche, sin tres horas vacías',
  },
  homeCategory: {
    'not-high': 'no alta',
    high: 'alta',
    'below-stage-1': 'por debajo del estadio 1',
    'stage-1': 'estadio 1',
    'stage-2': 'estadio 2',
    normal: 'normal',
    elevated: 'elevada',
    'non-elevated': 'no elevada',
    hypertension: 'hipertensión',
    'high-normal': 'normal-alta',
    'grade-1': 'grado I',
    'grade-2': 'grado II',
    'grade-3': 'grado III',
  },
  sittingUse: { all: 'todas', 'first-two': 'las dos primeras', 'without-first': 'todas menos la primera' },
  homeAveraged: {
    readings: 'todas las lecturas',
    sittings: 'todas las tomas, promediadas antes sus lecturas',
  },
  homeJudged: { together: 'una media', 'each-part': 'mañana y noche por separado' },
  homeScheme: {
    none: 'sin nombres',
    'high-or-not': 'alta o no alta',
    'nice-ng136': 'los nombres de NICE NG136',
    'acc-aha-2017': 'los nombres de ACC/AHA',
    'esc-2024': 'los nombres de ESC 2024',
    'jsh-2019': 'los nombres de JSH 2019',
  },
  period: { whole: '24 horas', day: 'día', night: 'noche' },
  wholeMean: {
    'over-time': 'la media en el tiempo',
    arithmetic: 'la media de las lecturas',
    'hours-weighted': 'día y noche según sus horas',
  },
  editing: {
    'range-a': 'los intervalos amplios (A)',
    'range-b': 'los intervalos más estrechos (B)',
    ratio: 'la razón entre sistólica y diastólica',
    minimal: 'solo que la sistólica supere a la diastólica',
  },
};
