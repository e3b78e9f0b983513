import type { screens as english } from '../../english/screens/index.js';
import type { Reworded } from '../../reworded.js';
import { answers } from './answers.js';
import { app } from './app.js';
import { classBook } from './bedside/class.js';
import { count } from './bedside/count.js';
import { diary } from './bedside/diary.js';
import { equipment } from './bedside/equipment.js';
import { person } from './bedside/person.js';
import { practice } from './bedside/practice.js';
import { protocol } from './bedside/protocol.js';
import { result } from './bedside/result.js';
import { review } from './bedside/review.js';
import { second } from './bedside/second.js';
import { signIn } from './bedside/signIn.js';
import { cover } from './cover.js';
import { facts } from './facts.js';
import { people } from './people.js';
import { pressure } from './pressure.js';
import { quick } from './quick.js';
import { roles } from './roles.js';
import { settings } from './settings.js';

/** As in `english/screens`. */
export const screens: Reworded<typeof english> = {
  app,
  people,
  person,
  facts,
  equipment,
  count,
  cover,
  protocol,
  pressure,
  result,
  review,
  diary,
  quick,
  roles,
  second,
  settings,
  signIn,
  class: classBook,
  practice,
  answers,
};
