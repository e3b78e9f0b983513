import {
  type FieldReader,
  isBlank,
  type Parsed,
  pointer,
  type Refusal,
  readFields,
  refusal,
} from '@evenfall/clinical';
import {
  type Action,
  type Arranged,
  BLADDERS,
  type Bladder,
  CHEST_PIECES,
  type ChestPiece,
  POSTURES,
  type Posture,
  PREPARATIONS,
  TICKS_PER_SECOND,
} from '@evenfall/physiology';

/** What hands did in a visit of so many seconds; null: until a little after the last of it. */
export type ActionList = { readonly actions: readonly Action[]; readonly seconds: number };

/** Least and most of each number of an action. Decisions of this project: what rig and hand can do. */
export const ACTION_LIMITS = {
  seconds: [1, 1200],
  share: [0, 1],
  degrees: [0, 120],
  mmHgPerSecond: [0, 60],
  toMmHg: [0, 300],
  offMm: [0, 60],
  belowHeartCm: [-60, 60],
} as const;
type LimitName = keyof typeof ACTION_LIMITS;

const KINDS = [
  'squeeze',
  'valve',
  'quick-release',
  'steady-fall',
  'steady-rise',
  'chest-piece',
  'apex',
  'arm',
  'finger',
  'talk',
  'arrange',
  'cuff',
  'gauge',
] as const;
/** What a person can be asked to do otherwise, and what can be put right about them, each yes or no. */
const ARRANGED_SWITCHES = [
  'hasLegsCrossed',
  'hasBackUnsupported',
  'hasFullBladder',
  'isArmUnsupported',
  'wasArmRaised',
  'isQuieter',
  'isSeatedAnew',
  ...PREPARATIONS,
] as const;
const FIELDS = [
  'tick',
  'kind',
  'share',
  'degrees',
  'mmHgPerSecond',
  'toMmHg',
  'offMm',
  'held',
  'belowHeartCm',
  'armBelowHeartCm',
  'isOn',
  'isTalking',
  ...ARRANGED_SWITCHES,
  'posture',
  'arm',
  'bladder',
];
const MOST_ACTIONS = 20_000;
/** How long a visit goes on after the last action where its length is not given. */
const TAIL_SECONDS = 60;

/**
 * Reads `{ actions: [{ tick, kind, ... }], seconds }` from outside; ticks of 5 ms, in order; `seconds` may be left out.
 *
 * Errors, at JSON Pointers: `missing`, `unknown-field`, `not-a-number`, `not-whole`, `out-of-range`, `unknown-id`,
 * `out-of-order`.
 */
export function parseActions(input: unknown): Parsed<ActionList> {
  const top = readFields(input, ['actions', 'seconds']);
  const got = top.raw('actions');
  const refusals: Refusal[] = [];
  const given = isBlank(top.raw('seconds')) ? null : numberIn(top, 'seconds', 'seconds');
  refusals.push(...top.refusals);
  if (!Array.isArray(got) || got.length > MOST_ACTIONS) {
    refusals.push(refusal('/actions', isBlank(got) ? 'missing' : 'out-of-range', 'list-of-actions', got));
    return { ok: false, refusals };
  }
  const actions: Action[] = [];
  for (const [at, one] of got.entries()) {
    const parent = pointer('/actions', String(at));
    const reader = readFields(one, FIELDS, parent);
    const action = actionIn(reader, parent);
    refusals.push(...reader.refusals);
    if (action === null) continue;
    if (action.tick < (actions.at(-1)?.tick ?? 0))
      refusals.push(refusal(pointer(parent, 'tick'), 'out-of-order', 'tick-not-before', action.tick));
    actions.push(action);
  }
  if (refusals.length > 0) return { ok: false, refusals };
  const last = (actions.at(-1)?.tick ?? 0) / TICKS_PER_SECOND;
  const [, most] = ACTION_LIMITS.seconds;
  return { ok: true, value: { actions, seconds: given ?? Math.min(most, last + TAIL_SECONDS) } };
}

function actionIn(reader: FieldReader, parent: string): Action | null {
  const tick = reader.number('tick', wholeTick, 'a-whole-number');
  const kind = reader.choice('kind', KINDS, null);
  const action = kind === null ? null : ofKind(kind, reader, parent);
  return tick === null || action === null || reader.refusals.length > 0
    ? null
    : ({ tick, ...action } as Action);
}

function ofKind(kind: (typeof KINDS)[number], reader: FieldReader, parent: string): object | null {
  switch (kind) {
    case 'squeeze':
      return { kind, share: numberIn(reader, 'share', 'share') };
    case 'valve':
      return { kind, degrees: numberIn(reader, 'degrees', 'degrees') };
    case 'quick-release':
    case 'gauge':
      return { kind };
    case 'steady-fall':
    case 'steady-rise':
      return {
        kind,
        mmHgPerSecond: numberIn(reader, 'mmHgPerSecond', 'mmHgPerSecond'),
        toMmHg: numberIn(reader, 'toMmHg', 'toMmHg'),
      };
    case 'chest-piece': {
      const offMm = isBlank(reader.raw('offMm')) ? null : numberIn(reader, 'offMm', 'offMm');
      return { kind, offMm, held: reader.choice<ChestPiece>('held', CHEST_PIECES, 'light') };
    }
    case 'arm':
      return { kind, belowHeartCm: numberIn(reader, 'belowHeartCm', 'belowHeartCm') };
    case 'apex':
    case 'finger':
      return { kind, isOn: yesNo(reader, 'isOn', parent) };
    case 'talk':
      return { kind, isTalking: yesNo(reader, 'isTalking', parent) };
    case 'arrange':
      return { kind, ...arrangedIn(reader, parent) };
    case 'cuff':
      return { kind, bladder: reader.choice<Bladder>('bladder', BLADDERS, null) };
  }
}

/** What is left out stays as it is. */
function arrangedIn(reader: FieldReader, parent: string): Arranged {
  const isGiven = (key: string) => !isBlank(reader.raw(key));
  const switches = ['isTalking', ...ARRANGED_SWITCHES].filter(isGiven);
  return {
    ...Object.fromEntries(switches.map((key) => [key, yesNo(reader, key, parent)])),
    ...(isGiven('armBelowHeartCm')
      ? { armBelowHeartCm: numberIn(reader, 'armBelowHeartCm', 'belowHeartCm') ?? 0 }
      : {}),
    ...(isGiven('posture')
      ? { posture: reader.choice<Posture>('posture', POSTURES, null) ?? 'sitting' }
      : {}),
    ...(isGiven('arm')
      ? { arm: reader.choice<'right' | 'left'>('arm', ['right', 'left'], null) ?? 'right' }
      : {}),
  };
}

function yesNo(reader: FieldReader, key: string, parent: string): boolean {
  const got = reader.raw(key);
  if (typeof got !== 'boolean')
    reader.refusals.push(
      refusal(pointer(parent, key), isBlank(got) ? 'missing' : 'unknown-id', 'one-of', got, {
        choices: ['true', 'false'],
      }),
    );
  return got === true;
}

function numberIn(reader: FieldReader, key: string, name: LimitName): number | null {
  const [minimum, maximum] = ACTION_LIMITS[name];
  return reader.number(key, (value) =>
    value >= minimum && value <= maximum
      ? null
      : { code: 'out-of-range', expected: 'within-limits', figures: { minimum, maximum } },
  );
}

function wholeTick(value: number): ReturnType<Parameters<FieldReader['number']>[1]> {
  const maximum = ACTION_LIMITS.seconds[1] * TICKS_PER_SECOND;
  if (!Number.isInteger(value)) return { code: 'not-whole', expected: 'a-whole-number', figures: {} };
  if (value >= 0 && value <= maximum) return null;
  return { code: 'out-of-range', expected: 'within-limits', figures: { minimum: 0, maximum } };
}
