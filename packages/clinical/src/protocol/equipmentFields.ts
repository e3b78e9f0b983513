import type { EquipmentRules } from '../equipment/rules.js';
import { EQUIPMENT_SECTION } from './equipmentSection.js';
import type { Field } from './field.js';
import type { FieldsOf } from './sections.js';

/**
 * What a gauge must keep to, with where each value comes from: those of a protocol's section, the published ones where it
 * has none.
 */
export function equipmentFields(section: FieldsOf<EquipmentRules> | undefined): FieldsOf<EquipmentRules> {
  const published = Object.entries(EQUIPMENT_SECTION.fields).map(([key, shape]): [string, Field] => {
    const { value, unit, source, sure } = shape;
    return [key, { value, unit, source, sure, replaces: null }];
  });
  return { ...(Object.fromEntries(published) as FieldsOf<EquipmentRules>), ...section };
}
