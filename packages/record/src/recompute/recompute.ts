import {
  parseCountOrVoid,
  parseGaugeLog,
  parseRun,
  parseSign,
  parseTaps,
  type Refusal,
} from '@evenfall/clinical';
import { chartCount } from '../content/chartCount.js';
import { chartGaugeLog } from '../content/chartGaugeLog.js';
import { chartRun } from '../content/chartRun.js';
import { chartSign } from '../content/chartSign.js';
import { chartTaps } from '../content/chartTaps.js';
import { COMPUTED, type ComputedKind, isComputed, presetOf } from '../content/computed.js';
import type { InForce } from '../content/inForce.js';
import type { Entry } from '../entry/entry.js';
import { firstDifference } from './nearly.js';
import { recomputeSeries } from './recomputeSeries.js';

/**
 * What comes of computing a kept value again from its evidence with the rule it names.
 *
 * `no-value`: the entry holds none. `impossible-evidence`: today's parsing refuses it. `unknown-rule`,
 * `unknown-protocol`: made by a program or a protocol that is not here. `differs` is also said of a preset that is not
 * the one of the protocol version named beside it.
 */
export type Recomputed =
  | { readonly state: 'no-value' | 'same' | 'unknown-rule' | 'unknown-protocol' }
  | { readonly state: 'impossible-evidence'; readonly refusals: readonly Refusal[] }
  | { readonly state: 'differs'; readonly at: string; readonly kept: unknown; readonly computed: unknown };

/**
 * Recomputes an entry's value. `inForce` gives the rules of the protocol version the value names (null for a
 * version that is not kept here); a value made without a protocol asks for version null.
 */
export function recompute(
  entry: Entry,
  inForce: (presetVersion: string | null) => InForce | null,
): Recomputed {
  if (entry.kind === 'series') return recomputeSeries(entry, inForce);
  if (!hasValue(entry)) return { state: 'no-value' };
  const { rule, preset, presetVersion } = entry.content.computedBy;
  const rules = inForce(presetVersion);
  if (rules === null) return { state: 'unknown-protocol' };
  const wanted = presetOf(entry.kind, rules);
  if (preset !== wanted) {
    return { state: 'differs', at: '/content/computedBy/preset', kept: preset, computed: wanted };
  }
  if (rule !== COMPUTED[entry.kind].rule) return { state: 'unknown-rule' };
  const again = charted(entry, rules);
  return again.ok ? compared(entry.content.value, again.value) : again.impossible;
}

type Computed = Extract<Entry, { readonly kind: ComputedKind }>;

function hasValue(entry: Entry): entry is Computed {
  return isComputed(entry.kind);
}

type Again =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly impossible: Recomputed };

/** The value made again from the evidence as today's parsing reads it. */
function charted(entry: Computed, rules: InForce): Again {
  const { program } = entry.content.computedBy;
  switch (entry.kind) {
    case 'count': {
      const read = parseCountOrVoid(entry.content.evidence.count, rules.countRules);
      if (!read.ok) return impossible(read.refusals, '/content/evidence/count');
      const done = { ...entry.content, ...entry.content.evidence, count: read.value };
      return { ok: true, value: chartCount(done, rules, program).value };
    }
    case 'taps': {
      const read = parseTaps(entry.content.evidence.taps);
      if (!read.ok) return impossible(read.refusals, '/content/evidence/taps');
      const done = { ...entry.content, ...entry.content.evidence, taps: read.value };
      return { ok: true, value: chartTaps(done, rules, program).value };
    }
    case 'run': {
      const read = parseRun(entry.content.evidence.run, rules.runRules.deflation);
      if (!read.ok) return impossible(read.refusals, '/content/evidence/run');
      const done = { ...entry.content, ...entry.content.evidence, run: read.value };
      return { ok: true, value: chartRun(done, rules, program).value };
    }
    case 'sign': {
      const read = parseSign(entry.content.evidence.sign);
      if (!read.ok) return impossible(read.refusals, '/content/evidence/sign');
      const done = { ...entry.content, ...entry.content.evidence, sign: read.value };
      return { ok: true, value: chartSign(done, rules, program).value };
    }
    case 'gauge-logged': {
      const read = parseGaugeLog(entry.content.evidence.log);
      if (!read.ok) return impossible(read.refusals, '/content/evidence/log');
      const done = { ...entry.content, log: read.value };
      return { ok: true, value: chartGaugeLog(done, rules, program).value };
    }
  }
}

function compared(kept: unknown, computed: unknown): Recomputed {
  const at = firstDifference(kept, computed);
  return at === null ? { state: 'same' } : { state: 'differs', at: `/content/value${at}`, kept, computed };
}

function impossible(refusals: readonly Refusal[], within: string): Again {
  const placed = refusals.map((refused) => ({ ...refused, field: within + refused.field }));
  return { ok: false, impossible: { state: 'impossible-evidence', refusals: placed } };
}
