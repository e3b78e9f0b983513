import type { ChestPiece } from '../circumstances/circumstances.js';
import type { Bladder } from '../cuff/instrument.js';
import type { Arranged } from './arranged.js';

/**
 * What hands do, stamped with the tick at which they do it. Actions of one tick work in the order of the list.
 * - `squeeze`: the bulb, by a share of its full stroke (0 to 1).
 * - `valve`: turned open to so many degrees, 0 shut to 120.
 * - `quick-release`: all air out.
 * - `steady-fall`, `steady-rise`: an ideal hand holds the rate exactly (0 holds the pressure) until the next action on
 *   bulb or valve, or until `toMmHg`. For showing how, for batch studies and for tests.
 * - `chest-piece`: put on (`offMm` from the artery) or taken away (null).
 * - `apex`: the chest piece laid on the chest over the apex of the heart, or taken from there. On the arm it is not there.
 * - `arm`: held so far below the heart. - `finger`: on the wrist, or away. - `talk`: the person begins or stops.
 * - `arrange`: how the person sits, what they do and hold, on which arm the cuff is, from now on; what is left out stays as
 *   it is. A cuff that is wrapped more tightly or more loosely by it is empty.
 * - `cuff`: another one is put on, empty. - `gauge`: another gauge with its hose is taken, the cuff empty: a sound one.
 */
export type Action = { readonly tick: number } & (
  | { readonly kind: 'squeeze'; readonly share: number }
  | { readonly kind: 'valve'; readonly degrees: number }
  | { readonly kind: 'quick-release' }
  | { readonly kind: 'steady-fall'; readonly mmHgPerSecond: number; readonly toMmHg: number }
  | { readonly kind: 'steady-rise'; readonly mmHgPerSecond: number; readonly toMmHg: number }
  | { readonly kind: 'chest-piece'; readonly offMm: number | null; readonly held: ChestPiece }
  | { readonly kind: 'apex'; readonly isOn: boolean }
  | { readonly kind: 'arm'; readonly belowHeartCm: number }
  | { readonly kind: 'finger'; readonly isOn: boolean }
  | { readonly kind: 'talk'; readonly isTalking: boolean }
  | ({ readonly kind: 'arrange' } & Arranged)
  | { readonly kind: 'cuff'; readonly bladder: Bladder }
  | { readonly kind: 'gauge' }
);
