import { type Flag, GAUGE_RULE, type GaugeLog, gaugeResult } from '@evenfall/clinical';
import type { GaugeLoggedContent } from './equipment.js';
import type { InForce } from './inForce.js';

/** What was done with which gauge. */
export type GaugeLogEvidence = {
  readonly gauge: string;
  readonly log: GaugeLog;
  readonly note: string | null;
};

/** The content of a line of a gauge's log, its value made from what was read by the rules in force. */
export function chartGaugeLog(
  { gauge, log, note }: GaugeLogEvidence,
  { presets, presetVersion, equipmentRules }: InForce,
  program: string,
): GaugeLoggedContent {
  const result = gaugeResult(log, equipmentRules);
  return {
    gauge,
    evidence: { log: copied(log) },
    value: { ...result, flags: result.flags.map(copiedFlag), why: result.why.map(copiedFlag) },
    computedBy: { program, rule: GAUGE_RULE, preset: presets.equipment ?? null, presetVersion },
    note,
  };
}

function copied(log: GaugeLog): GaugeLoggedContent['evidence']['log'] {
  return log.of === 'comparison' ? { ...log, points: log.points.map((point) => ({ ...point })) } : { ...log };
}

function copiedFlag({ code, figures }: Flag) {
  return { code, figures: { ...figures } };
}
