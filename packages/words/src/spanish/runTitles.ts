import type { runTitles as english } from '../english/runTitles.js';
import type { Reworded } from '../reworded.js';

/** As in `english/runTitles`. */
export const runTitles: Reworded<typeof english> = {
  method: { auscultation: 'Oída', palpation: 'Palpada', device: 'Leída en una pantalla' },
  moment: {
    peak: 'Inflado hasta',
    'first sound': 'Primer ruido',
    muffled: 'Amortiguados',
    'last sound': 'Último ruido',
    'pulse back': 'Vuelve el pulso',
  },
  mark: {
    peak: 'Válvula abierta',
    'pulse lost': 'Pulso perdido',
    'pulse back': 'Vuelve el pulso',
    'first sound': 'Primer ruido',
    muffled: 'Amortiguados',
    'last sound': 'Último ruido',
    slip: 'Un descuido: ningún momento',
  },
  cuff: {
    newborn: 'Recién nacido',
    infant: 'Lactante',
    child: 'Infantil',
    'small-adult': 'Adulto pequeño',
    adult: 'Adulto',
    'large-adult': 'Adulto grande',
    thigh: 'Muslo',
    small: 'Pequeño',
    medium: 'Mediano',
    large: 'Grande',
  },
};
