/** The people of the book by what is practised on them, in the order in which one would meet them. */
export const GROUPS = {
  first: ['quiet-morning', 'long-runner', 'calm-after-stairs', 'white-corridor', 'calm-here-not-there'],
  place: ['wide-sleeve', 'thin-sleeve', 'two-arms', 'up-too-fast', 'noisy-bay', 'bad-hose'],
  sounds: ['stiff-pipe', 'hidden-shelf', 'open-gate', 'slow-hill', 'racing-warm', 'unheralded'],
  rhythm: ['leaves-in-wind', 'storm-of-leaves', 'two-by-two', 'missed-step', 'strong-weak', 'slow-bell'],
  breath: ['tight-chest', 'tight-sac', 'deep-and-fast', 'tide', 'broken-clock', 'sleepy-six'],
  ages: [
    'playground',
    'feverish-toddler',
    'second-trimester',
    'third-trimester-alarm',
    'fever-ward',
    'warm-flush',
    'cold-hands',
  ],
} as const;
export type Group = keyof typeof GROUPS;
export const GROUP_NAMES = Object.keys(GROUPS) as readonly Group[];
