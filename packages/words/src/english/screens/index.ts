import { amend } from './amend.js';
import { answers } from './answers.js';
import { app } from './app.js';
import { away } from './away.js';
import { begun } from './begun.js';
import { bring } from './bring.js';
import { card } from './card.js';
import { chart } from './chart.js';
import { classBook } from './class.js';
import { count } from './count.js';
import { cover } from './cover.js';
import { diary } from './diary.js';
import { equipment } from './equipment.js';
import { facts } from './facts.js';
import { handover } from './handover.js';
import { moments } from './moments.js';
import { people } from './people.js';
import { person } from './person.js';
import { prepare } from './prepare.js';
import { pressure } from './pressure.js';
import { protocol } from './protocol.js';
import { quick } from './quick.js';
import { rest } from './rest.js';
import { result } from './result.js';
import { review } from './review.js';
import { roles } from './roles.js';
import { second } from './second.js';
import { settings } from './settings.js';
import { signIn } from './signIn.js';
import { signs } from './signs.js';
import { taps } from './taps.js';
import { trend } from './trend.js';

/**
 * The words of the screens: a file for each screen, a key for each text. A text without figures is a string;
 * a text with figures is a function of them and of `Say`, which alone writes numbers and plurals.
 * To add one, add it here: every other language then fails to compile until it has it too.
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
  card,
  chart,
  diary,
  trend,
  away,
  handover,
  bring,
  quick,
  amend,
  roles,
  second,
  settings,
  signIn,
  class: classBook,
  answers,
} as const;
