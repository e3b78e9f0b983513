import type { SidedLimit } from '../contract/shownPressure.js';
import type { EditingRule } from './artefacts.js';
import { OUT_OF_OFFICE_FIGURES as F } from './figures.js';
import type { PeriodSchemeId } from './periodCategories.js';

/** The periods of a recording, each with a mean and limits of its own. */
export const PERIODS = ['whole', 'day', 'night'] as const;
export type Period = (typeof PERIODS)[number];

/** Which mean over the whole recording is held against its limit. */
export const WHOLE_MEANS = ['over-time', 'arithmetic', 'hours-weighted'] as const;
export type WholeMean = (typeof WHOLE_MEANS)[number];

/** A guideline's way with a recording over 24 hours, as data. Null is "no such rule here". mmHg; minutes from midnight. */
export type AmbulatoryRules = {
  readonly leastPercent: SidedLimit | null;
  readonly leastDay: SidedLimit | null;
  readonly leastNight: SidedLimit | null;
  /** A stretch of so many hours without a reading makes the recording one to repeat. */
  readonly longestEmptyHours: SidedLimit | null;
  /** A recording that lasted less is said to be short; it is judged all the same. */
  readonly leastHours: SidedLimit | null;
  /** Any of these at its limit is high. */
  readonly judged: readonly Period[];
  readonly wholeMean: WholeMean;
  readonly wholeSystolic: SidedLimit | null;
  readonly wholeDiastolic: SidedLimit | null;
  readonly daySystolic: SidedLimit | null;
  readonly dayDiastolic: SidedLimit | null;
  readonly nightSystolic: SidedLimit | null;
  readonly nightDiastolic: SidedLimit | null;
  /** How each mean that is judged is named. */
  readonly scheme: PeriodSchemeId;
  readonly editing: EditingRule;
  /** A reading further than this many SD from the mean of its period is edited too; null is off. */
  readonly editingSds: SidedLimit | null;
  /** The clock's day and night where there is no diary. */
  readonly dayFrom: number;
  readonly dayTo: number;
  readonly nightFrom: number;
  readonly nightTo: number;
  readonly reportsStiffness: boolean;
  /** Periods whose limits were never read again in their guideline, as the protocol says of them; absent for none. */
  readonly fromMemory?: readonly Period[];
};

/** What stands where a place has chosen no guideline: means, and no limit. */
export const DEFAULT_AMBULATORY_RULES: AmbulatoryRules = {
  leastPercent: { comparison: '>=', limit: F.leastPercent.value },
  leastDay: { comparison: '>=', limit: F.leastDayReadings.value },
  leastNight: { comparison: '>=', limit: F.leastNightReadings.value },
  longestEmptyHours: null,
  leastHours: null,
  judged: PERIODS,
  wholeMean: 'over-time',
  wholeSystolic: null,
  wholeDiastolic: null,
  daySystolic: null,
  dayDiastolic: null,
  nightSystolic: null,
  nightDiastolic: null,
  scheme: 'high-or-not',
  editing: 'range-a',
  editingSds: null,
  dayFrom: F.dayFrom.value,
  dayTo: F.dayTo.value,
  nightFrom: F.nightFrom.value,
  nightTo: F.nightTo.value,
  reportsStiffness: false,
};
