import type { CountRules } from '@evenfall/clinical';

/**
 * The protocol under which a value is made: its id, the hash of its content, and its rules. A place that has
 * chosen none has nulls and the rules that the conventions give.
 */
export type InForce = {
  readonly preset: string | null;
  readonly presetVersion: string | null;
  readonly countRules: CountRules;
};
