import {
  type FieldReader,
  isBlank,
  type Parsed,
  PULSE_SITES,
  parseCount,
  parseRun,
  parseTaps,
  pointer,
  type Refusal,
  readFields,
  refusal,
} from '@evenfall/clinical';
import {
  BLADDERS,
  type Bladder,
  CHEST_PIECES,
  type Circumstances,
  type Instrument,
  MEASURED_BY,
  POSTURES,
  PROPER,
  parseScenario,
  SOUND_INSTRUMENT,
} from '@evenfall/physiology';
import type {
  Counted,
  CountedSign,
  CountNoticed,
  EarlierReading,
  Entered,
  Evidence,
  Exercise,
  Tapped,
} from './exercise.js';
import {
  EXERCISE_SCHEMA,
  FIRST_EXERCISE_SCHEMA,
  NO_EVIDENCE,
  NOTHING_ENTERED,
  SECOND_EXERCISE_SCHEMA,
  THIRD_EXERCISE_SCHEMA,
} from './exercise.js';
import { parseActions } from './parseActions.js';

/** Least and most of each number of an exercise. Decisions of this project: wider than anybody would go. */
export const EXERCISE_LIMITS = {
  seed: [0, 2 ** 32 - 1],
  model: [1, 9999],
  seconds: [0, 1200],
  minutes: [0, 120],
  cm: [-60, 60],
  mm: [0, 60],
  offset: [-20, 20],
  scale: [-0.2, 0.2],
  friction: [0, 5],
  leak: [0, 60],
  exponent: [0.5, 1],
  db: [-1000, 80],
  pressure: [0, 300],
  rate: [0, 400],
  celsius: [25, 45],
} as const;
type Limit = keyof typeof EXERCISE_LIMITS;

/** In a visit of twenty minutes nobody takes more readings. */
const MOST_EARLIER = 50;

const KEYS = [
  'schema',
  'model',
  'scenario',
  'seed',
  'circumstances',
  'instrument',
  'actions',
  'seconds',
  'earlier',
  'evidence',
  'entered',
];
/** Schemas whose fields are read alike. */
const READ_AS_ONE = [SECOND_EXERCISE_SCHEMA, THIRD_EXERCISE_SCHEMA, EXERCISE_SCHEMA];
/** Before the model was written down there was one. */
const FIRST_MODEL = 1;
/** A posture that only the first model knew: what was kept with it is read, as of that model, and cannot be played again. */
const FIRST_POSTURE = 'lying';

/**
 * Reads a kept exercise from outside. `circumstances`, `instrument`, `evidence` and `entered` may be left out, whole or
 * in part: then the textbook, a sound instrument, nothing; `model` too: then the first; `earlier`: then none. One of schema 1 has one
 * reading at most, and is read as what it would be now. The posture `lying` is read as
 * sitting, and the exercise as of the first model, whichever it names.
 *
 * Errors, at JSON Pointers: those of scenario, actions, run and count under their own names, and of each other field
 * `missing`, `unknown-field`, `unknown-id`, `not-a-number`, `not-whole`, `out-of-range`.
 */
export function parseExercise(input: unknown): Parsed<Exercise> {
  const isFirst = Number((input as { readonly schema?: unknown } | null)?.schema) === FIRST_EXERCISE_SCHEMA;
  const top = readFields(input, isFirst ? KEYS.filter((key) => key !== 'earlier') : KEYS);
  const refusals: Refusal[] = [];
  const within = <T>(name: string, read: Parsed<T>): T | null => {
    if (read.ok) return read.value;
    refusals.push(...read.refusals.map((one) => ({ ...one, field: `${name}${one.field}` })));
    return null;
  };
  top.number('schema', (got) =>
    READ_AS_ONE.some((one) => one === got) || isFirst
      ? null
      : {
          code: 'out-of-range',
          expected: 'within-limits',
          figures: { minimum: FIRST_EXERCISE_SCHEMA, maximum: EXERCISE_SCHEMA },
        },
  );
  const scenario = within('/scenario', parseScenario(top.raw('scenario')));
  const seed = top.number('seed', wholeIn('seed'), 'a-whole-number');
  const written = isBlank(top.raw('model'))
    ? FIRST_MODEL
    : top.number('model', wholeIn('model'), 'a-whole-number');
  const [circumstances, isLying] = circumstancesIn(top.raw('circumstances'), refusals);
  const model = written !== null && isLying ? FIRST_MODEL : written;
  const instrument = instrumentIn(top.raw('instrument'), refusals);
  const done = within('', parseActions({ actions: top.raw('actions'), seconds: top.raw('seconds') }));
  const earlier = earlierIn(isFirst ? undefined : top.raw('earlier'), refusals, within);
  const evidence = evidenceIn(top.raw('evidence'), refusals, within);
  const entered = enteredIn(top.raw('entered'), refusals);
  const all = [...top.refusals, ...refusals];
  if (all.length > 0 || scenario === null || seed === null || model === null || done === null)
    return { ok: false, refusals: all };
  return {
    ok: true,
    value: {
      schema: EXERCISE_SCHEMA,
      model,
      scenario,
      seed,
      circumstances,
      instrument,
      ...done,
      earlier,
      evidence,
      entered,
    },
  };
}

function numberIn(limit: Limit) {
  const [minimum, maximum] = EXERCISE_LIMITS[limit];
  return (got: number): ReturnType<Parameters<FieldReader['number']>[1]> =>
    got >= minimum && got <= maximum
      ? null
      : { code: 'out-of-range', expected: 'within-limits', figures: { minimum, maximum } };
}

function wholeIn(limit: Limit) {
  const check = numberIn(limit);
  return (got: number): ReturnType<typeof check> =>
    Number.isInteger(got) ? check(got) : { code: 'not-whole', expected: 'a-whole-number', figures: {} };
}

/** A number that may be left out. */
function orElse<T>(reader: FieldReader, key: string, limit: Limit, absent: T): number | T {
  if (isBlank(reader.raw(key))) return absent;
  return reader.number(key, numberIn(limit)) ?? absent;
}

function yesNo<T>(reader: FieldReader, key: string, parent: string, absent: T): boolean | T {
  const got = reader.raw(key);
  if (isBlank(got)) return absent;
  if (typeof got === 'boolean') return got;
  reader.refusals.push(
    refusal(pointer(parent, key), 'unknown-id', 'one-of', got, { choices: ['true', 'false'] }),
  );
  return absent;
}

const SWITCHES = [
  'isTalking',
  'hasLegsCrossed',
  'hasBackUnsupported',
  'hasFullBladder',
  'hadCaffeine',
  'hadNicotine',
  'isCold',
  'isArmUnsupported',
  'isCuffLoose',
  'isOverSleeve',
  'hasTightSleeve',
  'wasArmRaised',
  'wasReinflated',
  'isQuieter',
] as const;

/** And whether they had the posture that only the first model knew. */
function circumstancesIn(got: unknown, refusals: Refusal[]): [Circumstances, boolean] {
  const at = '/circumstances';
  const reader = readFields(got, Object.keys(PROPER), at);
  const isLying = reader.raw('posture') === FIRST_POSTURE;
  const switches = Object.fromEntries(SWITCHES.map((key) => [key, yesNo(reader, key, at, PROPER[key])]));
  const found: Circumstances = {
    ...PROPER,
    ...switches,
    restMinutes: orElse(reader, 'restMinutes', 'minutes', PROPER.restMinutes),
    observerMinutes: orElse(reader, 'observerMinutes', 'minutes', PROPER.observerMinutes),
    standingMinutes: orElse(reader, 'standingMinutes', 'minutes', PROPER.standingMinutes),
    firstInflationSeconds: isBlank(reader.raw('firstInflationSeconds'))
      ? null
      : reader.number('firstInflationSeconds', (seconds) =>
          Number.isFinite(seconds) ? null : { code: 'not-a-number', expected: 'a-number', figures: {} },
        ),
    armBelowHeartCm: orElse(reader, 'armBelowHeartCm', 'cm', PROPER.armBelowHeartCm),
    chestPieceOffMm: orElse(reader, 'chestPieceOffMm', 'mm', PROPER.chestPieceOffMm),
    measuredBy: reader.choice('measuredBy', MEASURED_BY, PROPER.measuredBy) ?? PROPER.measuredBy,
    posture: isLying
      ? PROPER.posture
      : (reader.choice('posture', POSTURES, PROPER.posture) ?? PROPER.posture),
    arm: reader.choice('arm', ['right', 'left'], PROPER.arm) ?? PROPER.arm,
    chestPiece: reader.choice('chestPiece', CHEST_PIECES, PROPER.chestPiece) ?? PROPER.chestPiece,
    fingers: reader.choice('fingers', ['practised', 'beginner'], PROPER.fingers) ?? PROPER.fingers,
  };
  refusals.push(...reader.refusals);
  return [found, isLying];
}

function instrumentIn(got: unknown, refusals: Refusal[]): Instrument {
  const usual = SOUND_INSTRUMENT;
  const reader = readFields(got, Object.keys(usual), '/instrument');
  const found: Instrument = {
    bladder: reader.choice<Bladder>('bladder', BLADDERS, usual.bladder) ?? usual.bladder,
    gauge: reader.choice('gauge', ['aneroid', 'liquid-column'], usual.gauge) ?? usual.gauge,
    zeroOffsetMmHg: orElse(reader, 'zeroOffsetMmHg', 'offset', usual.zeroOffsetMmHg),
    scaleError: orElse(reader, 'scaleError', 'scale', usual.scaleError),
    frictionMmHg: orElse(reader, 'frictionMmHg', 'friction', usual.frictionMmHg),
    leakMmHgPerMinute: orElse(reader, 'leakMmHgPerMinute', 'leak', usual.leakMmHgPerMinute),
    valveExponent: orElse(reader, 'valveExponent', 'exponent', usual.valveExponent),
  };
  refusals.push(...reader.refusals);
  return found;
}

type Within = <T>(name: string, read: Parsed<T>) => T | null;

function evidenceIn(got: unknown, refusals: Refusal[], within: Within): Evidence {
  const at = '/evidence';
  const reader = readFields(got, [...Object.keys(NO_EVIDENCE), 'apex', 'taps'], at);
  const found: Evidence = {
    run: isBlank(reader.raw('run')) ? null : runIn(reader.raw('run'), `${at}/run`, refusals, within),
    pulse: countIn(reader.raw('pulse'), `${at}/pulse`, refusals, within),
    breaths: countIn(reader.raw('breaths'), `${at}/breaths`, refusals, within),
    ...(isBlank(reader.raw('apex'))
      ? {}
      : { apex: countIn(reader.raw('apex'), `${at}/apex`, refusals, within) }),
    ...(isBlank(reader.raw('taps')) ? {} : { taps: tapsIn(reader.raw('taps'), `${at}/taps`, refusals) }),
    saysActNow: yesNo(reader, 'saysActNow', at, null),
    wasShown: yesNo(reader, 'wasShown', at, false),
    thresholdDb: orElse(reader, 'thresholdDb', 'db', null),
  };
  refusals.push(...reader.refusals);
  return found;
}

function runIn(got: unknown, at: string, refusals: Refusal[], within: Within): Evidence['run'] {
  const reader = readFields(got, ['startSeconds', 'run'], at);
  const startSeconds = reader.number('startSeconds', numberIn('seconds'));
  const run = within(`${at}/run`, parseRun(reader.raw('run')));
  refusals.push(...reader.refusals);
  return startSeconds === null || run === null ? null : { startSeconds, run };
}

/** Readings before the last one; left out: none. */
function earlierIn(got: unknown, refusals: Refusal[], within: Within): readonly EarlierReading[] {
  if (isBlank(got)) return [];
  if (!Array.isArray(got) || got.length > MOST_EARLIER) {
    const figures = { minimum: 0, maximum: MOST_EARLIER };
    refusals.push(refusal('/earlier', 'out-of-range', 'within-limits', got, { figures }));
    return [];
  }
  return got.flatMap((one: unknown, k) => {
    const at = `/earlier/${k}`;
    const { entered, ...taken } = { ...(one as Record<string, unknown>) };
    const run = runIn(taken, at, refusals, within);
    const reader = readFields(entered, PRESSURES, `${at}/entered`);
    const read = pressuresIn(reader);
    refusals.push(...reader.refusals);
    return run === null ? [] : [{ ...run, entered: read }];
  });
}

const PRESSURES = ['systolic', 'muffled', 'diastolic'] as const;

function pressuresIn(reader: FieldReader): EarlierReading['entered'] {
  return {
    systolic: orElse(reader, 'systolic', 'pressure', null),
    muffled: orElse(reader, 'muffled', 'pressure', null),
    diastolic: orElse(reader, 'diastolic', 'pressure', null),
  };
}

function countIn(got: unknown, at: string, refusals: Refusal[], within: Within): Counted | null {
  if (isBlank(got)) return null;
  const reader = readFields(got, ['startSeconds', 'count', 'noticed'], at);
  const startSeconds = reader.number('startSeconds', numberIn('seconds'));
  const count = within(`${at}/count`, parseCount(reader.raw('count')));
  const noticed = isBlank(reader.raw('noticed'))
    ? {}
    : { noticed: noticedIn(reader.raw('noticed'), `${at}/noticed`, refusals) };
  refusals.push(...reader.refusals);
  return startSeconds === null || count === null ? null : { startSeconds, count, ...noticed };
}

const TAPPED_SIGNS = ['pulse', 'apex', 'breaths'] as const satisfies readonly CountedSign[];

function tapsIn(got: unknown, at: string, refusals: Refusal[]): NonNullable<Evidence['taps']> {
  const reader = readFields(got, TAPPED_SIGNS, at);
  const found = TAPPED_SIGNS.flatMap((of) => {
    const one = isBlank(reader.raw(of)) ? null : tappedIn(reader.raw(of), `${at}/${of}`, refusals);
    return one === null ? [] : [[of, one] as const];
  });
  refusals.push(...reader.refusals);
  return Object.fromEntries(found);
}

function tappedIn(got: unknown, at: string, refusals: Refusal[]): Tapped | null {
  const reader = readFields(got, ['startSeconds', 'seconds', 'noticed'], at);
  const startSeconds = reader.number('startSeconds', numberIn('seconds'));
  // The same reader as the bedside's taps have: in order, from the first one on.
  const taps = parseTaps({ of: 'pulse', source: 'touch', seconds: reader.raw('seconds') });
  const noticed = isBlank(reader.raw('noticed'))
    ? {}
    : { noticed: noticedIn(reader.raw('noticed'), `${at}/noticed`, refusals) };
  refusals.push(...reader.refusals);
  if (!taps.ok) {
    refusals.push(...taps.refusals.map((one) => ({ ...one, field: `${at}${one.field}` })));
    return null;
  }
  return startSeconds === null ? null : { startSeconds, seconds: taps.value.seconds, ...noticed };
}

function noticedIn(got: unknown, at: string, refusals: Refusal[]): CountNoticed {
  const reader = readFields(got, ['rhythmFelt', 'strength', 'site'], at);
  const choice = <T extends string>(key: string, choices: readonly T[]) =>
    isBlank(reader.raw(key)) ? null : reader.choice<T>(key, choices, null);
  const found = {
    rhythmFelt: choice('rhythmFelt', ['regular', 'irregular']),
    strength: choice('strength', ['weak', 'normal', 'strong']),
    site: choice('site', PULSE_SITES),
  };
  refusals.push(...reader.refusals);
  return found;
}

function enteredIn(got: unknown, refusals: Refusal[]): Entered {
  const reader = readFields(
    got,
    [...Object.keys(NOTHING_ENTERED), 'apexPerMinute', 'temperatureC'],
    '/entered',
  );
  const found: Entered = {
    ...pressuresIn(reader),
    pulsePerMinute: orElse(reader, 'pulsePerMinute', 'rate', null),
    breathsPerMinute: orElse(reader, 'breathsPerMinute', 'rate', null),
    ...(isBlank(reader.raw('apexPerMinute'))
      ? {}
      : { apexPerMinute: orElse(reader, 'apexPerMinute', 'rate', null) }),
    ...(isBlank(reader.raw('temperatureC'))
      ? {}
      : { temperatureC: orElse(reader, 'temperatureC', 'celsius', null) }),
  };
  refusals.push(...reader.refusals);
  return found;
}
