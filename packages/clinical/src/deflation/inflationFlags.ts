import type { Flag } from '../contract/flag.js';
import { passes } from '../contract/threshold.js';
import type { RunCircumstances } from './circumstances.js';
import type { RunFlagCode } from './codes.js';
import { DEFLATION_COMPARISONS as SIDE } from './comparisons.js';
import { isReinflated, type Pressures, soundsBack } from './pressures.js';
import { silenceHeard } from './ranges.js';
import { secondsBetween } from './rates.js';
import type { InflationRules } from './rules.js';
import type { Moment, Run } from './run.js';

type Flags = Flag<RunFlagCode>[];

/** How far the cuff was pumped above the loss of the pulse, in mmHg; null if either is not known. */
export function marginOf({ peak, palpated }: Run): number | null {
  return peak === null || palpated.lostMmHg === null ? null : peak.mmHg - palpated.lostMmHg;
}

/** What pumping up did to a run. Source: bedside handbook 3.4, 3.5 and 3.6 ("never re-inflate part-way"). */
export function inflationFlags(
  run: Run,
  pressures: Pressures,
  circumstances: RunCircumstances,
  rules: InflationRules,
): Flags {
  if (run.method === 'device') return [];
  return [
    ...inside(run, rules),
    ...small(run, rules),
    ...possibleGap(run, pressures, rules),
    ...pumpedAgain(run),
    ...tooSoon(circumstances, rules),
  ];
}

function inside(run: Run, rules: InflationRules): Flags {
  const { peak, pulsePerMinute } = run;
  const first = run.moments[0] as Moment;
  if (peak === null) return [];
  const belowPeakMmHg = peak.mmHg - first.mmHg;
  const isTimed = secondsBetween(peak, first) !== null && pulsePerMinute !== null;
  const isInside = isTimed
    ? !silenceHeard(run)
    : passes(belowPeakMmHg, SIDE.insideWithinMmHg, rules.insideWithinMmHg);
  if (!isInside) return [];
  const figures = { peakMmHg: peak.mmHg, firstMmHg: first.mmHg };
  return [{ code: run.method === 'palpation' ? 'pulse-not-stopped' : 'started-inside-sounds', figures }];
}

function small(run: Run, { smallMarginMmHg, marginMmHg: wantedMmHg }: InflationRules): Flags {
  const marginMmHg = marginOf(run);
  if (marginMmHg === null || !passes(marginMmHg, SIDE.smallMarginMmHg, smallMarginMmHg)) return [];
  return [{ code: 'margin-small', figures: { marginMmHg, smallMarginMmHg, wantedMmHg } }];
}

/** The pulse felt above where sounds were heard: the sounds may have been a second lot. */
function possibleGap(run: Run, { systolic }: Pressures, rules: InflationRules): Flags {
  const { lostMmHg, backMmHg } = run.palpated;
  const palpatedMmHg = backMmHg ?? lostMmHg;
  if (run.method !== 'auscultation' || palpatedMmHg === null) return [];
  const key = backMmHg === null ? 'gapAboveLostMmHg' : 'gapAboveBackMmHg';
  const aboveMmHg = palpatedMmHg - systolic;
  if (!passes(aboveMmHg, SIDE[key], rules[key])) return [];
  return [{ code: 'possible-gap', figures: { palpatedMmHg, systolic, aboveMmHg } }];
}

function pumpedAgain(run: Run): Flags {
  if (!isReinflated(run)) return [];
  const [gone, back] = soundsBack(run.moments) ?? [];
  const isSeen = gone !== undefined && back !== undefined && back.mmHg > gone.mmHg;
  return [{ code: 're-inflated', figures: isSeen ? { fromMmHg: gone.mmHg, toMmHg: back.mmHg } : {} }];
}

/** Whoever was asked to take it at once (bedside handbook 3.15) did not come too soon. */
function tooSoon({ previous }: RunCircumstances, rules: InflationRules): Flags {
  if (previous === null || previous.isNextAtOnce === true) return [];
  const key = previous.was === 'estimate' ? 'waitAfterEstimateSeconds' : 'waitAfterReadingSeconds';
  const waitedSeconds = previous.secondsSinceRelease;
  if (!passes(waitedSeconds, SIDE[key], rules[key])) return [];
  return [{ code: 'too-soon', figures: { waitedSeconds, neededSeconds: rules[key] } }];
}
