import type { Bladder } from '@evenfall/physiology';
import type { RunPlace } from '@evenfall/record';
import { nowOf, type VisitData } from './visit.js';

/** Cuffs that the scheme of the bedside knows too; those for the smallest are not in it. */
const IN_SCHEME: readonly Bladder[] = ['small-adult', 'adult', 'large-adult', 'thigh'];

/** Where the cuff is, as the bedside says it. Nobody typed the girth of the arm: it is not known there. */
export function placeOf(visit: VisitData): RunPlace {
  const { circumstances, bladder } = nowOf(visit);
  return {
    site: 'upper-arm',
    side: circumstances.arm,
    posture: circumstances.posture === 'standing' ? 'stand' : 'sit',
    cuff: IN_SCHEME.includes(bladder) ? { scheme: 'aha-2005', id: bladder } : null,
    armCm: null,
    override: null,
  };
}
