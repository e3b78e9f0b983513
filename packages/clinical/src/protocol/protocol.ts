import type { FieldsOf, SectionName, SectionRules } from './sections.js';

/**
 * The place's own rules, wherever guidelines disagree: sections of fields, each with its source. Plain data that
 * never changes; a change makes another protocol with another version (see `protocolVersion`).
 *
 * A place that has chosen none has null: counts then follow the conventions, and nothing is put in a category.
 */
export type Protocol = {
  /** Schema number of this shape; {@link PROTOCOL_SCHEMA} for those made now. */
  readonly schema: number;
  /** Id of the preset it started from. */
  readonly preset: string;
  readonly sections: { readonly [Name in SectionName]: FieldsOf<SectionRules[Name]> };
};

/** The newest schema that this program reads; it reads every older one. */
export const PROTOCOL_SCHEMA = 1;
