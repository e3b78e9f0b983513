import type { roundScreens as english } from '../../english/screens/round.js';
import type { Reworded } from '../../reworded.js';
import { amend } from './bedside/amend.js';
import { chart } from './bedside/chart.js';
import { signs } from './bedside/signs.js';
import { taps } from './bedside/taps.js';
import { begun } from './begun.js';
import { count } from './count.js';
import { moments } from './moments.js';
import { postures } from './postures.js';
import { prepare } from './prepare.js';
import { rest } from './rest.js';
import { result } from './result.js';
import { review } from './review.js';
import { second } from './second.js';

/** As in `english/screens/round`. */
export const roundScreens: Reworded<typeof english> = {
  amend,
  begun,
  chart,
  count,
  moments,
  postures,
  prepare,
  rest,
  result,
  review,
  second,
  signs,
  taps,
};
