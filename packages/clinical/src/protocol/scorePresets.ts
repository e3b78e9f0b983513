import { SCORE_FIGURES as F } from '../score/figures.js';
import type { Replaced } from './field.js';
import type { Preset } from './presets.js';

const { source, sure } = F.ewMostPoints;
const YES: Replaced<boolean> = { value: true, source, sure };

/** The presets of the scores. */
export const SCORE_PRESETS: readonly Preset[] = [
  {
    section: 'score',
    id: 'no-scores',
    source: 'docs/conventions.md section 7: no score before a place has chosen',
    status: 'decision',
    changes: {},
  },
  { section: 'score', id: 'adult-early-warning', source, status: sure, changes: { earlyWarning: YES } },
];
