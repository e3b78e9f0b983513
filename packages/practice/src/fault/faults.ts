import { EQUIPMENT_FIGURES } from '@evenfall/clinical';
import { bladderFor, type Circumstances, type Instrument, PROPER, sizesTooSmall } from '@evenfall/physiology';
import { restedBy } from './proper.js';

/**
 * Everything that an observer can do wrong with a reading by ear, with the one thing to do differently. `circumstances`:
 * how the person was prepared and the cuff and chest piece placed; `instrument`; `hand`: bulb and valve; `reader`: ear,
 * eye and pen; `place`: where it was done.
 */
export const FAULTS = {
  'too-little-rest': { of: 'circumstances', doInstead: 'rest-five-minutes' },
  talking: { of: 'circumstances', doInstead: 'ask-for-silence' },
  'legs-crossed': { of: 'circumstances', doInstead: 'feet-flat' },
  'back-unsupported': { of: 'circumstances', doInstead: 'support-back' },
  'full-bladder': { of: 'circumstances', doInstead: 'empty-bladder-first' },
  caffeine: { of: 'circumstances', doInstead: 'wait-after-caffeine' },
  nicotine: { of: 'circumstances', doInstead: 'wait-after-smoking' },
  cold: { of: 'circumstances', doInstead: 'warm-room' },
  'arm-unsupported': { of: 'circumstances', doInstead: 'support-arm' },
  'arm-height': { of: 'circumstances', doInstead: 'arm-at-heart' },
  'cuff-loose': { of: 'circumstances', doInstead: 'wrap-snugly' },
  'over-sleeve': { of: 'circumstances', doInstead: 'bare-arm' },
  'tight-sleeve': { of: 'circumstances', doInstead: 'take-sleeve-off' },
  'pressed-hard': { of: 'circumstances', doInstead: 'press-lightly' },
  'under-cuff': { of: 'circumstances', doInstead: 'beside-the-cuff' },
  'chest-piece-off': { of: 'circumstances', doInstead: 'over-the-artery' },
  'pumped-again': { of: 'circumstances', doInstead: 'empty-and-wait' },
  'beginner-fingers': { of: 'circumstances', doInstead: 'feel-lightly' },
  'cuff-size': { of: 'instrument', doInstead: 'measure-the-arm' },
  'gauge-off': { of: 'instrument', doInstead: 'check-the-gauge' },
  'hose-leaks': { of: 'instrument', doInstead: 'check-the-hose' },
  'too-fast': { of: 'hand', doInstead: 'two-to-three-a-second' },
  'too-slow': { of: 'hand', doInstead: 'two-to-three-a-second' },
  'margin-small': { of: 'hand', doInstead: 'feel-and-add-thirty' },
  'not-felt-first': { of: 'hand', doInstead: 'feel-first' },
  'began-in-sounds': { of: 'hand', doInstead: 'let-out-and-higher' },
  'chest-piece-away': { of: 'hand', doInstead: 'keep-listening' },
  'read-late': { of: 'reader', doInstead: 'eye-on-the-needle' },
  'silent-gap': { of: 'reader', doInstead: 'feel-and-listen-from-above' },
  misheard: { of: 'reader', doInstead: 'first-of-two-last-of-all' },
  'digit-habit': { of: 'reader', doInstead: 'nearest-mark' },
  'misread-needle': { of: 'reader', doInstead: 'read-the-scale' },
  // On a screen nobody looks from the side: this is for the observers of a plan.
  parallax: { of: 'reader', doInstead: 'look-straight-on' },
  'on-no-sound': { of: 'reader', doInstead: 'wait-for-the-sound' },
  'off-the-sound': { of: 'reader', doInstead: 'mark-in-time' },
  'not-heard': { of: 'reader', doInstead: 'amplify-or-feel' },
  noise: { of: 'place', doInstead: 'quiet-place' },
} as const;

export type FaultCode = keyof typeof FAULTS;
export type DoInstead = (typeof FAULTS)[FaultCode]['doInstead'];
export const FAULT_CODES = Object.keys(FAULTS) as readonly FaultCode[];

/** Faults of how somebody came and sat: nobody who is unwell is made to wait, moved about or hushed for them. */
const SITTING: ReadonlySet<FaultCode> = new Set([
  'too-little-rest',
  'talking',
  'legs-crossed',
  'back-unsupported',
  'full-bladder',
  'caffeine',
  'nicotine',
  'cold',
]);

/**
 * Faults of preparing: how the person sat, what was put on the arm, and where. With them a right hand and ear read what was to be
 * heard then. What hand and chest piece did is none of them. Source: assessment handbook 1 (the observer apart from the technique).
 */
const PREPARING: ReadonlySet<FaultCode> = new Set([
  ...SITTING,
  'arm-unsupported',
  'arm-height',
  'cuff-loose',
  'over-sleeve',
  'tight-sleeve',
  'cuff-size',
  'gauge-off',
  'hose-leaks',
  'noise',
]);

/** Whether a fault is one of preparing, and not of hand, ear, eye or pen. */
export function isOfPreparing(code: FaultCode): boolean {
  return PREPARING.has(code);
}

/** Whether a fault is of how the person came and sat. Source: bedside handbook 3.15 (very low or unwell: do not wait). */
export function isOfSitting(code: FaultCode): boolean {
  return SITTING.has(code);
}

type OfCircumstances = {
  readonly code: FaultCode;
  readonly isAt: (now: Circumstances, seconds: number) => boolean;
  readonly proper: Partial<Circumstances> | ((now: Circumstances, seconds: number) => Partial<Circumstances>);
};

/** Faults of circumstances for a cuff pumped up at a second of the visit: when there is one, and what is put right to take it away. */
export const CIRCUMSTANCE_FAULTS: readonly OfCircumstances[] = [
  {
    code: 'too-little-rest',
    // Waiting in the room is rest too.
    isAt: ({ restMinutes }, seconds) => restMinutes + seconds / 60 < PROPER.restMinutes,
    proper: ({ restMinutes }, seconds) => ({ restMinutes: restedBy(seconds, restMinutes) }),
  },
  { code: 'talking', isAt: ({ isTalking }) => isTalking, proper: { isTalking: false } },
  { code: 'legs-crossed', isAt: ({ hasLegsCrossed }) => hasLegsCrossed, proper: { hasLegsCrossed: false } },
  {
    code: 'back-unsupported',
    isAt: ({ hasBackUnsupported }) => hasBackUnsupported,
    proper: { hasBackUnsupported: false },
  },
  { code: 'full-bladder', isAt: ({ hasFullBladder }) => hasFullBladder, proper: { hasFullBladder: false } },
  { code: 'caffeine', isAt: ({ hadCaffeine }) => hadCaffeine, proper: { hadCaffeine: false } },
  { code: 'nicotine', isAt: ({ hadNicotine }) => hadNicotine, proper: { hadNicotine: false } },
  { code: 'cold', isAt: ({ isCold }) => isCold, proper: { isCold: false } },
  {
    code: 'arm-unsupported',
    isAt: ({ isArmUnsupported }) => isArmUnsupported,
    proper: { isArmUnsupported: false },
  },
  {
    code: 'arm-height',
    isAt: ({ armBelowHeartCm }) => armBelowHeartCm !== 0,
    proper: { armBelowHeartCm: 0 },
  },
  { code: 'cuff-loose', isAt: ({ isCuffLoose }) => isCuffLoose, proper: { isCuffLoose: false } },
  { code: 'over-sleeve', isAt: ({ isOverSleeve }) => isOverSleeve, proper: { isOverSleeve: false } },
  { code: 'tight-sleeve', isAt: ({ hasTightSleeve }) => hasTightSleeve, proper: { hasTightSleeve: false } },
  {
    code: 'pressed-hard',
    isAt: ({ chestPiece }) => chestPiece === 'pressed-hard',
    proper: { chestPiece: 'light' },
  },
  {
    code: 'under-cuff',
    isAt: ({ chestPiece }) => chestPiece === 'under-cuff',
    proper: { chestPiece: 'light' },
  },
  {
    code: 'chest-piece-off',
    isAt: ({ chestPieceOffMm }) => chestPieceOffMm > 0,
    proper: { chestPieceOffMm: 0 },
  },
  { code: 'pumped-again', isAt: ({ wasReinflated }) => wasReinflated, proper: { wasReinflated: false } },
  {
    code: 'beginner-fingers',
    isAt: ({ fingers }) => fingers === 'beginner',
    proper: { fingers: 'practised' },
  },
];

/** The circumstances with a fault put right. */
export function putRight({ proper }: OfCircumstances, now: Circumstances, seconds: number): Circumstances {
  return { ...now, ...(typeof proper === 'function' ? proper(now, seconds) : proper) };
}

/** Whether the bladder is one that the arm does not ask for. */
export function isWrongSize(armCm: number, { bladder }: Instrument): boolean {
  return bladder !== bladderFor(armCm) && sizesTooSmall(armCm, bladder) !== 0;
}

/** Whether a gauge shows another pressure than there is, beyond what its marks can tell: half of 2 mmHg. */
export function isGaugeOff({ zeroOffsetMmHg, scaleError }: Instrument): boolean {
  const HALF_MARK = 1;
  const AT_MMHG = 120;
  return Math.abs(zeroOffsetMmHg + scaleError * AT_MMHG) >= HALF_MARK;
}

/**
 * What a hose loses of itself while a cuff is let down by the valve, mmHg a second; 0 where it holds as well as one in order must
 * (`mostLeakMmHgPerMinute`). Source: bedside handbook 3.3; physiology handbook 6.2.
 */
export function leakOf({ leakMmHgPerMinute }: Instrument): number {
  return leakMmHgPerMinute > EQUIPMENT_FIGURES.mostLeakMmHgPerMinute.value ? leakMmHgPerMinute / 60 : 0;
}
