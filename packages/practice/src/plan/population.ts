import { agePrior, assessmentSd, componentsOf, US_ADULTS_2009_2012 } from '@evenfall/clinical';
import {
  BLANK,
  type Breathing,
  keyOf,
  type Levels,
  normalOf,
  PHYSIOLOGY_FIGURES,
  type Rhythm,
  type Scenario,
  uniformOf,
  type Variation,
} from '@evenfall/physiology';
import { PLAN_FIGURES as F } from './figures.js';

/** One of the people a protocol is tried on: who, and the usual level that no single visit shows. */
export type Subject = {
  readonly index: number;
  readonly key: number;
  readonly ageYears: number;
  readonly sex: 'f' | 'm';
  readonly usual: Levels;
  /** Seed of its body. */
  readonly seed: number;
};

const BODY = PHYSIOLOGY_FIGURES.person;

/** Sets the people of a study apart from every simulated person with the same seed. */
const POPULATION_SALT = 0x706f7075;
/** Draws of a subject, in the order in which they were added: a new one goes to the end. */
const LANE = {
  row: 0,
  age: 1,
  systolic: 2,
  diastolic: 3,
  pulse: 4,
  fibrillation: 5,
  ectopics: 6,
  arm: 7,
  hasGap: 8,
  gapTop: 9,
  gapWidth: 10,
  stiff: 11,
  body: 12,
  visitSystolic: 13,
  visitDiastolic: 14,
  sitting: 15,
  breaths: 16,
  periodic: 17,
} as const;
/** Lanes of when a count is begun. */
export const COUNT_LANE = { pulse: 18, breaths: 19 } as const;
/** From here on lanes of visits, days and readings at home. */
const HOME_LANE = 1000;

/** Weights of the rows of the priors: as many as there were in the survey. */
const ROWS = US_ADULTS_2009_2012.rows;
const ALL = ROWS.reduce((sum, { people }) => sum + people, 0);
/** A row without an end is taken as ten years long. */
const DECADE = 10;
const LEAST_DIASTOLIC = 40;
const LEAST_PULSE_PRESSURE = 18;
const LEAST_SYSTOLIC = 80;
const MOST_SYSTOLIC = 240;

/** The subject of an index: the same whatever else is drawn. Source: out-of-office handbook 17.3, 17.4. */
export function subjectOf(seed: number, index: number): Subject {
  const key = keyOf((seed ^ POPULATION_SALT ^ Math.imul(index + 1, 0x9e3779b1)) >>> 0, 'patient');
  let left = uniformOf(key, 0, LANE.row) * ALL;
  let at = 0;
  while (at < ROWS.length - 1 && left >= (ROWS[at]?.people ?? 0)) {
    left -= ROWS[at]?.people ?? 0;
    at += 1;
  }
  const row = ROWS[at] as (typeof ROWS)[number];
  const next = ROWS[at + 1];
  const to = next === undefined || next.sex !== row.sex ? row.fromYears + DECADE : next.fromYears;
  const ageYears = row.fromYears + Math.floor(uniformOf(key, 0, LANE.age) * (to - row.fromYears));
  const systolic = agePrior('systolic', ageYears, row.sex);
  const diastolic = agePrior('diastolic', ageYears, row.sex);
  if (systolic === null || diastolic === null) throw new Error('the priors are of adults');
  const [a, b] = pair(normalOf(key, 0, LANE.systolic), normalOf(key, 0, LANE.diastolic), F.correlation.value);
  return {
    index,
    key,
    ageYears,
    sex: row.sex,
    usual: possible({
      systolic: systolic.mean + systolic.sd * a,
      diastolic: diastolic.mean + diastolic.sd * b,
    }),
    seed: Math.floor(uniformOf(key, 0, LANE.body) * 2 ** 32),
  };
}

/** Two standard normal numbers that go together as far as a correlation says. */
function pair(first: number, other: number, correlation: number): readonly [number, number] {
  return [first, correlation * first + Math.sqrt(1 - correlation ** 2) * other];
}

function possible({ systolic, diastolic }: Levels): Levels {
  const low = Math.max(LEAST_DIASTOLIC, diastolic);
  const high = Math.min(MOST_SYSTOLIC, Math.max(LEAST_SYSTOLIC, systolic));
  return { systolic: Math.max(high, low + LEAST_PULSE_PRESSURE), diastolic: low };
}

/** The level of a subject at a visit, as the mean of three readings: the usual one and what visits weeks apart differ by beyond their readings. */
export function visitLevels({ key, usual }: Subject, visit: number): Levels {
  const [a, b] = pair(
    normalOf(key, visit, LANE.visitSystolic),
    normalOf(key, visit, LANE.visitDiastolic),
    F.visitCorrelation.value,
  );
  return possible({
    systolic: usual.systolic + visitSd('systolic', usual.systolic) * a,
    diastolic: usual.diastolic + visitSd('diastolic', usual.diastolic) * b,
  });
}

/** From this systolic at rest on sitting down matters as in hypertension. */
const HIGH_MMHG = BODY.sittingHighSystolic.value;
const LEAST_UNDER_MMHG = 0.01;

/** Levels at rest, and how far sitting down matters as in hypertension: 0 as under 140, 1 as from there on. */
export type Rest = Levels & { readonly highShare: number };

/**
 * The level at rest of somebody whose three readings at a visit have this mean: the levels of the survey are such means,
 * and the engine adds what a visit does by itself. That is 2.03 mmHg under a systolic at rest of 140 and 5.61 from there on, so
 * that no level at rest reads between 142.03 and 145.61; somebody whose visit lies there rests just under 140, with as much of what
 * sitting down adds in hypertension as brings the mean there.
 */
export function restLevels({ systolic, diastolic }: Levels): Rest {
  const low = F.riseLowSystolic.value;
  const high = F.riseHighSystolic.value;
  const share = (systolic - HIGH_MMHG - low) / (high - low);
  const highShare = share < 0 ? 0 : Math.min(share, 1);
  const diastolicRise =
    F.riseLowDiastolic.value + highShare * (F.riseHighDiastolic.value - F.riseLowDiastolic.value);
  const rest = highShare === 1 ? systolic - high : Math.min(systolic - low, HIGH_MMHG - LEAST_UNDER_MMHG);
  return { ...possible({ systolic: rest, diastolic: diastolic - diastolicRise }), highShare };
}

/** What sitting down adds to somebody between the two kinds, mmHg; null: of one kind, as the engine draws it. */
function sittingOf(key: number, highShare: number): number | null {
  if (highShare === 0 || highShare === 1) return null;
  const drawn = uniformOf(key, 0, LANE.sitting);
  const { sittingLowMmHg, sittingHighLeastMmHg: least, sittingHighMostMmHg: most } = BODY;
  const high = least.value + drawn * (most.value - least.value);
  return (1 - highShare) * drawn * sittingLowMmHg.value + highShare * high;
}

/** Variation between office visits, without that of a mean of three readings, which the simulation itself makes. */
function visitSd(component: 'systolic' | 'diastolic', level: number): number {
  const { reading } = componentsOf(component, level, null);
  return Math.sqrt(Math.max(0, assessmentSd('office', component, level) ** 2 - reading ** 2 / 3));
}

/** A mean at home about a level at home, by device: long-term part, days and readings of the model of the usual pressure. */
export function homeMean(
  { key }: Subject,
  component: 'systolic' | 'diastolic',
  level: number,
  days: number,
  readingsPerDay: number,
): number {
  const { long, day, reading } = componentsOf(component, level, null);
  const lane = HOME_LANE + (component === 'systolic' ? 0 : 3);
  let sum = 0;
  for (let i = 0; i < days; i++) sum += day * normalOf(key, i, lane + 1);
  const readings = days * readingsPerDay;
  let noise = 0;
  for (let i = 0; i < readings; i++) noise += reading * normalOf(key, i, lane + 2);
  return level + long * normalOf(key, 0, lane) + sum / days + noise / readings;
}

/** The subject at a visit as a scenario of the engine. */
export function scenarioAt(subject: Subject, visit: number): Scenario {
  const { key, ageYears, sex } = subject;
  const { systolic, diastolic, highShare } = restLevels(visitLevels(subject, visit));
  const arm = sex === 'm' ? F.armMen.value : F.armWomen.value;
  const armSd = sex === 'm' ? F.armSdMen.value : F.armSdWomen.value;
  return {
    ...BLANK,
    id: 'subject',
    ageYears,
    sex,
    rhythm: rhythmOf(key, ageYears),
    systolic,
    diastolic,
    soundDb: null,
    armCm: Math.max(LEAST_ARM, Math.min(MOST_ARM, arm + armSd * normalOf(key, 0, LANE.arm))),
    gap: gapOf(key, ageYears, systolic, diastolic),
    waveShape: ageYears < 40 ? 'young' : ageYears < 60 ? 'middle' : 'old',
    alerting: { ...BLANK.alerting, sittingMmHg: sittingOf(key, highShare), firstReadingMmHg: null },
    traits: {
      ...BLANK.traits,
      isStiff: ageYears >= F.stiffFromYears.value && uniformOf(key, 0, LANE.stiff) < F.stiffChance.value,
    },
  };
}

/** How the subject breathes while it is counted. The pressure of everybody is read over the same quiet breath. */
export function breathingAt({ key, ageYears }: Subject): Breathing {
  if (ageYears >= F.periodicFromYears.value && uniformOf(key, 0, LANE.periodic) < F.periodicChance.value)
    return PERIODIC;
  const drawn = F.breathsMean.value + F.breathsSd.value * normalOf(key, 0, LANE.breaths);
  const ratePerMinute = Math.max(F.breathsLeast.value, Math.min(F.breathsMost.value, drawn));
  return { ...BLANK.breathing, ratePerMinute };
}

const PERIODIC: Breathing = {
  kind: 'cheyne-stokes',
  ratePerMinute: F.periodicBreaths.value,
  cycleSeconds: F.periodicCycleSeconds.value,
};
const LEAST_ARM = 20;
const MOST_ARM = 53;

function gapOf(key: number, ageYears: number, systolic: number, diastolic: number): Scenario['gap'] {
  if (ageYears < F.gapFromYears.value || systolic < F.gapFromSystolic.value) return null;
  if (uniformOf(key, 0, LANE.hasGap) >= F.gapChance.value) return null;
  const between = F.gapBelowMost.value - F.gapBelowLeast.value;
  const topMmHg = systolic - F.gapBelowLeast.value - between * uniformOf(key, 0, LANE.gapTop);
  const drawn = F.gapWidth.value + F.gapWidthSd.value * normalOf(key, 0, LANE.gapWidth);
  const width = Math.max(F.gapWidthLeast.value, Math.min(F.gapWidthMost.value, drawn));
  const bottomMmHg = Math.max(diastolic + F.gapOverDiastolic.value, topMmHg - width);
  return bottomMmHg < topMmHg ? { topMmHg, bottomMmHg } : null;
}

function rhythmOf(key: number, ageYears: number): Rhythm {
  const drawn = F.pulseMean.value + F.pulseSd.value * normalOf(key, 0, LANE.pulse);
  const ratePerMinute = Math.max(F.pulseLeast.value, Math.min(F.pulseMost.value, drawn));
  const sinus: Rhythm = { ...BLANK.rhythm, ratePerMinute, variation: variationOf(ageYears) };
  const chance =
    ageYears < 60
      ? 0
      : (ageYears < 70 ? F.fibrillation60 : ageYears < 80 ? F.fibrillation70 : F.fibrillation80).value;
  if (uniformOf(key, 0, LANE.fibrillation) < chance) return { ...sinus, kind: 'atrial-fibrillation' };
  if (uniformOf(key, 0, LANE.ectopics) < F.ectopics.value)
    return { ...sinus, kind: 'ventricular-ectopics', ectopicsPerMinute: F.ectopicsPerMinute.value };
  return sinus;
}

const VARIATION_FROM: readonly (readonly [number, Variation])[] = [
  [80, '80-plus'],
  [65, '65-74'],
  [55, '55-64'],
  [45, '45-54'],
  [35, '35-44'],
];

function variationOf(ageYears: number): Variation {
  return VARIATION_FROM.find(([from]) => ageYears >= from)?.[1] ?? '25-34';
}
