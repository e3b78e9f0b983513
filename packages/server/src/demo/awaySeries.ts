import { NO_ROUND_FACTS, type RoundFacts } from '@evenfall/clinical';
import {
  type InForce,
  PROGRAM,
  type SeriesContent,
  type SeriesEvidence,
  type SeriesReadingKept,
  seriesMade,
} from '@evenfall/record';

/** Readings that somebody took away from the clinic, and so many days ago began. All invented. */
export type InventedAway =
  | {
      readonly of: 'home';
      readonly daysAgo: number;
      readonly treated: boolean;
      /** A day a line: `m1, m2 | e1, e2`, each `142/88 74`. */
      readonly days: readonly string[];
    }
  | { readonly of: 'ambulatory'; readonly daysAgo: number; readonly treated: boolean };

/** A week before a change of medicine, and a week some time after it. */
export const WEEK_BEFORE = [
  '151/95 79, 147/93 78 | 145/91 81, 142/90 79',
  '146/92 76, 143/90 75 | 141/88 78, 139/87 77',
  '147/93 75, 144/91 74 | 140/88 77, 138/86 76',
  '149/94 77, 145/92 75 | 142/89 78, 140/88 77',
  '145/91 74, 142/90 73 | 139/87 76, 137/86 75',
  '148/93 76, 144/92 75 | 141/89 77, 139/88 76',
  '147/92 75, 144/91 74 | 140/88 77, 138/87 76',
] as const;
export const WEEK_AFTER = [
  '141/88 74, 137/86 73 | 134/83 76, 132/82 75',
  '135/85 72, 132/83 71 | 129/80 74, 127/79 73',
  '134/84 71, 131/82 70 | 128/79 73, 126/78 72',
  '136/85 72, 133/84 71 | 130/81 74, 128/80 73',
  '133/83 70, 130/82 70 | 127/78 72, 125/77 71',
  '135/84 71, 132/83 71 | 129/80 73, 127/79 72',
  '134/84 71, 131/83 70 | 128/80 73, 126/78 72',
] as const;

const CLOCKS = ['07:10', '07:12', '20:40', '20:42'];
const MS_PER_DAY = 86_400_000;
const MS_PER_MINUTE = 60_000;

/** What the record holds of an invented series: its instants counted back from now, the clock that of the zone. */
export function awayContent(
  invented: InventedAway,
  { ageMonths, sex }: Pick<RoundFacts, 'ageMonths' | 'sex'>,
  { now, zone, inForce }: { readonly now: Date; readonly zone: string; readonly inForce: InForce },
): SeriesContent {
  const first = new Date(now.getTime() - invented.daysAgo * MS_PER_DAY).toISOString().slice(0, 10);
  const startMs = Date.parse(`${first}T00:00:00Z`);
  const readings =
    invented.of === 'home' ? weekOf(invented.days, startMs, zone) : recordingFrom(startMs, zone);
  const evidence: SeriesEvidence = {
    of: invented.of,
    status: 'final',
    diary: null,
    readings,
    refused: [],
    asleep: invented.of === 'home' ? null : { from: 23 * 60, to: 7 * 60 },
    nap: null,
    scheduled: invented.of === 'home' ? null : readings.length,
    treated: invented.treated,
    features: null,
    facts: { ...NO_ROUND_FACTS, arms: [], ageMonths, sex },
    note: null,
  };
  return seriesMade(evidence, inForce, PROGRAM);
}

function weekOf(days: readonly string[], startMs: number, zone: string): SeriesReadingKept[] {
  return days.flatMap((row, day) =>
    row.split(/, | \| /).map((typed, at) => {
      const [systolic = null, diastolic = null, pulse = null] = typed.split(/[/ ]/).map(Number);
      const clock = Date.parse(`1970-01-01T${CLOCKS[at]}:00Z`);
      return reading(startMs + day * MS_PER_DAY + clock, { systolic, diastolic, pulse }, 'typed', zone);
    }),
  );
}

/** From nine in the morning: each half hour awake, each hour asleep; highest in the afternoon, lowest at four. */
function recordingFrom(startMs: number, zone: string): SeriesReadingKept[] {
  const readings: SeriesReadingKept[] = [];
  const [from, until, bed, up] = [9 * 60, 33 * 60, 23 * 60, 31 * 60];
  for (let minute = from; minute < until; minute += minute >= bed && minute < up ? 60 : 30) {
    const wave = Math.cos((2 * Math.PI * (minute / 60 - 16)) / 24);
    const jitter = ((minute / 30) * 7) % 5;
    const systolic = Math.round(127 + 13 * wave + jitter);
    const diastolic = Math.round(78 + 10 * wave + jitter / 2);
    const pulse = Math.round(68 + 8 * wave + jitter);
    readings.push(reading(startMs + minute * MS_PER_MINUTE, { systolic, diastolic, pulse }, 'file', zone));
  }
  return readings;
}

type Numbers = Pick<SeriesReadingKept, 'systolic' | 'diastolic' | 'pulse'>;

function reading(
  atMs: number,
  numbers: Numbers,
  how: SeriesReadingKept['how'],
  zone: string,
): SeriesReadingKept {
  return {
    at: { at: new Date(atMs).toISOString(), zone, asEntered: null },
    ...numbers,
    asleep: null,
    part: null,
    site: 'upper-arm',
    arm: 'left',
    note: null,
    device: null,
    line: null,
    how,
    irregular: null,
    clock: null,
    mended: null,
    startedByHand: null,
  };
}
