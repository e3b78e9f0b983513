import type { card as english } from '../../english/screens/card.js';
import type { Reworded } from '../../reworded.js';
import { MINUTES } from './nouns.js';

/** As in `english/screens/card`. */
export const card: Reworded<typeof english> = {
  title: 'Tarjeta de preparación',
  lead: 'Una hoja para imprimir y dar a la persona a la que se va a medir.',
  language: 'Idioma de la tarjeta',
  print: 'Imprimir la tarjeta',
  heading: 'Antes de medirle la presión arterial',
  before: (f, say) =>
    `Durante los ${say.counted(f.minutes, MINUTES)} anteriores: nada de café, té o cola, ni tabaco, ni ejercicio.`,
  toilet: 'Vaya antes al baño.',
  rest: (f, say) => `Siéntese con tranquilidad durante ${say.counted(f.minutes, MINUTES)}.`,
  back: 'Apoye la espalda en la silla.',
  feet: 'Los dos pies planos en el suelo, sin cruzar las piernas.',
  arm: 'Apoye el brazo en la mesa, a la altura del corazón.',
  bare: 'Brazo descubierto: ninguna manga bajo el manguito.',
  quiet: 'No hable mientras se le mide.',
  tell: 'Dígalo si tiene dolor o se encuentra mal, si puede estar embarazada o si no se debe usar un brazo.',
  source: (f) => `Tiempos según ${f.text}. El consejo de su propio centro va primero.`,
};
