import {
  type Circumstances,
  NO_ROUND_FACTS,
  type Protocol,
  parseCountOrVoid,
  parseRun,
  parseSign,
  parseTaps,
  presetProtocol,
  protocolDocument,
  protocolVersion,
  UNKNOWN_CIRCUMSTANCES,
  UNKNOWN_RUN_CIRCUMSTANCES,
  UNKNOWN_SIGN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import {
  type Agent,
  chartCount,
  chartRound,
  chartRun,
  chartSeries,
  chartSign,
  chartTaps,
  type Entry,
  type EntryFrame,
  type Identity,
  type InForce,
  inForceUnder,
  KINDS,
  NOTHING_CHOSEN,
  projectChart,
  type ReportedContent,
  type RoundContent,
  type RulesOf,
  type RunPlace,
  readEntry,
  type StoredEntry,
  type TypedNumber,
} from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import type { BundleOf } from '../src/index.js';

/** An id that is a UUIDv7 by its form and a small number to whoever reads a failing test. */
export function idOf(number: number): string {
  return `01950000-0000-7000-8000-${number.toString(16).padStart(12, '0')}`;
}

export const PERSON = idOf(9001);
export const WREN: Agent = { id: idOf(9002), name: 'Wren (invented)' };
export const ORLA: Identity = {
  name: 'Orla\u00a0Wickstead (invented)',
  birthDate: '1957-03-14',
  number: '-0001',
};

/** A protocol of published parts, so that categories are made. */
export const PROTOCOL: Protocol = (() => {
  const read = presetProtocol({ category: 'esc-2024', readings: 'esc-2024' });
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return read.value;
})();
export const VERSION = protocolVersion(PROTOCOL);
export const UNDER_PROTOCOL: InForce = inForceUnder(PROTOCOL, VERSION);

/** An entry as kept, and as its kind reads it. */
export type Made = { readonly frame: EntryFrame; readonly recordedAt: string; readonly entry: StoredEntry };

type More = Partial<EntryFrame> & { readonly recordedMinute?: number };

/** An entry measured and recorded so many minutes after nine, as its id says. */
export function made(id: number, kind: EntryFrame['kind'], content: object, more: More = {}): Made {
  const { recordedMinute = id, ...frame } = more;
  const at = instant(id);
  const whole = {
    frame: 1,
    id: idOf(id),
    book: 'care',
    kind,
    schema: KINDS[kind].newest,
    person: PERSON,
    round: ['person', 'fact', 'entered-in-error'].includes(kind) ? null : idOf(500),
    session: null,
    agent: WREN.id,
    role: 'observer',
    device: idOf(9003),
    sequence: id,
    measuredAt: { at, zone: 'Europe/Madrid', asEntered: null },
    writtenAt: at,
    amends: null,
    content: JSON.parse(JSON.stringify(content)) as Record<string, unknown>,
    ...frame,
  } as EntryFrame;
  const read = readEntry(whole);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const recordedAt = new Date(Date.UTC(2026, 10, 25, 9, 0, 30) + recordedMinute * 60_000).toISOString();
  return { frame: whole, recordedAt, entry: { ...read.value, recordedAt } };
}

function instant(minute: number): string {
  const local = new Date(Date.UTC(2026, 10, 25, 10) + minute * 60_000).toISOString();
  return local.replace('.000Z', '+01:00');
}

const PROGRAM = 'evenfall 0.1.0';

export function count(
  id: number,
  input: object,
  more: More & { note?: string; inForce?: InForce; noticed?: Partial<Circumstances> } = {},
): Made {
  const { note = null, inForce = NOTHING_CHOSEN, noticed = {}, ...frame } = more;
  const read = parseCountOrVoid(input);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const circumstances = { ...UNKNOWN_CIRCUMSTANCES, site: 'radial' as const, ...noticed };
  const done = { count: read.value, circumstances, override: null, note };
  return made(id, 'count', chartCount(done, inForce, PROGRAM), frame);
}

export function taps(id: number, seconds: readonly number[], more: More = {}): Made {
  const read = parseTaps({ of: 'pulse', source: 'key', seconds });
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const done = {
    taps: read.value,
    repair: true,
    circumstances: UNKNOWN_CIRCUMSTANCES,
    override: null,
    note: null,
  };
  return made(id, 'taps', chartTaps(done, NOTHING_CHOSEN, PROGRAM), more);
}

const PLACE: RunPlace = {
  site: 'upper-arm',
  side: 'right',
  posture: 'sit',
  cuff: { scheme: 'aha-2005', id: 'adult' },
  armCm: 30,
  override: null,
};

/** A pressure that was heard. */
export const heard = (systolic: number, diastolic: number) => ({
  method: 'auscultation',
  moments: [
    { what: 'first sound', mmHg: systolic },
    { what: 'last sound', mmHg: diastolic },
  ],
});

/** A pressure that was felt: no diastolic. */
export const felt = (systolic: number) => ({
  method: 'palpation',
  moments: [{ what: 'pulse back', mmHg: systolic }],
});

export function run(
  id: number,
  input: object,
  more: More & {
    place?: Partial<RunPlace>;
    gauge?: string | null;
    note?: string | null;
    inForce?: InForce;
    posture?: Partial<Parameters<typeof chartRun>[0]['circumstances']>;
  } = {},
): Made {
  const { place = {}, gauge = null, note = null, inForce = NOTHING_CHOSEN, posture = {}, ...frame } = more;
  const read = parseRun(input);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const done = {
    run: read.value,
    place: { ...PLACE, ...place },
    gauge,
    circumstances: { ...UNKNOWN_RUN_CIRCUMSTANCES, uprightMinutes: null, ...posture },
    override: null,
    note,
  };
  return made(id, 'run', chartRun(done, inForce, PROGRAM), frame);
}

export function sign(
  id: number,
  input: object,
  { typed = null, ...more }: More & { typed?: TypedNumber | null } = {},
): Made {
  const read = parseSign(input);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const done = { sign: read.value, typed, circumstances: UNKNOWN_SIGN_CIRCUMSTANCES, note: null };
  return made(id, 'sign', chartSign(done, NOTHING_CHOSEN, PROGRAM), more);
}

/** A value from elsewhere. */
export function reported(
  id: number,
  value: ReportedContent['value'],
  more: More & { said?: Partial<ReportedContent> } = {},
): Made {
  const { said = {}, ...frame } = more;
  const content: ReportedContent = {
    value,
    asSent: null,
    by: 'Ines Larch (invented)',
    method: null,
    site: null,
    posture: null,
    interpretation: null,
    status: 'final',
    until: null,
    note: null,
    source: { format: 'fhir', id: null },
    saidAt: null,
    uprightMinutes: null,
    lyingMinutes: null,
    unwellUpright: null,
    ...said,
  };
  return made(id, 'reported', content, { role: 'importer', round: null, ...frame });
}

/** The signing of a round that names the values given, each under its sign. */
export function signing(
  id: number,
  values: readonly Made[],
  more: More & {
    status?: 'final' | 'preliminary';
    inForce?: InForce;
    note?: string;
    begun?: RoundContent['begun'];
    rest?: RoundContent['rest'];
    /** Signs that were not done, beside those of the values. */
    notDone?: RoundContent['signs'];
  } = {},
): Made {
  const {
    status = 'final',
    inForce = NOTHING_CHOSEN,
    note = null,
    begun = null,
    rest = null,
    notDone = [],
    ...frame
  } = more;
  const bySign = new Map<string, string[]>();
  for (const { entry } of values) {
    const of = signNamed(entry);
    bySign.set(of, [...(bySign.get(of) ?? []), entry.id]);
  }
  const done = [...bySign].map(([of, entries]) => ({ sign: of, entries })) as RoundContent['signs'];
  const signs = [...done, ...notDone];
  const evidence = {
    exceptions: null,
    features: null,
    unwell: null,
    facts: { ...NO_ROUND_FACTS, ageMonths: 816, arms: [] },
  };
  const content = chartRound(
    { status, signs, note, evidence, begun, rest },
    values.map(({ entry }) => entry as Entry),
    inForce,
    PROGRAM,
  );
  return made(id, 'round', content, { ...frame });
}

function signNamed(entry: StoredEntry): string {
  switch (entry.kind) {
    case 'count':
      return entry.content.evidence.count.of;
    case 'taps':
      return entry.content.evidence.taps.of;
    case 'sign':
      return entry.content.evidence.sign.of;
    default:
      return 'pressure';
  }
}

/** An amendment of another entry, for the reason given. */
export const amending = (of: number, reason = 'typing-slip') =>
  ({ amends: { entry: idOf(of), reason, text: null } }) as Pick<EntryFrame, 'amends'>;

export const inError = (id: number, of: number) =>
  made(id, 'entered-in-error', { note: 'other bed' }, amending(of, 'wrong-person'));

/** The rules of the one version that is kept. */
export const rulesOf: RulesOf = (version) =>
  version === null ? NOTHING_CHOSEN : version === VERSION ? UNDER_PROTOCOL : null;

/** What a bundle is made of, from entries made here. */
export function bundleOf(all: readonly Made[], more: Partial<BundleOf> = {}): BundleOf {
  const entries = all.map(({ entry }) => entry);
  return {
    book: 'care',
    invented: false,
    person: PERSON,
    identity: null,
    classIdentity: null,
    chart: projectChart(entries),
    series: chartSeries(entries, rulesOf),
    agents: [WREN],
    gaugesNow: [],
    entries,
    asKept: all.map(({ frame, recordedAt }) => ({ frame, recordedAt })),
    gauges: [],
    protocols: [{ version: VERSION, content: protocolDocument(PROTOCOL) }],
    rulesOf,
    madeAt: '2026-11-25T12:00:00Z',
    words: wordsFor('en'),
    isSnomed: true,
    ...more,
  };
}

/** An invented gauge of the place: a comparison of the day after the rounds of tests failed, and none was good before. */
export const FAILED_GAUGE = {
  id: idOf(700),
  named: { what: 'gauge', name: 'Gauge 3', type: 'aneroid', serial: null, room: null },
  standing: {
    state: 'failed',
    checks: [],
    doubts: [
      { of: 'comparison', afterMs: null, failedMs: Date.parse('2026-11-26T08:00:00Z'), untilMs: null },
    ],
  },
} as unknown as NonNullable<BundleOf['gaugesNow']>[number];
