import {
  type FieldValue,
  listPresets,
  localFields,
  type Override,
  overrideFields,
  type Parsed,
  type Presets,
  type Protocol,
  presetProtocol,
  type Refusal,
  type Field as RuleField,
  refusal,
  SECTION_NAMES,
  SECTIONS,
  type SectionName,
} from '@evenfall/clinical';
import { clock } from '@evenfall/words';
import { isTimeOfDay, minutesOf } from './timeOfDay.js';

/** What was chosen on the page: a preset for each section, and the values that the place sets itself. */
export type ProtocolChoice = {
  /** The guideline that it started from; empty for section by section. */
  readonly guideline: string;
  readonly presets: Partial<Presets>;
  /** By `section/key`, as typed. */
  readonly own: Readonly<Record<string, string>>;
  /** By `section/key`: values of the place that cannot be typed here, such as lists. They stay as they are. */
  readonly fixed: Readonly<Record<string, FieldValue>>;
};

export const NOTHING_CHOSEN_YET: ProtocolChoice = { guideline: '', presets: {}, own: {}, fixed: {} };

/** What a protocol was chosen as, so that it can be changed from there. */
export function choiceOf(protocol: Protocol): ProtocolChoice {
  const own: Record<string, string> = {};
  const fixed: Record<string, FieldValue> = {};
  for (const { section, key, field } of localFields(protocol)) {
    if (isTypeable(field.value)) own[`${section}/${key}`] = typedText(field, field.value);
    else fixed[`${section}/${key}`] = field.value;
  }
  const { presets } = protocol;
  return { guideline: guidelineOf(presets), presets, own, fixed };
}

/** Guidelines that more than one section has a preset of, in the order of the handbook. */
export function guidelines(): string[] {
  const ids = listPresets().map(({ id }) => id);
  return [...new Set(ids)].filter((id) => ids.filter((one) => one === id).length > 1);
}

/** The sections that have a preset of a guideline, in the order in which they are shown. */
export function sectionsOf(guideline: string): SectionName[] {
  return SECTION_NAMES.filter((section) =>
    listPresets().some((one) => one.section === section && one.id === guideline),
  );
}

/** The guideline that stands in every section that has a preset of it; empty for none. */
function guidelineOf(presets: Partial<Presets>): string {
  return guidelines().find((id) => isWhole(id, presets)) ?? '';
}

function isWhole(guideline: string, presets: Partial<Presets>): boolean {
  return sectionsOf(guideline).every((section) => presetOf(section, presets) === guideline);
}

/** The preset of a section: its first one where none was chosen. */
export function presetOf(section: SectionName, presets: Partial<Presets>): string {
  return presets[section] ?? listPresets().find((one) => one.section === section)?.id ?? '';
}

/** The choice with one guideline in every section that has a preset of it; with none, what stands stays. */
export function withGuideline(choice: ProtocolChoice, guideline: string): ProtocolChoice {
  const chosen = sectionsOf(guideline).map((section) => [section, guideline]);
  return { ...choice, guideline, presets: { ...choice.presets, ...Object.fromEntries(chosen) } };
}

/** The choice with another preset of one section; it is of no guideline any more where that one says otherwise there. */
export function withPreset(choice: ProtocolChoice, section: SectionName, preset: string): ProtocolChoice {
  const presets = { ...choice.presets, [section]: preset };
  return { ...choice, presets, guideline: isWhole(choice.guideline, presets) ? choice.guideline : '' };
}

/** The choice with one value of the place; blank is the published one. */
export function withOwn(choice: ProtocolChoice, place: string, text: string): ProtocolChoice {
  return { ...choice, own: { ...choice.own, [place]: text } };
}

/** The protocol that was chosen. Errors: those of `presetProtocol` and `overrideFields`, at the fields of the protocol. */
export function protocolOf({ presets, own, fixed }: ProtocolChoice): Parsed<Protocol> {
  const preset = presetProtocol(presets);
  if (!preset.ok) return preset;
  const noTimes: Refusal[] = [];
  const overrides = Object.entries({ ...fixed, ...own }).flatMap(([place, value]): Override[] => {
    const [section = '', key = ''] = place.split('/');
    const field = publishedField(preset.value, section, key);
    if (field === null || (typeof value === 'string' && value.trim() === '')) return [];
    if (typeof field.value === 'boolean') return [{ section, key, value: String(value) === 'true' }];
    if (typeof value !== 'string' || typeof field.value !== 'number') return [{ section, key, value }];
    const typed = typedNumber(field, value);
    if (typed === null && isTimeOfDay(field.unit)) {
      noTimes.push(refusal(`/sections/${section}/${key}/value`, 'not-a-time', 'a-time-of-day', value));
      return [];
    }
    return [{ section, key, value: typed ?? value }];
  });
  const read = overrideFields(preset.value, overrides);
  const refused = read.ok ? [] : read.refusals.map((one) => ofItsKind(one, preset.value));
  return noTimes.length + refused.length === 0 ? read : { ok: false, refusals: [...noTimes, ...refused] };
}

/** The limits of a time of day are told as times, and not as minutes. */
function ofItsKind(refused: Refusal, protocol: Protocol): Refusal {
  const at = fieldRefused(refused.field);
  const field = at === null ? null : publishedField(protocol, at.section, at.key);
  if (!isTimeOfDay(field?.unit ?? null) || refused.code !== 'out-of-range') return refused;
  return { ...refused, expected: 'within-times-of-day', got: clock(Number(refused.got)) };
}

/** The number that was typed for a field: minutes from midnight for a time of day; null for none. */
export function typedNumber({ unit }: Pick<RuleField, 'unit'>, text: string): number | null {
  if (isTimeOfDay(unit)) return minutesOf(text);
  return text.trim() !== '' && Number.isFinite(Number(text)) ? Number(text) : null;
}

/** The value of a field as it would be typed. */
export function typedText({ unit }: Pick<RuleField, 'unit'>, value: FieldValue): string {
  return typeof value === 'number' && isTimeOfDay(unit) ? clock(value) : String(value);
}

/** A field as the presets that were chosen have it, whatever else is wrong; null if there is none. */
export function publishedField(protocol: Protocol, section: string, key: string): RuleField | null {
  const fields = protocol.sections[section as SectionName] as Readonly<Record<string, RuleField>> | undefined;
  return fields?.[key] ?? null;
}

/** The field that a refusal is about: `/sections/inflation/marginMmHg/value` is `inflation/marginMmHg`; null for none. */
export function fieldRefused(pointer: string): { section: SectionName; key: string } | null {
  const [, top, section, key] = pointer.split('/');
  if (top !== 'sections' || section === undefined || key === undefined) return null;
  const name = SECTION_NAMES.find((one) => one === section);
  return name !== undefined && Object.hasOwn(SECTIONS[name].fields, key) ? { section: name, key } : null;
}

/** Whether a field can be set on the page: a number, a word of several, yes or no. */
export function isTypeable(value: FieldValue): value is number | boolean | string {
  return typeof value === 'number' || typeof value === 'boolean' || typeof value === 'string';
}
