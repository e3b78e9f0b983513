import type { showing as english } from '../../english/screens/showing.js';
import type { Reworded } from '../../reworded.js';

export const showing: Reworded<typeof english> = {
  stoppedSound: 'Parado: se quitó el sonido, quizá por una llamada.',
  goOnWithSound: 'Seguir con sonido',
  letterKeys: 'Teclas de una sola letra, solo en la sala',
};
