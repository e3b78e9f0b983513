import type { Person } from '../person/person.js';
import { type FibrillationLaw, fibrillationLaw } from './fibrillation.js';
import { HEART_FIGURES as F } from './figures.js';
import type { RhythmKind } from './rhythm.js';
import { fibrillationRunOffRate, leftAfter, runOffRate } from './runOff.js';

/** Kinds whose pressures follow from the intervals through the run-off of the arteries. */
const BY_RUN_OFF: ReadonlySet<RhythmKind> = new Set<RhythmKind>([
  'ventricular-ectopics',
  'atrial-ectopics',
  'trigeminy',
  'atrial-fibrillation',
  'wenckebach',
  'sinus-pauses',
]);

/** The arteries between two beats: what is left of one when the next comes, and what that adds. Source: physiology handbook 3.3. */
export class Reservoir {
  /** Whether the pressures of this rhythm follow from its intervals. */
  isUsed = false;
  /** How far foot and top of the beat at hand lie from the level, mmHg. */
  footOff = 0;
  topOff = 0;
  private perSecond = 1;
  private systolic = 0;
  private diastolic = 0;

  /** @param meanInterval of the rhythm on the whole, seconds */
  restart({ scenario: { rhythm }, rest: { systolic, diastolic } }: Person, meanInterval: number): void {
    this.isUsed = BY_RUN_OFF.has(rhythm.kind);
    this.systolic = systolic;
    this.diastolic = diastolic;
    this.footOff = 0;
    this.topOff = 0;
    if (!this.isUsed) return;
    const law: FibrillationLaw | null =
      rhythm.kind === 'atrial-fibrillation' ? fibrillationLaw(rhythm.ratePerMinute) : null;
    this.perSecond =
      law === null
        ? runOffRate(systolic, diastolic, meanInterval)
        : fibrillationRunOffRate(systolic, diastolic, law);
  }

  /** They run off over an interval, and a stroke adds to what is left. @param addedMmHg by that stroke */
  runOff(interval: number, addedMmHg: number): void {
    const to = F.runOffToMmHg.value;
    const top = this.systolic + this.topOff;
    const foot = to + (top - to) * leftAfter(interval, this.perSecond);
    this.footOff = foot - this.diastolic;
    this.topOff = foot + addedMmHg - this.systolic;
  }

  copyFrom(other: Reservoir): void {
    Object.assign(this, other);
  }
}
