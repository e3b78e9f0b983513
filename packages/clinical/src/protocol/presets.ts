import type { Sureness } from '../contract/figure.js';
import { COUNT_FIGURES } from '../count/figures.js';
import type { FieldValue, Replaced } from './field.js';
import type { SectionName, SectionRules } from './sections.js';

const HWU = 'Hwu 2000, J Clin Nurs 9:146';

/** What a preset says otherwise than its section's own values. */
type Changes<Rules> = {
  readonly [Key in keyof Rules]?: Rules[Key] extends FieldValue ? Replaced<Rules[Key]> : never;
};

/** A published or customary set of rules of one section to start from. The catalogue has its title. */
export type Preset = {
  readonly [Name in SectionName]: {
    readonly section: Name;
    readonly id: string;
    readonly source: string;
    readonly status: Sureness;
    readonly changes: Changes<SectionRules[Name]>;
  };
}[SectionName];

/** In the order of the handbook; the first of each section stands where none was chosen for it. */
export const PRESETS: readonly Preset[] = [
  {
    section: 'count',
    id: 'thirty-seconds',
    source: COUNT_FIGURES.pulseWindowSeconds.source,
    status: COUNT_FIGURES.pulseWindowSeconds.sure,
    changes: {},
  },
  {
    section: 'count',
    id: 'fifteen-seconds-at-rest',
    source: HWU,
    status: 'found',
    changes: { pulseWindowSeconds: { value: 15, source: HWU, sure: 'found' } },
  },
  {
    section: 'count',
    id: 'full-minute',
    source: 'bedside handbook 1.5',
    status: 'practice',
    changes: {
      pulseWindowsSeconds: { value: [60], source: 'bedside handbook 1.5', sure: 'practice' },
      pulseWindowSeconds: { value: 60, source: 'bedside handbook 1.5', sure: 'practice' },
    },
  },
];
