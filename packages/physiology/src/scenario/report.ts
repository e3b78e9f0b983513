import type { Scenario } from './scenario.js';

/** What an observer can be asked to report of a person, beside the numbers that everybody writes. */
export const REPORTS = [
  'both-numbers',
  'second-reading',
  'three-readings',
  'palpated-systolic',
  'gap',
  'muffled',
  'sounds-to-zero',
  'paradox-both-numbers',
  'strong-weak-by-turns',
  'by-feel',
  'other-arm',
  'standing-readings',
  'home-readings',
  'cuff-by-arm',
  'gauge-off',
  'noise-of-place',
  'pulse-rate',
  'pulse-full-minute',
  'pulse-irregular',
  'pulse-weak',
  'pulse-strong',
  'apex-rate',
  'breaths-rate',
  'breaths-full-minute',
  'breaths-irregular',
  'breaths-depth',
  'breaths-pattern',
  'temperature',
  'act-now',
] as const;
export type ReportCode = (typeof REPORTS)[number];

/**
 * What a good observer reports of each person of the book, the most telling first.
 * Source: physiology handbook 14 (what each is there to show); bedside handbook 1.5, 1.10, 2.1, 3.4, 3.7, 3.8, 3.11.
 */
export const REPORT_OF = {
  'quiet-morning': ['both-numbers', 'second-reading', 'pulse-rate', 'breaths-rate'],
  'long-runner': ['both-numbers', 'pulse-rate', 'pulse-full-minute'],
  'stiff-pipe': ['palpated-systolic', 'gap', 'both-numbers'],
  'hidden-shelf': ['palpated-systolic', 'gap', 'both-numbers', 'second-reading', 'act-now'],
  'white-corridor': ['second-reading', 'both-numbers', 'home-readings'],
  'calm-here-not-there': ['both-numbers', 'second-reading', 'home-readings'],
  'leaves-in-wind': ['pulse-irregular', 'pulse-rate', 'pulse-full-minute', 'three-readings'],
  'storm-of-leaves': [
    'apex-rate',
    'pulse-rate',
    'pulse-full-minute',
    'pulse-irregular',
    'three-readings',
    'act-now',
  ],
  'two-by-two': ['apex-rate', 'pulse-rate', 'pulse-full-minute', 'both-numbers'],
  'missed-step': ['pulse-irregular', 'pulse-rate', 'pulse-full-minute', 'both-numbers'],
  'strong-weak': ['strong-weak-by-turns', 'both-numbers', 'pulse-rate'],
  'tight-chest': ['paradox-both-numbers', 'breaths-rate', 'pulse-rate', 'act-now'],
  'tight-sac': ['paradox-both-numbers', 'pulse-weak', 'both-numbers', 'pulse-rate', 'act-now'],
  'open-gate': ['muffled', 'sounds-to-zero', 'pulse-strong'],
  'slow-hill': ['pulse-weak', 'both-numbers', 'second-reading'],
  'second-trimester': ['both-numbers', 'second-reading'],
  'third-trimester-alarm': ['both-numbers', 'second-reading', 'act-now'],
  playground: ['cuff-by-arm', 'both-numbers', 'muffled'],
  'wide-sleeve': ['cuff-by-arm', 'both-numbers'],
  'thin-sleeve': ['cuff-by-arm', 'both-numbers'],
  'cold-hands': ['by-feel', 'pulse-weak', 'pulse-rate', 'breaths-rate', 'act-now'],
  'warm-flush': ['both-numbers', 'pulse-strong', 'pulse-rate', 'breaths-rate', 'act-now'],
  'deep-and-fast': ['breaths-depth', 'breaths-rate', 'breaths-full-minute', 'pulse-rate', 'act-now'],
  tide: ['breaths-pattern', 'breaths-irregular', 'breaths-rate', 'breaths-full-minute'],
  'broken-clock': [
    'breaths-irregular',
    'breaths-rate',
    'breaths-full-minute',
    'pulse-rate',
    'pulse-full-minute',
    'both-numbers',
    'act-now',
  ],
  'sleepy-six': ['breaths-rate', 'breaths-full-minute', 'breaths-depth', 'act-now'],
  'up-too-fast': ['both-numbers', 'standing-readings', 'pulse-rate'],
  'two-arms': ['both-numbers', 'other-arm'],
  'slow-bell': ['pulse-rate', 'pulse-full-minute', 'both-numbers', 'act-now'],
  'racing-warm': ['muffled', 'both-numbers', 'pulse-rate', 'pulse-strong'],
  'fever-ward': ['temperature', 'pulse-rate', 'breaths-rate', 'both-numbers', 'second-reading', 'act-now'],
  unheralded: ['both-numbers', 'second-reading', 'other-arm', 'act-now'],
  'noisy-bay': ['noise-of-place', 'both-numbers'],
  'bad-hose': ['gauge-off', 'both-numbers'],
  'feverish-toddler': [
    'temperature',
    'pulse-rate',
    'pulse-full-minute',
    'breaths-rate',
    'breaths-full-minute',
    'act-now',
  ],
  'calm-after-stairs': ['both-numbers', 'second-reading'],
} as const satisfies Readonly<Record<string, readonly ReportCode[]>>;

/** What a good observer reports of a person; an older copy of one of the book says what the book says. Empty: nobody said. */
export function reportOf({
  id,
  title,
  report,
}: Pick<Scenario, 'id' | 'title' | 'report'>): readonly ReportCode[] {
  if (report !== undefined) return report;
  return title === null ? ((REPORT_OF as Readonly<Record<string, readonly ReportCode[]>>)[id] ?? []) : [];
}
