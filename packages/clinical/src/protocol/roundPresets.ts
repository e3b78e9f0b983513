import { CATEGORY_COMPARISONS } from '../category/comparisons.js';
import { CATEGORY_FIGURES } from '../category/figures.js';
import type { Figure } from '../contract/figure.js';
import { EQUIPMENT_FIGURES } from '../equipment/figures.js';
import { AVERAGING_ORIGINS } from '../round/averagingOrigins.js';
import { AVERAGING_RULES, type AveragingRule } from '../round/averagingRules.js';
import { ROUND_COMPARISONS as SIDE } from '../round/comparisons.js';
import { ROUND_FIGURES as F } from '../round/figures.js';
import type { PressureLimit } from '../round/severe.js';
import type { Replaced } from './field.js';
import type { Preset } from './presets.js';

/** The presets of a round's readings, arms, rechecks, alerts and signing, and of keeping gauges; a guideline has one id in all of them. */
export const ROUND_PRESETS: readonly Preset[] = [
  ...AVERAGING_RULES.map(readingsPreset),
  armsPreset('esc-2024', 'escArmMmHg'),
  armsPreset('esc-esh-2018', 'escArmMmHg'),
  armsPreset('esh-2023', 'escArmMmHg'),
  armsPreset('ish-2020', 'ishArmMmHg'),
  armsPreset('nice-ng136', 'niceArmMmHg'),
  {
    section: 'recheck',
    id: 'minutes-then-rest',
    source: F.abnormalLaterSeconds.source,
    status: F.abnormalLaterSeconds.sure,
    changes: {},
  },
  severePreset('nice-ng136', 'niceSevereSystolic', 'niceSevereDiastolic'),
  severePreset('acc-aha-2017', 'accAha2017SevereSystolic', 'accAha2017SevereDiastolic'),
  severePreset('acc-aha-2025', 'accAha2025SevereSystolic', 'accAha2025SevereDiastolic'),
  severePreset('esh-2023', 'eshGrade3Systolic', 'eshGrade3Diastolic'),
  {
    section: 'signing',
    id: 'countersigned',
    source: 'bedside handbook 7.5',
    status: 'practice',
    changes: {},
  },
  {
    section: 'equipment',
    id: 'half-yearly',
    source: EQUIPMENT_FIGURES.comparisonMonths.source,
    status: EQUIPMENT_FIGURES.comparisonMonths.sure,
    changes: {},
  },
];

function readingsPreset({ id, difference: value }: AveragingRule): Preset {
  const { source, status, gap, difference } = AVERAGING_ORIGINS[id];
  return {
    section: 'readings',
    id,
    source,
    status,
    changes: {
      rule: { value: id, source, sure: status },
      gapSeconds: replacing(gap),
      difference: { value, source: difference?.source ?? source, sure: difference?.sure ?? status },
    },
  };
}

function armsPreset(id: string, arm: 'escArmMmHg' | 'ishArmMmHg' | 'niceArmMmHg'): Preset {
  const { source, sure } = F[arm];
  const value = { comparison: SIDE[arm], limit: F[arm].value };
  return { section: 'arms', id, source, status: sure, changes: { limitMmHg: { value, source, sure } } };
}

type SevereId = keyof typeof CATEGORY_FIGURES & keyof typeof CATEGORY_COMPARISONS;

function severePreset(id: string, systolic: SevereId, diastolic: SevereId): Preset {
  const { source, sure } = CATEGORY_FIGURES[systolic];
  const changes = { severeSystolic: severe(systolic), severeDiastolic: severe(diastolic) };
  return { section: 'actNow', id, source, status: sure, changes };
}

function severe(id: SevereId): Replaced<PressureLimit> {
  const { value: limit, source, sure } = CATEGORY_FIGURES[id];
  return { value: { comparison: CATEGORY_COMPARISONS[id], limit }, source, sure };
}

function replacing({ value, source, sure }: Figure): Replaced<number> {
  return { value, source, sure };
}
