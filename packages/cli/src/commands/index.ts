import type { AnyCommand } from '../command.js';
import { account } from './account.js';
import { ambulatory } from './ambulatory.js';
import { average } from './average.js';
import { backup } from './backup.js';
import { category } from './category.js';
import { check } from './check.js';
import { child } from './child.js';
import { count } from './count.js';
import { cuff } from './cuff.js';
import { equipment } from './equipment.js';
import { exportCommand } from './export.js';
import { helpCommand } from './help.js';
import { home } from './home.js';
import { importCommand } from './import.js';
import { orthostatic } from './orthostatic.js';
import { plan } from './plan.js';
import { reading } from './reading.js';
import { restore } from './restore.js';
import { run } from './run.js';
import { score } from './score.js';
import { serve } from './serve.js';
import { simulate } from './simulate.js';
import { sound } from './sound.js';
import { taps } from './taps.js';
import { usual } from './usual.js';
import { variability } from './variability.js';

/** Every command of `evenfall`, in the order in which help shows them. A new one is added here and only here. */
const ANSWERING: readonly AnyCommand[] = [
  count,
  taps,
  run,
  reading,
  cuff,
  average,
  category,
  child,
  score,
  home,
  ambulatory,
  usual,
  variability,
  orthostatic,
  simulate,
  sound,
  plan,
  serve,
  account,
  backup,
  restore,
  check,
  equipment,
  exportCommand,
  importCommand,
];

export const commands: readonly AnyCommand[] = [...ANSWERING, helpCommand(ANSWERING)];
