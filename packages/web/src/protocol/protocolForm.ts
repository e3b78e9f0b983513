import {
  type FieldValue,
  listPresets,
  type Override,
  overrideFields,
  type Parsed,
  type Presets,
  type Protocol,
  presetProtocol,
  type SectionName,
} from '@evenfall/clinical';

/** What was chosen on the page: a preset for each section, and the values that the place sets itself. */
export type ProtocolChoice = {
  readonly presets: Partial<Presets>;
  /** By `section/key`, as typed. */
  readonly own: Readonly<Record<string, string>>;
};

export const NOTHING_CHOSEN_YET: ProtocolChoice = { presets: {}, own: {} };

/** What a protocol was chosen as, so that it can be changed from there. */
export function choiceOf(protocol: Protocol): ProtocolChoice {
  const own: Record<string, string> = {};
  for (const [section, fields] of Object.entries(protocol.sections)) {
    for (const [key, field] of Object.entries(fields ?? {})) {
      if (field.replaces !== null && isTypeable(field.value)) own[`${section}/${key}`] = String(field.value);
    }
  }
  return { presets: protocol.presets, own };
}

/** Guidelines that more than one section has a preset of, in the order of the handbook. */
export function guidelines(): string[] {
  const ids = listPresets().map(({ id }) => id);
  return [...new Set(ids)].filter((id) => ids.filter((one) => one === id).length > 1);
}

/** The choice with one guideline in every section that has a preset of it. */
export function withGuideline(choice: ProtocolChoice, guideline: string): ProtocolChoice {
  const chosen = listPresets()
    .filter(({ id }) => id === guideline)
    .map(({ section }) => [section, guideline]);
  return { ...choice, presets: { ...choice.presets, ...Object.fromEntries(chosen) } };
}

/** The protocol that was chosen. Errors: those of `presetProtocol` and `overrideFields`, at the fields of the protocol. */
export function protocolOf({ presets, own }: ProtocolChoice): Parsed<Protocol> {
  const preset = presetProtocol(presets);
  if (!preset.ok) return preset;
  const overrides = Object.entries(own).flatMap(([place, text]): Override[] => {
    const [section = '', key = ''] = place.split('/');
    const fields = preset.value.sections[section as SectionName] as
      | Record<string, { value: FieldValue }>
      | undefined;
    const field = fields?.[key];
    if (field === undefined || text.trim() === '') return [];
    return [{ section, key, value: typeof field.value === 'boolean' ? text === 'true' : text }];
  });
  return overrideFields(preset.value, overrides);
}

/** Whether a field can be set on the page: a number, a word of several, yes or no. */
export function isTypeable(value: FieldValue): value is number | boolean | string {
  return typeof value === 'number' || typeof value === 'boolean' || typeof value === 'string';
}
