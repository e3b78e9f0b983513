import type { Bladder } from '@evenfall/physiology';

/** Width of each bladder beside an adult's, as drawn. */
export const CUFF_SCALE: Readonly<Record<Bladder, number>> = {
  infant: 0.45,
  child: 0.62,
  'small-adult': 0.82,
  adult: 1,
  'large-adult': 1.12,
  thigh: 1.25,
};
