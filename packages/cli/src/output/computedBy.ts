import type { ComputedBy } from '@evenfall/clinical';

/** What made an answer of the command line; no preset was chosen. Source: docs/conventions.md section 3. */
export function computedBy(version: string, rule: string): ComputedBy {
  return { program: `evenfall ${version}`, preset: null, presetVersion: null, rule };
}
