import type { Sureness } from '../contract/figure.js';
import { COUNT_FIGURES } from '../count/figures.js';
import type { FieldValue, Replaced } from './field.js';
import type { SectionName, SectionRules } from './sections.js';

const HWU = 'Hwu 2000, J Clin Nurs 9:146';

/** What a preset says otherwise than the sections' own values. */
type Changes = {
  readonly [Name in SectionName]?: {
    readonly [Key in keyof SectionRules[Name]]?: SectionRules[Name][Key] extends FieldValue
      ? Replaced<SectionRules[Name][Key]>
      : never;
  };
};

/** A published or customary set of rules to start from. The catalogue has its title. */
export type Preset = {
  readonly id: string;
  readonly source: string;
  readonly status: Sureness;
  readonly changes: Changes;
};

/** In the order of the handbook. */
export const PRESETS: readonly Preset[] = [
  {
    id: 'thirty-seconds',
    source: COUNT_FIGURES.pulseWindowSeconds.source,
    status: COUNT_FIGURES.pulseWindowSeconds.sure,
    changes: {},
  },
  {
    id: 'fifteen-seconds-at-rest',
    source: HWU,
    status: 'found',
    changes: { count: { pulseWindowSeconds: { value: 15, source: HWU, sure: 'found' } } },
  },
  {
    id: 'full-minute',
    source: 'bedside handbook 1.5',
    status: 'practice',
    changes: {
      count: {
        pulseWindowsSeconds: { value: [60], source: 'bedside handbook 1.5', sure: 'practice' },
        pulseWindowSeconds: { value: 60, source: 'bedside handbook 1.5', sure: 'practice' },
      },
    },
  },
];
