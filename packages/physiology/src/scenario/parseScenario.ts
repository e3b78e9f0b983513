import {
  type FieldReader,
  isBlank,
  type Parsed,
  pointer,
  type Refusal,
  readFields,
  refusal,
} from '@evenfall/clinical';
import { WAVE_SHAPES } from '../artery/waveShape.js';
import { BREATHING_KINDS, type Breathing } from '../breathing/pattern.js';
import { PREPARATIONS, type Preparation } from '../circumstances/circumstances.js';
import { RHYTHM_KINDS, type Rhythm, VARIATIONS } from '../heart/rhythm.js';
import { BLANK } from './blank.js';
import { SCENARIO_LIMITS as L } from './limits.js';
import { RED_FLAGS } from './redFlags.js';
import { REPORTS, type ReportCode } from './report.js';
import type { Alerting, Gap, Levels, Scenario, Traits } from './scenario.js';

const ID = /^[a-z0-9]+(-[a-z0-9]+)*$/;
const LONGEST_ID = 60;
const LONGEST_TEXT = 4000;
type Range = readonly [number, number];

/** A reader of one object and of those within it; all refusals end up in one list. */
class Reader {
  private readonly fields: FieldReader;
  private readonly parent: string;
  private readonly refusals: Refusal[];

  constructor(input: unknown, known: readonly string[], parent: string, refusals: Refusal[]) {
    this.fields = readFields(input, known, parent);
    this.parent = parent;
    this.refusals = refusals;
  }

  /** Adds what this object was refused for. */
  close(): void {
    this.refusals.push(...this.fields.refusals);
  }

  number(key: string, [low, high]: Range): number {
    return (
      this.fields.number(key, (value) =>
        value >= low && value <= high
          ? null
          : { code: 'out-of-range', expected: 'within-limits', figures: { minimum: low, maximum: high } },
      ) ?? low
    );
  }

  numberOrNull(key: string, range: Range): number | null {
    return isBlank(this.fields.raw(key)) ? null : this.number(key, range);
  }

  numberOr(key: string, range: Range, absent: number): number {
    return isBlank(this.fields.raw(key)) ? absent : this.number(key, range);
  }

  choice<C extends string>(key: string, choices: readonly C[], absent: C | null): C {
    return this.fields.choice(key, choices, absent) ?? (choices[0] as C);
  }

  choiceOrNull<C extends string>(key: string, choices: readonly C[]): C | null {
    return isBlank(this.fields.raw(key)) ? null : this.choice(key, choices, null);
  }

  text(key: string): string | null {
    const got = this.fields.raw(key);
    if (isBlank(got)) return null;
    if (typeof got !== 'string' || got.length > LONGEST_TEXT) {
      this.refuse(key, 'out-of-range', 'at-most-string', got, { maximum: LONGEST_TEXT });
      return null;
    }
    return got;
  }

  /** Different ones of a list; absent where nothing is there. */
  choicesOrAbsent<C extends string>(key: string, choices: readonly C[]): readonly C[] | undefined {
    const got = this.fields.raw(key);
    if (isBlank(got)) return undefined;
    if (!Array.isArray(got)) {
      this.refuse(key, 'impossible', 'a-list', got);
      return undefined;
    }
    const taken: C[] = [];
    got.forEach((one: unknown, k) => {
      const known = choices.find((choice) => choice === one);
      const at = `${pointer(this.parent, key)}/${k}`;
      if (known === undefined) this.refusals.push(refusal(at, 'unknown-id', 'one-of', one, { choices }));
      else if (taken.includes(known)) this.refusals.push(refusal(at, 'repeated', 'once', one));
      else taken.push(known);
    });
    return taken;
  }

  flag(key: string): boolean {
    const got = this.fields.raw(key);
    if (isBlank(got)) return false;
    if (typeof got !== 'boolean') this.refuse(key, 'unknown-id', 'yes-or-no', got);
    return got === true;
  }

  id(): string {
    const got = this.fields.raw('id');
    if (typeof got === 'string' && got.length <= LONGEST_ID && ID.test(got)) return got;
    this.refuse('id', isBlank(got) ? 'missing' : 'impossible', 'an-id', got);
    return '';
  }

  schema(): void {
    const got = this.fields.raw('schema');
    if (got !== 1 && got !== 2)
      this.refuse('schema', isBlank(got) ? 'missing' : 'unknown-id', 'known-schema', got, {
        minimum: 1,
        maximum: 2,
      });
  }

  /** An object under a key, or null where nothing is there. */
  within<T>(key: string, known: readonly string[], read: (reader: Reader) => T): T | null {
    const got = this.fields.raw(key);
    if (isBlank(got)) return null;
    const reader = new Reader(got, known, pointer(this.parent, key), this.refusals);
    const value = read(reader);
    reader.close();
    return value;
  }

  /** The same where it has to be there. */
  needed<T>(key: string, known: readonly string[], read: (reader: Reader) => T, absent: T): T {
    const found = this.within(key, known, read);
    if (found === null) this.refuse(key, 'missing', 'an-object', null);
    return found ?? absent;
  }

  /** Whether every one of these was taken: what they are compared with is not refused for their sake. */
  hasTaken(...keys: readonly string[]): boolean {
    const fields = keys.map((key) => pointer(this.parent, key));
    return !this.fields.refusals.some(({ field }) => fields.includes(field));
  }

  refuse(
    key: string,
    code: Refusal['code'],
    expected: string,
    got: unknown,
    figures: Record<string, number> = {},
  ): void {
    this.refusals.push(refusal(pointer(this.parent, key), code, expected, got, { figures }));
  }
}

const LEVELS = ['systolic', 'diastolic'] as const;

function levelsOf(reader: Reader): Levels {
  const systolic = reader.number('systolic', L.systolic);
  const diastolic = reader.number('diastolic', L.diastolic);
  if (reader.hasTaken(...LEVELS) && diastolic + L.leastPulsePressure > systolic) {
    reader.refuse('diastolic', 'not-below-systolic', 'below-systolic', diastolic, { systolic });
  }
  return { systolic, diastolic };
}

function rhythmOf(reader: Reader): Rhythm {
  const kind = reader.choice('kind', RHYTHM_KINDS, 'sinus');
  const rhythm: Rhythm = {
    kind,
    ratePerMinute: reader.number('ratePerMinute', L.ratePerMinute),
    variation: reader.choice('variation', VARIATIONS, BLANK.rhythm.variation),
    ectopicsPerMinute: reader.numberOrNull('ectopicsPerMinute', L.ectopicsPerMinute),
    coupling: reader.numberOrNull('coupling', L.coupling),
    weakSystolic: reader.numberOrNull('weakSystolic', L.systolic),
    alternansMmHg: reader.numberOrNull('alternansMmHg', L.alternansMmHg),
  };
  const asks = NEEDED[kind];
  if (asks !== undefined && rhythm[asks] === null) reader.refuse(asks, 'missing', 'a-number', null);
  return rhythm;
}

/** What a kind of rhythm cannot do without. */
const NEEDED: Partial<Record<Rhythm['kind'], 'ectopicsPerMinute' | 'alternansMmHg'>> = {
  'ventricular-ectopics': 'ectopicsPerMinute',
  'atrial-ectopics': 'ectopicsPerMinute',
  alternans: 'alternansMmHg',
};

function breathingOf(reader: Reader): Breathing {
  const kind = reader.choice('kind', BREATHING_KINDS, 'rest');
  const cycleSeconds = reader.numberOrNull('cycleSeconds', L.cycleSeconds);
  if (kind === 'cheyne-stokes' && cycleSeconds === null)
    reader.refuse('cycleSeconds', 'missing', 'a-number', null);
  return { kind, ratePerMinute: reader.number('ratePerMinute', L.breathsPerMinute), cycleSeconds };
}

function gapOf(reader: Reader, levels: Levels, areTaken: boolean): Gap {
  const between = { systolic: levels.systolic, lowestMmHg: levels.diastolic };
  const topMmHg = reader.number('topMmHg', L.systolic);
  const bottomMmHg = reader.number('bottomMmHg', L.systolic);
  if (!reader.hasTaken('topMmHg', 'bottomMmHg')) return { topMmHg, bottomMmHg };
  if (bottomMmHg >= topMmHg) reader.refuse('bottomMmHg', 'out-of-order', 'gap-falling', bottomMmHg);
  if (!areTaken) return { topMmHg, bottomMmHg };
  if (topMmHg >= levels.systolic)
    reader.refuse('topMmHg', 'impossible', 'gap-between-sounds', topMmHg, between);
  if (bottomMmHg <= levels.diastolic) {
    reader.refuse('bottomMmHg', 'impossible', 'gap-between-sounds', bottomMmHg, between);
  }
  return { topMmHg, bottomMmHg };
}

function alertingOf(reader: Reader): Alerting {
  return {
    sittingMmHg: reader.numberOrNull('sittingMmHg', L.alertingMmHg),
    sittingPulsePerMinute: reader.numberOr('sittingPulsePerMinute', L.alertingMmHg, 0),
    sittingBreathsPerMinute: reader.numberOr('sittingBreathsPerMinute', L.alertingMmHg, 0),
    firstReadingMmHg: reader.numberOrNull('firstReadingMmHg', L.alertingMmHg),
    whiteCoatMmHg: reader.numberOr('whiteCoatMmHg', L.alertingMmHg, 0),
  };
}

function traitsOf(reader: Reader): Traits {
  return {
    isPregnant: reader.flag('isPregnant'),
    isStiff: reader.flag('isStiff'),
    isFailing: reader.flag('isFailing'),
    hasColdHands: reader.flag('hasColdHands'),
  };
}

function preparationOf(reader: Reader): Preparation {
  return Object.fromEntries(PREPARATIONS.map((key) => [key, reader.flag(key)])) as Preparation;
}

/**
 * A scenario from outside: its value, or everything wrong with it, each by the JSON Pointer of its field. What may be
 * left out is what `BLANK` has, and what is null there is drawn from the seed.
 */
export function parseScenario(json: unknown): Parsed<Scenario> {
  const refusals: Refusal[] = [];
  const reader = new Reader(json, [...Object.keys(BLANK), 'preparation', 'report'], '', refusals);
  reader.schema();
  const levels = levelsOf(reader);
  const areTaken = reader.hasTaken(...LEVELS);
  const preparation = reader.within('preparation', PREPARATIONS, preparationOf);
  const report = reader.choicesOrAbsent<ReportCode>('report', REPORTS);
  const scenario: Scenario = {
    schema: 2,
    id: reader.id(),
    title: reader.text('title'),
    lesson: reader.text('lesson'),
    ageYears: reader.number('ageYears', L.ageYears),
    sex: reader.choice('sex', ['f', 'm'] as const, null),
    rhythm: reader.needed('rhythm', Object.keys(BLANK.rhythm), rhythmOf, BLANK.rhythm),
    breathing: reader.needed('breathing', Object.keys(BLANK.breathing), breathingOf, BLANK.breathing),
    ...levels,
    muffled: reader.numberOrNull('muffled', L.diastolic),
    muffledChance: reader.numberOrNull('muffledChance', L.chance),
    soundsToMmHg: reader.numberOrNull('soundsToMmHg', L.soundsToMmHg),
    soundsToChance: reader.numberOr('soundsToChance', L.chance, BLANK.soundsToChance),
    soundDb: reader.numberOrNull('soundDb', L.soundDb),
    armCm: reader.number('armCm', L.armCm),
    gap: reader.within('gap', ['topMmHg', 'bottomMmHg'], (gap) => gapOf(gap, levels, areTaken)),
    gapChance: reader.numberOr('gapChance', L.chance, BLANK.gapChance),
    waveShape: reader.choice('waveShape', WAVE_SHAPES, BLANK.waveShape),
    alerting: reader.within('alerting', Object.keys(BLANK.alerting), alertingOf) ?? BLANK.alerting,
    breathingSwingMmHg: reader.numberOrNull('breathingSwingMmHg', L.alertingMmHg),
    traits: reader.within('traits', Object.keys(BLANK.traits), traitsOf) ?? BLANK.traits,
    home: reader.within('home', LEVELS, levelsOf),
    leftArm: reader.within('leftArm', LEVELS, levelsOf),
    standing: reader.within('standing', ['oneMinute', 'threeMinutes', 'pulsePerMinute'], (standing) => ({
      oneMinute: standing.needed('oneMinute', LEVELS, levelsOf, levels),
      threeMinutes: standing.needed('threeMinutes', LEVELS, levelsOf, levels),
      pulsePerMinute: standing.number('pulsePerMinute', L.ratePerMinute),
    })),
    temperatureC: reader.numberOrNull('temperatureC', L.temperatureC),
    noiseDbA: reader.numberOr('noiseDbA', L.noiseDbA, BLANK.noiseDbA),
    instrument: reader.within('instrument', ['zeroOffsetMmHg', 'leakMmHgPerMinute'], (instrument) => ({
      zeroOffsetMmHg: instrument.numberOr('zeroOffsetMmHg', L.zeroOffsetMmHg, 0),
      leakMmHgPerMinute: instrument.numberOr('leakMmHgPerMinute', L.leakMmHgPerMinute, 0),
    })),
    ...(preparation === null ? {} : { preparation }),
    acceptedWithinMmHg: reader.numberOr('acceptedWithinMmHg', L.acceptedWithinMmHg, BLANK.acceptedWithinMmHg),
    redFlag: reader.choiceOrNull('redFlag', RED_FLAGS),
    ...(report === undefined ? {} : { report }),
  };
  const { muffled } = scenario;
  if (areTaken && muffled !== null && (muffled <= levels.diastolic || muffled >= levels.systolic)) {
    reader.refuse('muffled', 'contradicts', 'within-limits', muffled, {
      minimum: levels.diastolic,
      maximum: levels.systolic,
    });
  }
  reader.close();
  return refusals.length === 0 ? { ok: true, value: scenario } : { ok: false, refusals };
}
