import {
  type Count,
  parseCount,
  parseRun,
  parseSign,
  parseTaps,
  UNKNOWN_CIRCUMSTANCES,
  UNKNOWN_RUN_CIRCUMSTANCES,
  UNKNOWN_SIGN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import {
  type CountContent,
  chartCount,
  chartRun,
  chartSign,
  chartTaps,
  type InForce,
  PROGRAM,
  type RunContent,
  type SignContent,
  type TapsContent,
} from '@evenfall/record';
import type { InventedCount, InventedPressure, InventedSign, InventedTaps } from './invented.js';
import { inventTaps } from './inventTaps.js';

type Rate = 'pulse' | 'breaths';

/** What the chart holds of an invented rate, counted or tapped. */
export function rateContent(
  of: Rate,
  done: InventedCount | InventedTaps,
  ageMonths: number | null,
  inForce: InForce,
  chance: () => number,
): { kind: 'count'; content: CountContent } | { kind: 'taps'; content: TapsContent } {
  const circumstances = {
    ...UNKNOWN_CIRCUMSTANCES,
    ageMonths,
    site: of === 'pulse' ? ('radial' as const) : null,
    rhythmFelt: ('rhythmFelt' in done ? done.rhythmFelt : undefined) ?? null,
    strength: ('strength' in done ? done.strength : undefined) ?? null,
  };
  const added = { circumstances, override: null, note: null };
  if ('rhythm' in done) {
    const taps = must(parseTaps({ of, source: 'touch', seconds: inventTaps(done, chance) }));
    return { kind: 'taps', content: chartTaps({ taps, repair: true, ...added }, inForce, PROGRAM) };
  }
  return { kind: 'count', content: chartCount({ count: countOf(of, done), ...added }, inForce, PROGRAM) };
}

/** What the chart holds of a count put right later: nothing more is said of it. */
export function correctedCount(done: InventedCount, inForce: InForce): CountContent {
  const added = { circumstances: UNKNOWN_CIRCUMSTANCES, override: null, note: null };
  return chartCount({ count: countOf('pulse', done), ...added }, inForce, PROGRAM);
}

function countOf(of: Rate, { n, windowSeconds, clock, first }: InventedCount): Count {
  return must(parseCount({ of, n, windowSeconds, clock: clock ?? 'any', first: first ?? 1 }));
}

/** What the chart holds of an invented pressure; `run` stands in the place of what was signed, if it was a slip. */
export function pressureContent(
  { run, side, posture, cuff, armCm, uprightMinutes, unwellUpright }: InventedPressure,
  inForce: InForce,
  gauge: string | null,
): RunContent {
  const place = {
    site: 'upper-arm' as const,
    side: side ?? ('right' as const),
    posture: posture ?? ('sit' as const),
    cuff: cuff ?? null,
    armCm: armCm ?? null,
    override: null,
  };
  const circumstances = {
    ...UNKNOWN_RUN_CIRCUMSTANCES,
    uprightMinutes: uprightMinutes ?? null,
    unwellUpright: unwellUpright ?? null,
  };
  const done = { run: must(parseRun(run)), place, circumstances, gauge, override: null, note: null };
  return chartRun(done, inForce, PROGRAM);
}

/** What the chart holds of another invented sign. */
export function signContent(
  { typed, ...input }: InventedSign,
  ageMonths: number | null,
  inForce: InForce,
): SignContent {
  const circumstances = { ...UNKNOWN_SIGN_CIRCUMSTANCES, ageMonths };
  return chartSign(
    { sign: must(parseSign(input)), typed: typed ?? null, circumstances, note: null },
    inForce,
    PROGRAM,
  );
}

/** What was read, or a fault: the demo is our own. */
export function must<T>(read: { ok: true; value: T } | { ok: false; refusals: readonly unknown[] }): T {
  if (!read.ok) throw new Error(`the demo is wrong: ${JSON.stringify(read.refusals)}`);
  return read.value;
}
