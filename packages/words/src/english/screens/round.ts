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

/** The words of the screens of a guided round; of some of them the start page and the keypad say a part. */
export const roundScreens = {
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
} as const;
