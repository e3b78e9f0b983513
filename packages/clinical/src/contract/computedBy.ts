/**
 * What made a value, so that a later program can recompute it beside the old one and say what differs.
 *
 * `preset` is the protocol's id and `presetVersion` the hash of its content; both are null when no protocol was
 * chosen. `rule` names the version of the rule (`count-1`, `taps-1`): it changes when the same evidence could
 * give another value.
 */
export type ComputedBy = {
  readonly program: string;
  readonly preset: string | null;
  readonly presetVersion: string | null;
  readonly rule: string;
};
