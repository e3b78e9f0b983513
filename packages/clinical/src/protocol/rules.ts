import { type CategoryRules, NO_CATEGORIES } from '../category/rules.js';
import { type CountRules, DEFAULT_COUNT_RULES } from '../count/rules.js';
import { type CuffRules, DEFAULT_CUFF_RULES } from '../cuff/rules.js';
import { DEFAULT_DEFLATION_RULES, DEFAULT_INFLATION_RULES, type RunRules } from '../deflation/rules.js';
import { DEFAULT_EQUIPMENT_RULES, type EquipmentRules } from '../equipment/rules.js';
import { type AmbulatoryRules, DEFAULT_AMBULATORY_RULES, PERIODS } from '../outOfOffice/ambulatoryRules.js';
import { OUT_OF_OFFICE_FIGURES } from '../outOfOffice/figures.js';
import { DEFAULT_HOME_RULES, type HomeRules } from '../outOfOffice/homeRules.js';
import {
  ACT_NOW_LIMIT_IDS,
  type ActNowOrigins,
  type ActNowRules,
  DEFAULT_ACT_NOW_ORIGINS,
  DEFAULT_ACT_NOW_RULES,
} from '../round/actNowRules.js';
import { type ArmsRules, DEFAULT_ARMS_RULES } from '../round/armsRules.js';
import { DEFAULT_PLAN_RULES, type PlanRules } from '../round/planRules.js';
import { DEFAULT_READINGS_RULES, type ReadingsRules } from '../round/readingsRules.js';
import { DEFAULT_RECHECK_RULES, type RecheckRules } from '../round/recheckRules.js';
import type { RoundRules } from '../round/roundRules.js';
import { DEFAULT_SIGNING_RULES, type SigningRules } from '../round/signingRules.js';
import { DEFAULT_SCORE_RULES, type ScoreRules } from '../score/rules.js';
import { type Field, LOCAL_SOURCE } from './field.js';
import type { Protocol } from './protocol.js';
import type { FieldsOf } from './sections.js';

/**
 * The rules of counting under a protocol; without one, those of the conventions. A field that an older protocol
 * does not have yet takes its default.
 */
export function countRules(protocol: Protocol | null): CountRules {
  if (protocol === null) return DEFAULT_COUNT_RULES;
  const values = valuesOf(protocol.sections.count);
  // Until schema 2 one limit stood for both.
  const { fastPerMinute = DEFAULT_COUNT_RULES.fastPerMinute } = values;
  return { ...DEFAULT_COUNT_RULES, barredAbovePerMinute: fastPerMinute, ...values };
}

/** The rules of pumping up, letting down and reading under a protocol; the defaults for what it does not have. */
export function runRules(protocol: Protocol | null): RunRules {
  return {
    inflation: { ...DEFAULT_INFLATION_RULES, ...valuesOf(protocol?.sections.inflation) },
    deflation: { ...DEFAULT_DEFLATION_RULES, ...valuesOf(protocol?.sections.deflation) },
  };
}

/** The rules of choosing a cuff and a place for it under a protocol; the defaults for what it does not have. */
export function cuffRules(protocol: Protocol | null): CuffRules {
  return { ...DEFAULT_CUFF_RULES, ...valuesOf(protocol?.sections.cuff) };
}

/** What a round takes as a matter of course under a protocol; the defaults for what it does not have. */
export function planRules(protocol: Protocol | null): PlanRules {
  return { ...DEFAULT_PLAN_RULES, ...valuesOf(protocol?.sections.round) };
}

/** How many readings, how far apart, which average under a protocol; the defaults for what it does not have. */
export function readingsRules(protocol: Protocol | null): ReadingsRules {
  const section = protocol?.sections.readings;
  if (section === undefined) return { ...DEFAULT_READINGS_RULES, isGeneral: true };
  return { ...DEFAULT_READINGS_RULES, ...valuesOf(section) };
}

/** When the arms differ under a protocol; the defaults for what it does not have. */
export function armsRules(protocol: Protocol | null): ArmsRules {
  return { ...DEFAULT_ARMS_RULES, ...valuesOf(protocol?.sections.arms) };
}

/** When a pressure is looked at again under a protocol; the defaults for what it does not have. */
export function recheckRules(protocol: Protocol | null): RecheckRules {
  return { ...DEFAULT_RECHECK_RULES, ...valuesOf(protocol?.sections.recheck) };
}

/** When somebody must act at once under a protocol; everything is on where there is none, or where it is older. */
export function actNowRules(protocol: Protocol | null): ActNowRules {
  return { ...DEFAULT_ACT_NOW_RULES, ...valuesOf(protocol?.sections.actNow) };
}

/** Where the limits of acting at once come from under a protocol. */
export function actNowOrigins(protocol: Protocol | null): ActNowOrigins {
  const fields: Readonly<Record<string, Field>> = protocol?.sections.actNow ?? {};
  const origins = ACT_NOW_LIMIT_IDS.map((id) => {
    const field = fields[id];
    if (field === undefined) return [id, DEFAULT_ACT_NOW_ORIGINS[id]];
    const { source, sure } = field;
    return [id, { source, sure, isLocal: source === LOCAL_SOURCE }];
  });
  return Object.fromEntries(origins) as ActNowOrigins;
}

/** What signing asks for under a protocol; the defaults for what it does not have. */
export function signingRules(protocol: Protocol | null): SigningRules {
  return { ...DEFAULT_SIGNING_RULES, ...valuesOf(protocol?.sections.signing) };
}

/** The schemes that put a pressure into a category under a protocol; without one, or an older one, none. */
export function categoryRules(protocol: Protocol | null): CategoryRules {
  return { ...NO_CATEGORIES, ...valuesOf(protocol?.sections.category) };
}

/** Which scores are shown under a protocol; without one, or an older one, none. */
export function scoreRules(protocol: Protocol | null): ScoreRules {
  return { ...DEFAULT_SCORE_RULES, ...valuesOf(protocol?.sections.score) };
}

/** What a gauge must keep to, and how long a check of it holds, under a protocol; the defaults for what it does not have. */
export function equipmentRules(protocol: Protocol | null): EquipmentRules {
  return { ...DEFAULT_EQUIPMENT_RULES, ...valuesOf(protocol?.sections.equipment) };
}

/** How readings at home are averaged and named under a protocol; means without limits for what it does not have. */
export function homeRules(protocol: Protocol | null): HomeRules {
  return { ...DEFAULT_HOME_RULES, ...valuesOf(protocol?.sections.home) };
}

/** How a recording over 24 hours is read under a protocol; means without limits for what it does not have. */
export function ambulatoryRules(protocol: Protocol | null): AmbulatoryRules {
  const values = valuesOf(protocol?.sections.ambulatory);
  // Until schema 8 the names and the least hours went by the preset.
  const byPreset = PRESET_SCHEMES[protocol?.presets.ambulatory ?? ''];
  const fromMemory = PERIODS.filter((period) =>
    (['Systolic', 'Diastolic'] as const).some((measure) => {
      const field = protocol?.sections.ambulatory?.[`${period}${measure}`];
      return field?.value != null && field.sure === 'memory';
    }),
  );
  const isFromMemory = fromMemory.length === 0 ? {} : { fromMemory };
  return { ...DEFAULT_AMBULATORY_RULES, ...byPreset, ...values, ...isFromMemory };
}

const PRESET_SCHEMES: Readonly<Record<string, Partial<AmbulatoryRules>>> = {
  'nice-ng136': { scheme: 'nice-ng136' },
  'acc-aha-2017': { scheme: 'acc-aha-2017' },
  'acc-aha-2025': { scheme: 'acc-aha-2017' },
  'esc-2024': { scheme: 'esc-2024' },
  'hypertension-canada': {
    leastHours: { comparison: '>=', limit: OUT_OF_OFFICE_FIGURES.canadaLeastHours.value },
  },
};

/** All rules that bear on a round as a whole under a protocol. */
export function roundRules(protocol: Protocol | null): RoundRules {
  return {
    plan: planRules(protocol),
    cuff: cuffRules(protocol),
    readings: readingsRules(protocol),
    arms: armsRules(protocol),
    recheck: recheckRules(protocol),
    actNow: actNowRules(protocol),
    actNowOrigins: actNowOrigins(protocol),
    category: categoryRules(protocol),
    score: scoreRules(protocol),
    signing: signingRules(protocol),
  };
}

/** The values of a section's fields; none where the protocol is older than the section. */
export function valuesOf<Rules>(fields: FieldsOf<Rules> | undefined): Partial<Rules> {
  const entries = Object.entries((fields ?? {}) as Readonly<Record<string, { readonly value: unknown }>>);
  return Object.fromEntries(entries.map(([key, { value }]) => [key, value])) as Partial<Rules>;
}
