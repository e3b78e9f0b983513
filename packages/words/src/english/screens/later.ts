import { amend } from './amend.js';
import { away } from './away.js';
import { bring } from './bring.js';
import { card } from './card.js';
import { chart } from './chart.js';
import { classBook } from './class.js';
import { debrief } from './debrief.js';
import { diary } from './diary.js';
import { equipment } from './equipment.js';
import { handover } from './handover.js';
import { person } from './person.js';
import { plan } from './plan.js';
import { protocol } from './protocol.js';
import { scenarioForm } from './scenarioForm.js';
import { signIn } from './signIn.js';
import { trend } from './trend.js';

/** The words of the screens that a device fetches after the bedside; of some screens the bedside says the rest. */
export const laterScreens = {
  person,
  equipment,
  plan,
  protocol,
  card,
  chart,
  debrief,
  diary,
  trend,
  away,
  handover,
  bring,
  amend,
  scenarioForm,
  signIn,
  class: classBook,
} as const;
