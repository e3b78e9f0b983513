import { amend } from './amend.js';
import { away } from './away.js';
import { bring } from './bring.js';
import { card } from './card.js';
import { chart } from './chart.js';
import { classBook } from './class.js';
import { diary } from './diary.js';
import { equipment } from './equipment.js';
import { handover } from './handover.js';
import { person } from './person.js';
import { protocol } from './protocol.js';
import { signIn } from './signIn.js';
import { trend } from './trend.js';

/** The words of the screens that a device fetches after the bedside; of some screens the bedside says the rest. */
export const laterScreens = {
  person,
  equipment,
  protocol,
  card,
  chart,
  diary,
  trend,
  away,
  handover,
  bring,
  amend,
  signIn,
  class: classBook,
} as const;
