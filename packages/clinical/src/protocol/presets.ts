import { ADULT_SCHEMES, PREGNANCY_SCHEME } from '../category/schemes.js';
import { AAP_2017 } from '../child/aap2017.js';
import type { Sureness } from '../contract/figure.js';
import { COUNT_FIGURES } from '../count/figures.js';
import { CUFF_SCHEMES } from '../cuff/schemes.js';
import { DEFLATION_FIGURES } from '../deflation/figures.js';
import type { FieldValue, Replaced } from './field.js';
import { OUT_OF_OFFICE_PRESETS } from './outOfOfficePresets.js';
import { ROUND_PRESETS } from './roundPresets.js';
import { SCORE_PRESETS } from './scorePresets.js';
import type { SectionName, SectionRules } from './sections.js';

const KSH13 = DEFLATION_FIGURES.fastestPerBeatMmHg.source;
const JOURNAL = 'table of office measurement of a cardiology journal (bedside handbook 3.5, JACC-T)';
const TEN = 'one learning page (bedside handbook 3.5)';
const SURVEYS = 'survey protocols (bedside handbook 3.9)';
const SCORED =
  'the seven inputs of the 2017 early-warning score, Royal College of Physicians (bedside handbook 5.2)';
const HWU = 'Hwu 2000, J Clin Nurs 9:146';

/** Guidelines of the country whose paediatricians wrote the scheme of children; the others bring none. */
const AMERICAN: readonly string[] = ['acc-aha-2017', 'acc-aha-2025'];
const AAP = { value: AAP_2017.id, source: AAP_2017.source, sure: AAP_2017.status };

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
  {
    section: 'inflation',
    id: 'margin-thirty',
    source: DEFLATION_FIGURES.marginMmHg.source,
    status: DEFLATION_FIGURES.marginMmHg.sure,
    changes: {},
  },
  {
    section: 'inflation',
    id: 'margin-twenty',
    source: JOURNAL,
    status: 'found',
    changes: { marginMmHg: { value: 20, source: JOURNAL, sure: 'found' } },
  },
  {
    section: 'inflation',
    id: 'margin-ten',
    source: TEN,
    status: 'practice',
    changes: {
      marginMmHg: { value: 10, source: TEN, sure: 'practice' },
      smallMarginMmHg: { value: 10, source: TEN, sure: 'practice' },
    },
  },
  {
    section: 'deflation',
    id: 'two-to-three-a-second',
    source: DEFLATION_FIGURES.fastestMmHgPerSecond.source,
    status: DEFLATION_FIGURES.fastestMmHgPerSecond.sure,
    changes: {},
  },
  {
    section: 'deflation',
    id: 'two-a-beat',
    source: KSH13,
    status: 'found',
    changes: { perBeatWhen: { value: 'always', source: KSH13, sure: 'found' } },
  },
  {
    section: 'deflation',
    id: 'mark-above',
    source: SURVEYS,
    status: 'memory',
    changes: { gaugeReading: { value: 'mark-above', source: SURVEYS, sure: 'memory' } },
  },
  ...CUFF_SCHEMES.map(({ id, source, status }) => ({
    section: 'cuff' as const,
    id,
    source,
    status,
    changes: { scheme: { value: id, source, sure: status } },
  })),
  {
    section: 'round',
    id: 'pulse-breaths-pressure',
    source: 'bedside handbook 3.8 and 7.1',
    status: 'practice',
    changes: {},
  },
  {
    section: 'round',
    id: 'scored-set',
    source: SCORED,
    status: 'second-hand',
    changes: {
      wantedSigns: {
        value: ['pulse', 'breaths', 'pressure', 'temperature', 'oxygen-saturation', 'consciousness'],
        source: SCORED,
        sure: 'second-hand',
      },
    },
  },
  {
    section: 'round',
    id: 'pressure-alone',
    source: 'bedside handbook 7.1',
    status: 'practice',
    changes: { wantedSigns: { value: ['pressure'], source: 'bedside handbook 7.1', sure: 'practice' } },
  },
  {
    section: 'category',
    id: 'no-categories',
    source: 'docs/conventions.md section 7',
    status: 'decision',
    changes: {},
  },
  ...ADULT_SCHEMES.map(({ id, source, status }) => ({
    section: 'category' as const,
    id,
    source,
    status,
    changes: {
      adultScheme: { value: id, source, sure: status },
      ...(AMERICAN.includes(id) ? { childScheme: AAP } : {}),
      pregnancyScheme: {
        value: PREGNANCY_SCHEME.id,
        source: PREGNANCY_SCHEME.source,
        sure: PREGNANCY_SCHEME.status,
      },
    },
  })),
  ...SCORE_PRESETS,
  ...ROUND_PRESETS,
  ...OUT_OF_OFFICE_PRESETS,
];
