import { isSaturationDoubtful, type JudgedReading, type RoundInput } from '@evenfall/clinical';
import { chartedPerMinute } from '../chart/chartedPerMinute.js';
import { chartedPressure } from '../chart/chartedPressure.js';
import type { Entry } from '../entry/entry.js';
import type { RoundEvidence } from './round.js';

/**
 * What a round came to, from its entries in the order in which they were taken. A value set by hand stands in the
 * place of the computed one; of each other sign the newest with a number counts. What has no number hides nothing.
 */
export function roundInputOf(entries: readonly Entry[], evidence: RoundEvidence): RoundInput {
  const { features, unwell, facts } = evidence;
  const saturation = newest(entries, (entry) => {
    const sign = signIn(entry);
    if (entry.kind !== 'sign' || sign?.of !== 'oxygen-saturation') return null;
    const isDoubtful = isSaturationDoubtful(entry.content.value.flags);
    return { percent: sign.percent, onOxygen: sign.onOxygen, isDoubtful };
  });
  return {
    readings: entries.flatMap(readingOf),
    pulse: newest(entries, (entry) => rateOf(entry, 'pulse')),
    breaths: newest(entries, (entry) => rateOf(entry, 'breaths')),
    isFeltIrregular: newest(entries, feltIrregular),
    temperature: newest(entries, (entry) => {
      const sign = signIn(entry);
      return sign?.of === 'temperature' ? sign.celsius : null;
    }),
    oxygen: saturation,
    consciousness: newest(entries, (entry) => {
      const sign = signIn(entry);
      return sign?.of === 'consciousness' ? sign.level : null;
    }),
    heightCm: newest(entries, (entry) => {
      const sign = signIn(entry);
      return sign?.of === 'height' && sign.how === 'measured' ? sign.cm : null;
    }),
    weightKg: newest(entries, (entry) => {
      const sign = signIn(entry);
      return sign?.of === 'weight' ? sign.kg : null;
    }),
    features,
    unwell,
    facts,
  };
}

function newest<Found>(entries: readonly Entry[], read: (entry: Entry) => Found | null): Found | null {
  return entries.map(read).findLast((found) => found !== null) ?? null;
}

function signIn(entry: Entry) {
  return entry.kind === 'sign' ? entry.content.evidence.sign : null;
}

function rateOf(entry: Entry, of: 'pulse' | 'breaths'): number | null {
  if (entry.kind !== 'count' && entry.kind !== 'taps') return null;
  const counted = entry.kind === 'count' ? entry.content.evidence.count : entry.content.evidence.taps;
  return counted.of === of ? chartedPerMinute(entry) : null;
}

/** What the fingers said of the rhythm; null where nobody said. */
function feltIrregular(entry: Entry): boolean | null {
  if (entry.kind !== 'count' && entry.kind !== 'taps' && entry.kind !== 'run') return null;
  const { rhythmFelt } = entry.content.evidence.circumstances;
  return rhythmFelt === null ? null : rhythmFelt === 'irregular';
}

function readingOf(entry: Entry): JudgedReading[] {
  const pressure = chartedPressure(entry);
  if (pressure === null || entry.kind !== 'run') return [];
  const { run, place, circumstances } = entry.content.evidence;
  const { site, side, posture } = place;
  return [
    {
      id: entry.id,
      site,
      side,
      posture,
      method: run.method,
      systolic: pressure.systolic,
      diastolic: pressure.diastolicUsed,
      pulsePerMinute: run.pulsePerMinute,
      uprightMinutes: circumstances.uprightMinutes,
      isUnwellUpright: circumstances.unwellUpright,
      atSeconds: null,
      irregular: feltIrregular(entry),
    },
  ];
}
