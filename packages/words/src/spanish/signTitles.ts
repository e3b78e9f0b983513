import type { signTitles as english } from '../english/signTitles.js';
import type { Reworded } from '../reworded.js';

/** As in `english/signTitles`. */
export const signTitles: Reworded<typeof english> = {
  probe: {
    finger: 'dedo de la mano',
    toe: 'dedo del pie',
    ear: 'oreja',
    forehead: 'frente',
    other: 'otro sitio',
  },
  eyes: { '4': 'abre espontáneamente', '3': 'abre al sonido', '2': 'abre a la presión', '1': 'no abre' },
  verbal: { '5': 'orientado', '4': 'confuso', '3': 'palabras', '2': 'sonidos', '1': 'ninguna' },
  motor: {
    '6': 'obedece',
    '5': 'localiza',
    '4': 'flexión normal',
    '3': 'flexión anormal',
    '2': 'extensión',
    '1': 'ninguno',
  },
};
