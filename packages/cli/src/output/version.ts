import type { Answer } from '../answer.js';

/** What `--version` shows. */
export function versionOf(version: string): Answer {
  return { kind: 'one', json: { program: 'evenfall', version }, lines: [`evenfall ${version}`] };
}
