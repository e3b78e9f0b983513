import {
  type Circumstances,
  NO_ROUND_FACTS,
  parseCountOrVoid,
  parseRun,
  parseSign,
  parseTaps,
  UNKNOWN_CIRCUMSTANCES,
  UNKNOWN_RUN_CIRCUMSTANCES,
  UNKNOWN_SIGN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import { chartCount } from '../content/chartCount.js';
import { chartRound } from '../content/chartRound.js';
import { chartRun, type RunEvidence } from '../content/chartRun.js';
import { chartSign } from '../content/chartSign.js';
import { chartTaps } from '../content/chartTaps.js';
import { type InForce, NOTHING_CHOSEN } from '../content/inForce.js';
import type { RoundContent, RoundEvidence } from '../content/round.js';
import type { RunPlace } from '../content/run.js';
import type { Entry, EntryFrame, StoredEntry } from '../entry/entry.js';

/** A place that has chosen no protocol. */
export const NO_PROTOCOL: InForce = NOTHING_CHOSEN;

/** What made the values of the tests. */
export const TEST_PROGRAM = 'evenfall test';

/** An id that is a UUIDv7 by its form and a small number to whoever reads a failing test. */
export function idOf(number: number): string {
  return `01950000-0000-7000-8000-${number.toString(16).padStart(12, '0')}`;
}

/** Minutes after the start of the invented day, as an instant. */
export function at(minutes: number): string {
  return new Date(Date.UTC(2026, 10, 25, 9) + minutes * 60_000).toISOString();
}

/** Kinds that need a round; in the tests each has one of its own unless it says otherwise. */
const IN_A_ROUND: readonly string[] = [
  'count',
  'taps',
  'run',
  'sign',
  'round',
  'act-now-closed',
  'countersigned',
  'series',
];

/** A whole frame with nothing unusual in it; a test bends what it is about. */
export function frame(kind: EntryFrame['kind'], content: object, more: Partial<EntryFrame> = {}): EntryFrame {
  return {
    frame: 1,
    id: idOf(1),
    book: 'care',
    kind,
    schema: { count: 2, run: 6, exercise: 4, series: 3, sign: 2, reported: 2 }[kind as string] ?? 1,
    person: idOf(9001),
    round: IN_A_ROUND.includes(kind) ? (more.id ?? idOf(1)) : null,
    session: null,
    agent: idOf(9002),
    role: 'observer',
    device: idOf(9003),
    sequence: 1,
    measuredAt: { at: at(0), zone: 'UTC', asEntered: null },
    writtenAt: at(1),
    amends: null,
    content: content as Record<string, unknown>,
    ...more,
  };
}

/** The same as the server would keep it, taken so many minutes after the start of the day. */
export function kept(entry: EntryFrame, minutes = 0): StoredEntry {
  return { ...entry, recordedAt: at(minutes) } as unknown as StoredEntry;
}

/** What a counted pulse says: n beats in so many seconds, the clock started at any moment. */
export function countContent(
  input: Record<string, unknown>,
  circumstances: Circumstances = UNKNOWN_CIRCUMSTANCES,
) {
  const read = parseCountOrVoid(input);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const done = { count: read.value, circumstances, override: null, note: null };
  return chartCount(done, NO_PROTOCOL, TEST_PROGRAM);
}

/** What a tapped pulse says. */
export function tapsContent(seconds: readonly number[], repair = true) {
  const read = parseTaps({ of: 'pulse', source: 'key', seconds });
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const done = {
    taps: read.value,
    repair,
    circumstances: UNKNOWN_CIRCUMSTANCES,
    override: null,
    note: null,
  };
  return chartTaps(done, NO_PROTOCOL, TEST_PROGRAM);
}

/** The usual place of a cuff. */
export const USUAL_PLACE: RunPlace = {
  site: 'upper-arm',
  side: 'right',
  posture: 'sit',
  cuff: null,
  armCm: null,
  override: null,
};

/** What a run of the cuff says: its evidence as `parseRun` reads it. */
export function runContent(input: Record<string, unknown>, more: Partial<RunEvidence> = {}) {
  const read = parseRun(input);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  const done = {
    run: read.value,
    place: USUAL_PLACE,
    circumstances: { ...UNKNOWN_RUN_CIRCUMSTANCES, uprightMinutes: null },
    override: null,
    note: null,
    ...more,
  };
  return chartRun(done, NO_PROTOCOL, TEST_PROGRAM);
}

/** What a sign that is neither counted nor taken with a cuff says. */
export function signContent(input: Record<string, unknown>, circumstances = UNKNOWN_SIGN_CIRCUMSTANCES) {
  const read = parseSign(input);
  if (!read.ok) throw new Error(JSON.stringify(read.refusals));
  return chartSign({ sign: read.value, circumstances, note: null }, NO_PROTOCOL, TEST_PROGRAM);
}

/** Nothing asked, nothing seen, nobody known. */
export const NO_EVIDENCE: RoundEvidence = {
  exceptions: null,
  features: null,
  unwell: null,
  facts: { ...NO_ROUND_FACTS, arms: [] },
};

/** The signing of a round as it is made now, of the entries given. */
export function signingContent(
  signs: RoundContent['signs'],
  entries: readonly EntryFrame[],
  evidence: Partial<RoundEvidence> = {},
) {
  const signed = { status: 'final', signs, note: null, evidence: { ...NO_EVIDENCE, ...evidence } } as const;
  return chartRound(signed, entries as unknown as Entry[], NO_PROTOCOL, TEST_PROGRAM);
}

/** The signing of a round that holds one pulse, in schema 1. */
export function roundContent(pulse: string) {
  return {
    status: 'final',
    signs: [{ sign: 'pulse', entries: [pulse] }],
    protocolVersion: null,
    note: null,
  };
}

/** Where everything is wrong with an input, in the order in which it was said. */
export function placesOf(
  read: { ok: true } | { ok: false; refusals: readonly { field: string }[] },
): string[] {
  return read.ok ? [] : read.refusals.map(({ field }) => field);
}
