import {
  ADULT_SCHEME_IDS,
  type AdultSchemeId,
  AVERAGING_RULE_IDS,
  type AveragingRuleId,
  type CountClock,
  type CountFirst,
  CUFF_SCHEME_IDS,
  type CuffSchemeId,
  isBlank,
  type NumberFault,
  type Parsed,
  type Refusal,
  readFields,
  readingsRulesOf,
  refusal,
} from '@evenfall/clinical';
import { MEASURED_BY, type MeasuredBy } from '@evenfall/physiology';
import { OBSERVER_FIGURES as F } from '../observer/figures.js';
import { GOOD_OBSERVER } from '../observer/observer.js';
import { PLAN_FAULTS, type PlanFault, type PlanFaults } from './technique.js';

/** How the cuff is chosen: by a scheme, or the adult one for everybody. */
export const CUFF_CHOICES = [...CUFF_SCHEME_IDS, 'adult-for-all'] as const;
export type PlanCuff = CuffSchemeId | 'adult-for-all';
/** When the clock of a count starts: on a beat or a breath, or at any moment. */
export const COUNT_CLOCKS = ['any', 'beat'] as const satisfies readonly CountClock[];

/** Measuring at home by device after the visit: means of so many days, so many readings a day. */
export type PlanHome = {
  readonly days: number;
  readonly readingsPerDay: number;
  readonly droppedDays: number;
};

/** A way to measure a pressure, to be tried on many people. Times in seconds unless named, pressures in mmHg. */
export type PlanProtocol = {
  /** Whose number of readings, differences that ask for another, and average. */
  readonly rule: AveragingRuleId;
  /** So many readings at a visit whatever the rule asks; null: as the rule asks. */
  readonly readings: number | null;
  readonly gapSeconds: number;
  readonly visits: number;
  readonly restMinutes: number;
  readonly measuredBy: MeasuredBy;
  readonly cuff: PlanCuff;
  readonly palpatesFirst: boolean;
  readonly marginMmHg: number;
  /** Pumped up to where no pulse was felt for. */
  readonly peakMmHg: number;
  readonly rateMmHgPerSecond: number;
  /** No faster than this a beat; null: no such care. */
  readonly mostPerBeatMmHg: number | null;
  readonly pulseWindowSeconds: number;
  /** Null: breaths are not counted. */
  readonly breathsWindowSeconds: number | null;
  /** When the clock of a count starts, and what the first beat or breath is called. */
  readonly countClock: CountClock;
  readonly countFirst: CountFirst;
  readonly thresholdDb: number;
  readonly reactionSeconds: number;
  readonly tenShare: number;
  /** What a category is by. */
  readonly guideline: AdultSchemeId;
  readonly home: PlanHome | null;
  /** Share of observers who do each wrong at the visits; what is left out nobody does. */
  readonly faults: PlanFaults;
};

const KEYS = [
  'rule',
  'readings',
  'gapSeconds',
  'visits',
  'restMinutes',
  'measuredBy',
  'cuff',
  'palpatesFirst',
  'marginMmHg',
  'peakMmHg',
  'rateMmHgPerSecond',
  'mostPerBeatMmHg',
  'pulseWindowSeconds',
  'breathsWindowSeconds',
  'countClock',
  'countFirst',
  'thresholdDb',
  'reactionSeconds',
  'tenShare',
  'guideline',
  'home',
  'faults',
] as const;
type Key = (typeof KEYS)[number];

/** Least and most of each number. Decisions of this project: further than anybody would go. */
export const PLAN_LIMITS = {
  readings: [1, 6],
  gapSeconds: [15, 600],
  visits: [1, 10],
  restMinutes: [0, 30],
  marginMmHg: [0, 60],
  peakMmHg: [100, 280],
  rateMmHgPerSecond: [0.5, 20],
  mostPerBeatMmHg: [0.5, 20],
  pulseWindowSeconds: [5, 300],
  breathsWindowSeconds: [5, 300],
  thresholdDb: [0, 60],
  reactionSeconds: [0, 2],
  tenShare: [0, 1],
  days: [1, 60],
  readingsPerDay: [1, 12],
  droppedDays: [0, 10],
  faults: [0, 1],
} as const;
const WHOLE = new Set(['readings', 'visits', 'days', 'readingsPerDay', 'droppedDays']);

/** What stands for what a file leaves out: the textbook, two readings or more as the rule asks. */
export function planProtocol(some: Partial<PlanProtocol> = {}): PlanProtocol {
  const rule = some.rule ?? 'acc-aha-2017';
  return {
    rule,
    readings: null,
    gapSeconds: readingsRulesOf(rule).gapSeconds,
    visits: 1,
    restMinutes: 5,
    measuredBy: 'known',
    cuff: 'aha-2005',
    palpatesFirst: true,
    marginMmHg: F.marginMmHg.value,
    peakMmHg: 180,
    rateMmHgPerSecond: F.rateMmHgPerSecond.value,
    mostPerBeatMmHg: null,
    pulseWindowSeconds: GOOD_OBSERVER.counting.pulseWindowSeconds,
    breathsWindowSeconds: null,
    countClock: GOOD_OBSERVER.counting.clock,
    countFirst: GOOD_OBSERVER.counting.first,
    thresholdDb: 0,
    reactionSeconds: F.reactionSeconds.value,
    tenShare: 0,
    guideline: 'acc-aha-2017',
    home: null,
    faults: {},
    ...some,
  };
}

/**
 * Reads a protocol to be tried from outside. Everything may be left out.
 *
 * Errors, at JSON Pointers: `unknown-field`, `not-a-number`, `not-whole`, `out-of-range`, `unknown-id`, `contradicts`.
 */
export function parsePlanProtocol(input: unknown): Parsed<PlanProtocol> {
  if (input === null || input === undefined)
    return { ok: false, refusals: [refusal('', 'missing', 'an-object', input)] };
  const reader = readFields(input, KEYS);
  const refusals: Refusal[] = [];
  const number = <K extends Key & keyof typeof PLAN_LIMITS>(key: K): { [one in K]?: number } => {
    const got = reader.raw(key);
    if (isBlank(got)) return {};
    // A file carries numbers as numbers.
    if (typeof got === 'string') {
      const form = WHOLE.has(key) ? 'a-whole-number' : 'a-number';
      refusals.push(refusal(`/${key}`, 'not-a-number', form, got, { figures: {} }));
      return {};
    }
    const value = reader.number(key, within(key));
    return value === null ? {} : ({ [key]: value } as { [one in K]: number });
  };
  const rule = reader.choice<AveragingRuleId>('rule', AVERAGING_RULE_IDS, 'acc-aha-2017');
  const measuredBy = reader.choice<MeasuredBy>('measuredBy', MEASURED_BY, 'known');
  const cuff = reader.choice<PlanCuff>('cuff', CUFF_CHOICES, 'aha-2005');
  const guideline = reader.choice<AdultSchemeId>('guideline', ADULT_SCHEME_IDS, 'acc-aha-2017');
  const countClock = reader.choice<CountClock>('countClock', COUNT_CLOCKS, GOOD_OBSERVER.counting.clock);
  const gotFirst = reader.raw('countFirst');
  const countFirst: CountFirst | null = isBlank(gotFirst)
    ? GOOD_OBSERVER.counting.first
    : gotFirst === 0 || gotFirst === 1
      ? gotFirst
      : null;
  if (countFirst === null)
    refusals.push(refusal('/countFirst', 'unknown-id', 'one-of', gotFirst, { choices: ['0', '1'] }));
  const palpates = reader.raw('palpatesFirst');
  if (!isBlank(palpates) && typeof palpates !== 'boolean')
    refusals.push(
      refusal('/palpatesFirst', 'unknown-id', 'one-of', palpates, { choices: ['true', 'false'] }),
    );
  const numbers = {
    ...number('readings'),
    ...number('gapSeconds'),
    ...number('visits'),
    ...number('restMinutes'),
    ...number('marginMmHg'),
    ...number('peakMmHg'),
    ...number('rateMmHgPerSecond'),
    ...number('mostPerBeatMmHg'),
    ...number('pulseWindowSeconds'),
    ...number('breathsWindowSeconds'),
    ...number('thresholdDb'),
    ...number('reactionSeconds'),
    ...number('tenShare'),
  };
  const faults = readFaults(reader.raw('faults'), refusals);
  const home = readHome(reader.raw('home'), refusals);
  const all = [...reader.refusals, ...refusals];
  if (all.length > 0 || rule === null || measuredBy === null || cuff === null || guideline === null)
    return { ok: false, refusals: all };
  if (countClock === null || countFirst === null) return { ok: false, refusals: all };
  const palpatesFirst = typeof palpates === 'boolean' ? palpates : true;
  return {
    ok: true,
    value: planProtocol({
      rule,
      measuredBy,
      cuff,
      guideline,
      palpatesFirst,
      countClock,
      countFirst,
      home,
      faults,
      ...numbers,
    }),
  };
}

function readHome(got: unknown, refusals: Refusal[]): PlanHome | null {
  if (isBlank(got)) return null;
  const reader = readFields(got, ['days', 'readingsPerDay', 'droppedDays'], '/home');
  const days = reader.number('days', within('days'), 'a-whole-number');
  const readingsPerDay = reader.number('readingsPerDay', within('readingsPerDay'), 'a-whole-number');
  const droppedDays = isBlank(reader.raw('droppedDays'))
    ? 0
    : reader.number('droppedDays', within('droppedDays'), 'a-whole-number');
  refusals.push(...reader.refusals);
  if (days === null || readingsPerDay === null || droppedDays === null) return null;
  if (droppedDays >= days) {
    refusals.push(
      refusal('/home/droppedDays', 'out-of-range', 'within-limits', droppedDays, {
        figures: { minimum: 0, maximum: days - 1 },
      }),
    );
    return null;
  }
  return { days, readingsPerDay, droppedDays };
}

function readFaults(got: unknown, refusals: Refusal[]): PlanFaults {
  if (isBlank(got)) return {};
  const reader = readFields(got, PLAN_FAULTS, '/faults');
  const faults: Partial<Record<PlanFault, number>> = {};
  for (const code of PLAN_FAULTS) {
    const share = reader.raw(code);
    if (isBlank(share)) continue;
    if (typeof share === 'string')
      refusals.push(refusal(`/faults/${code}`, 'not-a-number', 'a-number', share, { figures: {} }));
    else faults[code] = reader.number(code, within('faults')) ?? 0;
  }
  refusals.push(...reader.refusals);
  return faults;
}

function within(key: keyof typeof PLAN_LIMITS): (value: number) => NumberFault | null {
  const [minimum, maximum] = PLAN_LIMITS[key];
  return (value) => {
    if (WHOLE.has(key) && !Number.isInteger(value))
      return { code: 'not-whole', expected: 'a-whole-number', figures: {} };
    if (value >= minimum && value <= maximum) return null;
    return { code: 'out-of-range', expected: 'within-limits', figures: { minimum, maximum } };
  };
}
