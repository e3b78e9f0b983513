import { NO_ROUND_FACTS, type Presets, presetProtocol, protocolVersion } from '@evenfall/clinical';
import { type InForce, inForceUnder } from '../content/inForce.js';
import type { SeriesEvidence, SeriesReadingKept } from '../content/series.js';
import { seriesMade } from '../content/seriesMade.js';
import { NO_PROTOCOL, TEST_PROGRAM } from './work.js';

/** What presets put in force. */
export function inForceBy(presets: Partial<Presets>): InForce {
  const protocol = presetProtocol(presets);
  if (!protocol.ok) throw new Error(JSON.stringify(protocol.refusals));
  return inForceUnder(protocol.value, protocolVersion(protocol.value));
}

/** A reading typed as `142/90 78`, at an instant as a device stamps it. */
export function keptReading(
  at: string,
  typed: string,
  more: Partial<SeriesReadingKept> = {},
): SeriesReadingKept {
  const [systolic = null, diastolic = null, pulse = null] = typed.split(/[/ ]/).map(Number);
  return {
    at: { at, zone: 'Europe/Lisbon', asEntered: null },
    systolic,
    diastolic,
    pulse,
    asleep: null,
    part: null,
    site: 'upper-arm',
    arm: null,
    note: null,
    device: null,
    line: null,
    how: 'typed',
    irregular: null,
    clock: null,
    mended: null,
    startedByHand: null,
    ...more,
  };
}

/** Invented home week H1 of the out-of-office handbook 19, morning and evening of days 1 to 7, by a summer clock. */
const H1_ROWS = `
152/94 78, 148/92 77 | 146/90 80, 143/88 79
141/88 74, 138/86 73 | 136/84 77, 133/83 76
139/87 72, 137/85 72 | 134/84 75, 132/82 74
143/89 73, 139/87 72 | 137/85 76, 135/83 75
138/86 71, 136/85 71 | 133/82 74, 131/81 74
140/88 73, 137/86 72 | 135/84 76, 134/83 75
142/88 72, 139/86 72 | 136/85 75, 133/82 74`;
const CLOCKS = ['07:30', '07:31', '20:30', '20:31'];

export const H1: readonly SeriesReadingKept[] = H1_ROWS.trim()
  .split('\n')
  .flatMap((row, day) =>
    row
      .split(/, | \| /)
      .map((typed, at) => keptReading(`2026-07-0${day + 1}T${CLOCKS[at]}:00.000+01:00`, typed)),
  );

/** A home series of which nothing more is known. */
export function homeEvidence(
  readings: readonly SeriesReadingKept[],
  more: Partial<SeriesEvidence> = {},
): SeriesEvidence {
  return {
    of: 'home',
    status: 'final',
    diary: null,
    readings: [...readings],
    refused: [],
    asleep: null,
    nap: null,
    scheduled: null,
    treated: null,
    features: null,
    facts: { ...NO_ROUND_FACTS, arms: [] },
    note: null,
    ...more,
  };
}

/** What an entry of a series says. */
export function seriesContentOf(evidence: SeriesEvidence, inForce: InForce = NO_PROTOCOL) {
  return seriesMade(evidence, inForce, TEST_PROGRAM);
}
