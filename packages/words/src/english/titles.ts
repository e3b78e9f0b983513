/** What each choice is called on a screen or in a list. A clinic's own preset brings its own title. */
export const titles = {
  of: { pulse: 'Pulse', breaths: 'Breaths' },
  clock: { beat: 'The clock starts on a beat', any: 'The clock starts at any moment' },
  first: { 0: 'The first beat is called zero', 1: 'The first beat is called one' },
  start: {
    'beat-0':
      'Clock starts on a beat, that beat is called zero: on average half a beat too few (30 / window a minute)',
    'beat-1':
      'Clock starts on a beat, that beat is called one: on average half a beat too many (30 / window a minute)',
    'any-1':
      'Clock starts at any moment, the first beat is called one: on average neither too few nor too many',
    'any-0':
      'Clock starts at any moment, the first beat is called zero: on average one beat too few (60 / window a minute)',
  },
  preset: {
    'thirty-seconds': 'Half a minute, a full one when in doubt',
    'fifteen-seconds-at-rest': 'Fifteen seconds at rest, a full minute when in doubt',
    'full-minute': 'Always a full minute',
    'pulse-breaths-pressure': 'Pulse, breaths and pressure',
    'scored-set': 'All that an early-warning score needs',
    'pressure-alone': 'The pressure alone',
    'margin-thirty': 'Pump up 30 mmHg above the loss of the pulse',
    'margin-twenty': 'Pump up 20 mmHg above the loss of the pulse',
    'margin-ten': 'Pump up 10 mmHg above the loss of the pulse',
    'two-to-three-a-second': 'Let down 2 to 3 mmHg a second, by the beat if slow or irregular',
    'two-a-beat': 'Let down 2 mmHg a beat, whatever the pulse',
    'mark-above': 'Read the mark above where the needle stands between two',
    'aha-2005': 'American cuffs, four for adults',
    'uk-arm-bands': 'British and European cuffs, three for adults',
    'fourth-report-2004': 'Cuffs from newborn to thigh',
    'no-scores': 'No scores: the numbers alone',
    'adult-early-warning': 'The early-warning score for adults',
    'no-categories': 'No categories: the numbers alone',
  },
  rhythmFelt: { regular: 'Felt regular', irregular: 'Felt irregular' },
  strength: { weak: 'Weak', normal: 'Normal', strong: 'Strong' },
  site: {
    radial: 'Wrist, thumb side',
    brachial: 'Inner elbow',
    carotid: 'Neck',
    apical: 'Apex, by stethoscope',
    temporal: 'In front of the ear',
    femoral: 'Groin',
    popliteal: 'Behind the knee',
    'posterior-tibial': 'Behind the inner ankle',
    'dorsalis-pedis': 'Top of the foot',
    ulnar: 'Wrist, little-finger side',
  },
  format: {
    csv: 'A table of every value that was ever charted (CSV)',
  },
  rhythm: {
    regular: 'Regular',
    'regular-with-breathing': 'Regular, quickening with breathing',
    'occasionally-irregular': 'Occasionally irregular',
    'regularly-irregular': 'Irregular in a repeating pattern',
    'irregularly-irregular': 'Irregular without a pattern',
    undecided: 'Undecided',
  },
  repair: { missed: 'Missed', doubled: 'Doubled' },
} as const;
