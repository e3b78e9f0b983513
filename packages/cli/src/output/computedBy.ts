import { type ComputedBy, type Protocol, protocolVersion } from '@evenfall/clinical';

/**
 * What made an answer of the command line; `preset` is that of the section its rules go by (`count`). Presets are null if none
 * was used. Source: docs/conventions.md section 3.
 */
export function computedBy(version: string, rule: string, protocol: Protocol | null): ComputedBy {
  return {
    program: `evenfall ${version}`,
    preset: protocol?.presets.count ?? null,
    presetVersion: protocol === null ? null : protocolVersion(protocol),
    rule,
  };
}
