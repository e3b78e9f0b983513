import { type ComputedBy, type Protocol, protocolVersion, type SectionName } from '@evenfall/clinical';

/**
 * What made an answer of the command line; `preset` is that of the section its rules go by. Presets are null if none
 * was used. Source: docs/conventions.md section 3.
 */
export function computedBy(
  version: string,
  rule: string,
  protocol: Protocol | null,
  section: SectionName = 'count',
): ComputedBy {
  return {
    program: `evenfall ${version}`,
    preset: protocol?.presets[section] ?? null,
    presetVersion: protocol === null ? null : protocolVersion(protocol),
    rule,
  };
}
