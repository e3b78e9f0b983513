import type { CategoryRules } from '../category/rules.js';
import type { CountRules } from '../count/rules.js';
import type { CuffRules } from '../cuff/rules.js';
import type { DeflationRules, InflationRules } from '../deflation/rules.js';
import type { EquipmentRules } from '../equipment/rules.js';
import type { AmbulatoryRules } from '../outOfOffice/ambulatoryRules.js';
import type { HomeRules } from '../outOfOffice/homeRules.js';
import type { ActNowRules } from '../round/actNowRules.js';
import type { ArmsRules } from '../round/armsRules.js';
import type { PlanRules } from '../round/planRules.js';
import type { ReadingsRules } from '../round/readingsRules.js';
import type { RecheckRules } from '../round/recheckRules.js';
import type { SigningRules } from '../round/signingRules.js';
import type { ScoreRules } from '../score/rules.js';
import { ACT_NOW_SECTION } from './actNowSection.js';
import { AMBULATORY_SECTION } from './ambulatorySection.js';
import { ARMS_SECTION } from './armsSection.js';
import { CATEGORY_SECTION } from './categorySection.js';
import { COUNT_SECTION } from './countSection.js';
import { CUFF_SECTION } from './cuffSection.js';
import { DEFLATION_SECTION } from './deflationSection.js';
import { EQUIPMENT_SECTION } from './equipmentSection.js';
import type { Field, FieldValue } from './field.js';
import { HOME_SECTION } from './homeSection.js';
import { INFLATION_SECTION } from './inflationSection.js';
import { READINGS_SECTION } from './readingsSection.js';
import { RECHECK_SECTION } from './recheckSection.js';
import { ROUND_SECTION } from './roundSection.js';
import { SCORE_SECTION } from './scoreSection.js';
import type { FieldShape, Section } from './shape.js';
import { SIGNING_SECTION } from './signingSection.js';

/** The rules of each section as plain values. A new section is added here and in {@link SECTIONS}. */
export type SectionRules = {
  readonly count: CountRules;
  readonly inflation: InflationRules;
  readonly deflation: DeflationRules;
  readonly cuff: CuffRules;
  readonly round: PlanRules;
  readonly category: CategoryRules;
  readonly score: ScoreRules;
  readonly readings: ReadingsRules;
  readonly arms: ArmsRules;
  readonly recheck: RecheckRules;
  readonly actNow: ActNowRules;
  readonly signing: SigningRules;
  readonly equipment: EquipmentRules;
  readonly home: HomeRules;
  readonly ambulatory: AmbulatoryRules;
};

export type SectionName = keyof SectionRules;

/** Sections that came with a later schema: an older protocol does not have them. */
export type LaterSection = Exclude<SectionName, 'count'>;

/** The rules of a section as fields, each with its source. */
export type FieldsOf<Rules> = {
  readonly [Key in keyof Rules]: Rules[Key] extends FieldValue ? Field<Rules[Key]> : never;
};

/** Every section of a protocol, in the order in which they are shown. */
export const SECTIONS: { readonly [Name in SectionName]: Section<SectionRules[Name]> } = {
  count: COUNT_SECTION,
  inflation: INFLATION_SECTION,
  deflation: DEFLATION_SECTION,
  cuff: CUFF_SECTION,
  round: ROUND_SECTION,
  category: CATEGORY_SECTION,
  score: SCORE_SECTION,
  readings: READINGS_SECTION,
  arms: ARMS_SECTION,
  recheck: RECHECK_SECTION,
  actNow: ACT_NOW_SECTION,
  signing: SIGNING_SECTION,
  equipment: EQUIPMENT_SECTION,
  home: HOME_SECTION,
  ambulatory: AMBULATORY_SECTION,
};

export const SECTION_NAMES = Object.keys(SECTIONS) as readonly SectionName[];

/** The sections that a protocol of a schema has: those with a field that was there then. */
export function sectionsOfSchema(schema: number): SectionName[] {
  return SECTION_NAMES.filter((name) => {
    const fields: Readonly<Record<string, FieldShape>> = SECTIONS[name].fields;
    return Object.values(fields).some(({ since }) => since <= schema);
  });
}
