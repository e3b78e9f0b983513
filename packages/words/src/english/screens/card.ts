import type { Say } from '../../say.js';
import { MINUTES } from './nouns.js';

type Text = { text: string };
type Minutes = { minutes: number };

/** A page in pictures for the person to be measured, and the screen that prints it. Source of what it asks: bedside handbook 3.1. */
export const card = {
  title: 'Preparation card',
  lead: 'A page to print and hand to whoever is to be measured.',
  language: 'Language of the card',
  print: 'Print the card',
  heading: 'Before your blood pressure is measured',
  before: (f: Minutes, say: Say) =>
    `For ${say.counted(f.minutes, MINUTES)} before: no coffee, tea or cola, no tobacco, no exercise.`,
  toilet: 'Go to the toilet first.',
  rest: (f: Minutes, say: Say) => `Sit quietly for ${say.counted(f.minutes, MINUTES)}.`,
  back: 'Lean your back against the chair.',
  feet: 'Both feet flat on the floor, legs not crossed.',
  arm: 'Lay your arm on the table, at the height of your heart.',
  bare: 'Bare arm: no sleeve under the cuff.',
  quiet: 'Do not talk while it is being measured.',
  tell: 'Say so if you are in pain or feel unwell, if you may be pregnant, or if an arm must not be used.',
  source: (f: Text) => `Times after ${f.text}. Your clinic’s own advice comes first.`,
} as const;
