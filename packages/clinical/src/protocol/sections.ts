import type { CountRules } from '../count/rules.js';
import { COUNT_SECTION } from './countSection.js';
import type { Field, FieldValue } from './field.js';
import type { Section } from './shape.js';

/** The rules of each section as plain values. A new section is added here and in {@link SECTIONS}. */
export type SectionRules = {
  readonly count: CountRules;
};

export type SectionName = keyof SectionRules;

/** The rules of a section as fields, each with its source. */
export type FieldsOf<Rules> = {
  readonly [Key in keyof Rules]: Rules[Key] extends FieldValue ? Field<Rules[Key]> : never;
};

/** Every section of a protocol, in the order in which they are shown. */
export const SECTIONS: { readonly [Name in SectionName]: Section<SectionRules[Name]> } = {
  count: COUNT_SECTION,
};

export const SECTION_NAMES = Object.keys(SECTIONS) as readonly SectionName[];
