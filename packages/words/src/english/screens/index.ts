import { answers } from './answers.js';
import { app } from './app.js';
import { amend } from './bedside/amend.js';
import { chart } from './bedside/chart.js';
import { classBook } from './bedside/class.js';
import { diary } from './bedside/diary.js';
import { equipment } from './bedside/equipment.js';
import { person } from './bedside/person.js';
import { protocol } from './bedside/protocol.js';
import { signIn } from './bedside/signIn.js';
import { begun } from './begun.js';
import { count } from './count.js';
import { cover } from './cover.js';
import { facts } from './facts.js';
import { moments } from './moments.js';
import { people } from './people.js';
import { prepare } from './prepare.js';
import { pressure } from './pressure.js';
import { quick } from './quick.js';
import { rest } from './rest.js';
import { result } from './result.js';
import { review } from './review.js';
import { roles } from './roles.js';
import { second } from './second.js';
import { settings } from './settings.js';
import { signs } from './signs.js';
import { taps } from './taps.js';

/**
 * The words of the screens: a file for each screen, a key for each text. A text without figures is a string;
 * a text with figures is a function of them and of `Say`, which alone writes numbers and plurals.
 * Here are those that the bedside says. To add one, add it here or in `later.ts`: every other language then fails to compile
 * until it has it too, and a test fails where the bedside says what comes later.
 */
export const screens = {
  app,
  people,
  person,
  facts,
  equipment,
  count,
  taps,
  signs,
  prepare,
  rest,
  begun,
  cover,
  protocol,
  pressure,
  moments,
  result,
  review,
  chart,
  diary,
  quick,
  amend,
  roles,
  second,
  settings,
  signIn,
  class: classBook,
  answers,
} as const;
