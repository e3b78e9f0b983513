import { type FieldChange, type PresetChange, type Protocol, protocolDiff } from '@evenfall/clinical';

/** What differs between two protocols, each difference once. */
export type Differences = {
  readonly presets: readonly PresetChange[];
  readonly fields: readonly FieldChange[];
};

/** What a field holds that names no set of rules. */
const NONE = 'none';

/**
 * The sets of rules and the values in which two protocols differ. A value that does no more than name the set of rules of
 * its section is said by that set already; one whose source alone differs is the same value.
 */
export function differencesOf(before: Protocol, after: Protocol): Differences {
  const { presets, fields } = protocolDiff(before, after);
  return {
    presets,
    fields: fields.filter(
      (one) =>
        JSON.stringify(one.before?.value) !== JSON.stringify(one.after?.value) &&
        !presets.some((preset) => preset.section === one.section && isNameOf(one, preset)),
    ),
  };
}

/** Whether a field names the set of rules on both sides, or on one of them and nothing on the other. */
function isNameOf(field: FieldChange, preset: PresetChange): boolean {
  const sides = (['before', 'after'] as const).map((side) => ({
    value: field[side]?.value ?? null,
    id: preset[side],
  }));
  return (
    sides.some(({ value, id }) => value !== null && value === id) &&
    sides.every(({ value, id }) => value === id || value === null || value === NONE)
  );
}
