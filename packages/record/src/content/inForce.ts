import { type CountRules, countRules, type Protocol } from '@evenfall/clinical';

/**
 * What a value is made under: the preset of the protocol's section that its rule goes by (`count`), the hash of the
 * whole protocol, and its rules. A place that has chosen none has nulls and the rules that the conventions give.
 */
export type InForce = {
  readonly preset: string | null;
  readonly presetVersion: string | null;
  readonly countRules: CountRules;
};

/** What stands where no protocol was chosen. */
export const NOTHING_CHOSEN: InForce = { preset: null, presetVersion: null, countRules: countRules(null) };

/** What a kept protocol puts in force; `version` is the hash it is kept under. */
export function inForceUnder(protocol: Protocol, version: string): InForce {
  return { preset: protocol.presets.count, presetVersion: version, countRules: countRules(protocol) };
}
