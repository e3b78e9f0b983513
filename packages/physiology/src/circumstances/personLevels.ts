import type { Person } from '../person/person.js';
import type { Scenario } from '../scenario/scenario.js';
import { firstReadingCourse, sittingLeft, whiteCoatCourse, whiteCoatShare } from '../slow/alerting.js';
import { SLOW_FIGURES } from '../slow/figures.js';
import type { Circumstances } from './circumstances.js';
import { preparationEffects, sumOf } from './effects.js';
import { CIRCUMSTANCE_FIGURES } from './figures.js';
import { standingAt } from './standing.js';

const COAT_DIASTOLIC = SLOW_FIGURES.coatDiastolicShare.value;
const COAT_PULSE = SLOW_FIGURES.coatPulsePerMmHg.value;

/** The levels about which a person's beats vary, from instant to instant: rest and everything that acts on the person. */
export class PersonLevels {
  systolic = 0;
  diastolic = 0;
  /** Beats a minute over the rate at rest. */
  pulseExcess = 0;
  private person: Person | null = null;
  private circumstances: Circumstances | null = null;
  /** Whose effects, and in which circumstances, were added up last: a batch asks for the same ones over and over. */
  private summed: Scenario | null = null;
  private addedSystolic = 0;
  private addedDiastolic = 0;
  private fixedSystolic = 0;
  private fixedDiastolic = 0;
  private fixedPulse = 0;
  private sitting = 0;
  private sittingPulse = 0;
  private first = 0;
  private firstAt = Number.POSITIVE_INFINITY;
  private coat = 0;

  restart(person: Person, circumstances: Circumstances, firstInflationSeconds: number | null): void {
    this.person = person;
    this.sitting = person.alerting.sittingMmHg;
    this.sittingPulse = person.alerting.sittingPulsePerMinute;
    this.first = person.alerting.firstReadingMmHg;
    this.firstAt = circumstances.firstInflationSeconds ?? firstInflationSeconds ?? Number.POSITIVE_INFINITY;
    this.change(circumstances);
  }

  /** Other circumstances from now on: the arm is moved, the person begins to talk. */
  change(circumstances: Circumstances): void {
    const person = this.person;
    if (person === null) return;
    if (circumstances !== this.circumstances || person.scenario !== this.summed) {
      this.circumstances = circumstances;
      this.summed = person.scenario;
      const fixed = sumOf(preparationEffects(person, circumstances));
      this.addedSystolic = fixed.systolic;
      this.addedDiastolic = fixed.diastolic;
    }
    this.fixedSystolic = person.rest.systolic + this.addedSystolic;
    this.fixedDiastolic = person.rest.diastolic + this.addedDiastolic;
    this.fixedPulse = circumstances.isTalking ? CIRCUMSTANCE_FIGURES.talkingPulse.value : 0;
    this.coat = person.alerting.whiteCoatMmHg * whiteCoatShare(circumstances.measuredBy);
  }

  /** The first inflation of the visit begins. */
  inflateAt(seconds: number): void {
    if (this.firstAt === Number.POSITIVE_INFINITY) this.firstAt = seconds;
  }

  moveTo(seconds: number): void {
    const circumstances = this.circumstances;
    const person = this.person;
    if (circumstances === null || person === null) return;
    let systolic = this.fixedSystolic;
    let diastolic = this.fixedDiastolic;
    let pulse = this.fixedPulse;
    if (this.sitting !== 0 || this.sittingPulse !== 0) {
      const left = sittingLeft(circumstances.restMinutes * 60 + seconds);
      systolic += this.sitting * left;
      diastolic += SLOW_FIGURES.sittingDiastolicShare.value * this.sitting * left;
      pulse += this.sittingPulse * left;
    }
    if (this.first !== 0 && seconds >= this.firstAt) {
      const left = this.first * firstReadingCourse(seconds - this.firstAt);
      systolic += left;
      diastolic += SLOW_FIGURES.firstDiastolicShare.value * left;
    }
    this.systolic = systolic;
    this.diastolic = diastolic;
    this.pulseExcess = pulse;
    if (this.coat !== 0 || person.scenario.standing !== null) this.addSeldom(person, circumstances, seconds);
  }

  /** What acts on few: the fright at somebody in white, getting up. */
  private addSeldom(person: Person, circumstances: Circumstances, seconds: number): void {
    let { systolic, diastolic, pulseExcess: pulse } = this;
    if (this.coat !== 0) {
      const course = this.coat * whiteCoatCourse(circumstances.observerMinutes * 60 + seconds);
      systolic += course;
      diastolic += COAT_DIASTOLIC * course;
      pulse += COAT_PULSE * course;
    }
    const { standing } = person.scenario;
    if (standing !== null && circumstances.posture === 'standing') {
      const minutes = circumstances.standingMinutes + seconds / 60;
      systolic +=
        standingAt(
          minutes,
          person.rest.systolic,
          standing.oneMinute.systolic,
          standing.threeMinutes.systolic,
        ) - person.rest.systolic;
      diastolic +=
        standingAt(
          minutes,
          person.rest.diastolic,
          standing.oneMinute.diastolic,
          standing.threeMinutes.diastolic,
        ) - person.rest.diastolic;
      pulse += standing.pulsePerMinute - person.scenario.rhythm.ratePerMinute;
    }
    this.systolic = systolic;
    this.diastolic = diastolic;
    this.pulseExcess = pulse;
  }

  copyFrom(other: PersonLevels): void {
    Object.assign(this, other);
  }
}
