import type { Bladder } from '@evenfall/physiology';
import type { RunPlace } from '@evenfall/record';
import type { VisitData } from './visit.js';

/** Cuffs that the scheme of the bedside knows too; those for the smallest are not in it. */
const IN_SCHEME: readonly Bladder[] = ['small-adult', 'adult', 'large-adult', 'thigh'];

/** Where the cuff is, as the bedside says it. Nobody typed the girth of the arm: it is not known there. */
export function placeOf({ circumstances, instrument }: VisitData): RunPlace {
  const isKnown = IN_SCHEME.includes(instrument.bladder);
  return {
    site: 'upper-arm',
    side: circumstances.arm,
    posture: 'sit',
    cuff: isKnown ? { scheme: 'aha-2005', id: instrument.bladder } : null,
    armCm: null,
    override: null,
  };
}
