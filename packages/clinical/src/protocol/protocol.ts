import type { FieldsOf, LaterSection, SectionRules } from './sections.js';

/** The preset of each section that its schema has. */
export type Presets = { readonly count: string } & { readonly [Name in LaterSection]?: string };

/**
 * The place's own rules, wherever guidelines disagree: sections of fields, each with its source. Plain data that
 * never changes; a change makes another protocol with another version (see `protocolVersion`).
 *
 * A place that has chosen none has null: counts then follow the conventions, and nothing is put in a category.
 */
export type Protocol = {
  /** Schema number of this shape; {@link PROTOCOL_SCHEMA} for those made now. */
  readonly schema: number;
  /** Id of the preset that each section started from; a place combines them section by section. */
  readonly presets: Presets;
  readonly sections: { readonly count: FieldsOf<SectionRules['count']> } & {
    readonly [Name in LaterSection]?: FieldsOf<SectionRules[Name]>;
  };
};

/**
 * The newest schema that this program reads; it reads every older one. 1: one `preset` for the whole, and only the
 * section `count`. 2: `presets` by section; the fields of `count` that are `since: 2`. 3: the sections of a
 * pressure and of a whole round. 4: the rest before a pressure. 5: keeping
 * gauges. 6: readings at home and over 24 hours. 7: the longest stretch of a recording without a reading.
 * 8: how the means of a recording are named, and how many hours it is to last. 9: what a mean at home is of.
 */
export const PROTOCOL_SCHEMA = 9;
