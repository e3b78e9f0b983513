import type { practice as english } from '../../../english/screens/bedside/practice.js';
import type { Reworded } from '../../../reworded.js';

/** Como en `english/screens/bedside/practice`. */
export const practice: Reworded<typeof english> = { link: 'Sala de prácticas: personas simuladas' };
