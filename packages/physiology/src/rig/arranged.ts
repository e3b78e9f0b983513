import type { Circumstances, Preparation } from '../circumstances/circumstances.js';
import type { Action } from './action.js';
import { TICKS_PER_SECOND } from './tick.js';

/**
 * What a person can be asked to do otherwise between two inflations, whether the arm is raised before each, and what can be put right
 * about sleeve, cuff and place.
 */
export type Arranged = Partial<
  Pick<
    Circumstances,
    | 'posture'
    | 'arm'
    | 'isTalking'
    | 'hasLegsCrossed'
    | 'hasBackUnsupported'
    | 'hasFullBladder'
    | 'armBelowHeartCm'
    | 'isArmUnsupported'
    | 'wasArmRaised'
    | 'isQuieter'
    | keyof Preparation
  >
> & {
  /** They got up and sit down at this tick: rest is counted from it. */
  readonly isSeatedAnew?: boolean;
};

/** The circumstances after a movement of the hands; the same ones where it changed none. */
export function circumstancesAfter(now: Circumstances, action: Action): Circumstances {
  switch (action.kind) {
    case 'chest-piece':
      return action.offMm === null ? now : { ...now, chestPiece: action.held, chestPieceOffMm: action.offMm };
    case 'arm':
      return { ...now, armBelowHeartCm: action.belowHeartCm };
    case 'talk':
      return { ...now, isTalking: action.isTalking };
    case 'arrange': {
      const { tick, kind, isSeatedAnew = false, ...arranged } = action;
      const isUp = arranged.posture === 'standing' && now.posture !== 'standing';
      // Minutes on the feet, and of sitting, are counted from the start of the visit: none have gone by at this tick.
      const none = -tick / (60 * TICKS_PER_SECOND);
      return {
        ...now,
        ...arranged,
        ...(isUp ? { standingMinutes: none } : {}),
        ...(isSeatedAnew ? { restMinutes: none } : {}),
      };
    }
    default:
      return now;
  }
}
