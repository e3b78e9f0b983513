import { normalOf, normalWithin } from '../chance/normal.js';
import { keyOf, uniformOf } from '../chance/uniform.js';
import { exp } from '../exact/exponential.js';
import { HEART_FIGURES } from '../heart/figures.js';
import { amplitudesFor, VARIATION_TARGETS } from '../heart/variation.js';
import type { Gap, Scenario } from '../scenario/scenario.js';
import { SLOW_FIGURES } from '../slow/figures.js';
import { PERSON_FIGURES as F } from './figures.js';
import type { Person } from './person.js';

const UNBOUNDED = Number.POSITIVE_INFINITY;

/** Draws of a person, in the order in which they were added: a new one goes to the end. */
const DRAW = {
  opening: 0,
  closing: 1,
  sound: 2,
  hasMuffled: 3,
  muffled: 4,
  hasSwish: 5,
  hasCrisp: 6,
  feeling: 7,
  sitting: 8,
  first: 9,
  swing: 10,
  slowWave: 11,
  delay: 12,
  hasGap: 13,
  gapTop: 14,
  gapWidth: 15,
  slow: 16,
};

/** The person of a scenario and a seed: everything that is drawn once is drawn here. */
export function makePerson(scenario: Scenario, seed: number): Person {
  const key = keyOf(seed, 'patient');
  const between = (draw: number, low: number, high: number) => low + (high - low) * uniformOf(key, draw);
  const normal = (draw: number, mean: number, sd: number, low: number, high: number) =>
    normalWithin(key, draw, 0, mean, sd, low, high);
  const { rhythm, traits, alerting } = scenario;
  const isHigh = scenario.systolic >= F.sittingHighSystolic.value;
  const cold = traits.hasColdHands ? F.feelingColdMmHg.value : 0;
  return {
    scenario,
    seed,
    beatSeed: seed,
    originSeconds: 0,
    rest: { systolic: scenario.systolic, diastolic: scenario.diastolic },
    openingMmHg:
      normal(DRAW.opening, F.openingMmHg.value, F.openingSd.value, 0, F.openingMost.value) +
      (traits.isStiff ? F.openingStiffMmHg.value : 0),
    closingMmHg: normal(
      DRAW.closing,
      F.closingMmHg.value,
      F.closingSd.value,
      F.closingLeast.value,
      F.closingMost.value,
    ),
    soundDb:
      scenario.soundDb ??
      normal(DRAW.sound, F.soundDb.value, F.soundSdDb.value, F.soundLeastDb.value, UNBOUNDED),
    soundSdDb: F.beatDb.value,
    muffledAboveMmHg: muffledAbove(scenario, key),
    gap: scenario.gap ?? drawGap(scenario, key),
    hasSwish: uniformOf(key, DRAW.hasSwish) < F.swishChance.value,
    hasCrisp: uniformOf(key, DRAW.hasCrisp) < F.crispChance.value,
    feelingMmHg: normal(DRAW.feeling, F.feelingMmHg.value, F.feelingSd.value, 0, UNBOUNDED) + cold,
    alerting: {
      sittingMmHg:
        alerting.sittingMmHg ??
        (isHigh
          ? between(DRAW.sitting, F.sittingHighLeastMmHg.value, F.sittingHighMostMmHg.value)
          : between(DRAW.sitting, 0, F.sittingLowMmHg.value)),
      sittingPulsePerMinute: alerting.sittingPulsePerMinute,
      sittingBreathsPerMinute: alerting.sittingBreathsPerMinute,
      firstReadingMmHg:
        alerting.firstReadingMmHg ??
        normal(DRAW.first, SLOW_FIGURES.firstMmHg.value, SLOW_FIGURES.firstSdMmHg.value, 0, UNBOUNDED),
      whiteCoatMmHg: alerting.whiteCoatMmHg,
    },
    breathingSwingMmHg:
      scenario.breathingSwingMmHg ?? between(DRAW.swing, F.swingLeastMmHg.value, F.swingMostMmHg.value),
    slowWaveMmHg: between(DRAW.slowWave, F.slowWaveLeastMmHg.value, F.slowWaveMostMmHg.value),
    slowSdMmHg: slowSd(key),
    beatSdMmHg: HEART_FIGURES.beatSdMmHg.value,
    beatDiastolicSdMmHg: HEART_FIGURES.beatDiastolicSdMmHg.value,
    delaySeconds: normal(DRAW.delay, F.delaySeconds.value, F.delaySd.value, 0.09, 0.21),
    heart: amplitudesFor(VARIATION_TARGETS[rhythm.variation], 60 / rhythm.ratePerMinute),
  };
}

/** How much a person's pressure wanders: the book's SD in the median, and different from one person to the next. */
function slowSd(key: number): number {
  return HEART_FIGURES.slowSdMmHg.value * exp(HEART_FIGURES.slowSpread.value * normalOf(key, DRAW.slow));
}

/** A gap for somebody of a kind that may have one. Source: physiology handbook 8.5. */
function drawGap(scenario: Scenario, key: number): Gap | null {
  if (uniformOf(key, DRAW.hasGap) >= scenario.gapChance) return null;
  const spread = F.gapTopMostMmHg.value - F.gapTopLeastMmHg.value;
  const topMmHg = scenario.systolic - F.gapTopLeastMmHg.value - spread * uniformOf(key, DRAW.gapTop);
  const width = normalWithin(
    key,
    DRAW.gapWidth,
    0,
    F.gapWidthMmHg.value,
    F.gapWidthSd.value,
    F.gapWidthLeastMmHg.value,
    F.gapWidthMostMmHg.value,
  );
  const lowest = scenario.diastolic + F.gapOverDiastolicMmHg.value;
  const bottomMmHg = Math.max(topMmHg - width, lowest);
  return bottomMmHg < topMmHg ? { topMmHg, bottomMmHg } : null;
}

/** Whether the muffling can be heard in this person, and how far over the last sound it lies. */
function muffledAbove(scenario: Scenario, key: number): number | null {
  const isChild = scenario.ageYears < F.adultYears.value;
  const { isPregnant } = scenario.traits;
  const usual = isChild ? F.muffledChildChance : isPregnant ? F.muffledPregnantChance : F.muffledChance;
  const chance = scenario.muffledChance ?? (scenario.muffled === null ? usual.value : 1);
  if (uniformOf(key, DRAW.hasMuffled) >= chance) return null;
  if (scenario.muffled !== null) return scenario.muffled - scenario.diastolic;
  const mean = isChild ? F.muffledChildMmHg : isPregnant ? F.muffledPregnantMmHg : F.muffledMmHg;
  const sd = isChild ? F.muffledChildSd : F.muffledSd;
  return normalWithin(
    key,
    DRAW.muffled,
    0,
    mean.value,
    sd.value,
    1,
    (scenario.systolic - scenario.diastolic) / 2,
  );
}

/**
 * The same person with beats and breaths that begin afresh at an instant of the visit, `episode` telling one beginning
 * from another. Slow courses go on over the visit. For batch studies of late readings, which else had to step through
 * every beat before.
 */
export function movedTo(person: Person, originSeconds: number, episode: number): Person {
  return { ...person, originSeconds, beatSeed: (person.seed ^ Math.imul(episode + 1, 0x9e3779b1)) >>> 0 };
}
