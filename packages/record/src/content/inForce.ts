import {
  type AmbulatoryRules,
  ambulatoryRules,
  type CountRules,
  countRules,
  type EquipmentRules,
  equipmentRules,
  type FieldsOf,
  type HomeRules,
  homeRules,
  type Presets,
  type Protocol,
  type RoundRules,
  type RunRules,
  roundRules,
  runRules,
} from '@evenfall/clinical';

/**
 * What a value is made under: the preset of each section of the protocol, the hash of the whole protocol, and its
 * rules. A place that has chosen none has no presets, no hash, and the rules that the conventions give.
 */
export type InForce = {
  readonly presets: Partial<Presets>;
  readonly presetVersion: string | null;
  readonly countRules: CountRules;
  readonly runRules: RunRules;
  readonly roundRules: RoundRules;
  readonly homeRules: HomeRules;
  readonly ambulatoryRules: AmbulatoryRules;
  readonly equipmentRules: EquipmentRules;
  /** The same as the protocol has them, with the source of each; `equipmentFields` says those it does not have. */
  readonly equipmentSection: FieldsOf<EquipmentRules> | undefined;
};

/** What stands where no protocol was chosen. */
export const NOTHING_CHOSEN: InForce = {
  presets: {},
  presetVersion: null,
  countRules: countRules(null),
  runRules: runRules(null),
  roundRules: roundRules(null),
  homeRules: homeRules(null),
  ambulatoryRules: ambulatoryRules(null),
  equipmentRules: equipmentRules(null),
  equipmentSection: undefined,
};

/** What a kept protocol puts in force; `version` is the hash it is kept under. */
export function inForceUnder(protocol: Protocol, version: string): InForce {
  return {
    presets: protocol.presets,
    presetVersion: version,
    countRules: countRules(protocol),
    runRules: runRules(protocol),
    roundRules: roundRules(protocol),
    homeRules: homeRules(protocol),
    ambulatoryRules: ambulatoryRules(protocol),
    equipmentRules: equipmentRules(protocol),
    equipmentSection: protocol.sections.equipment,
  };
}
