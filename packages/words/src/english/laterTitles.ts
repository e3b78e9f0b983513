/** As `titles`: what later pages and the command line alone show. A clinic’s own preset brings its own title. */
export const laterTitles = {
  accountRole: {
    owner: 'Owner',
    clinician: 'Clinician',
    supervisor: 'Supervisor',
    learner: 'Learner',
  },
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
    'acc-aha-2017': 'As ACC/AHA 2017',
    'acc-aha-2025': 'As AHA/ACC 2025',
    'esc-2024': 'As ESC 2024',
    'esc-esh-2018': 'As ESC/ESH 2018',
    'esh-2023': 'As ESH 2023',
    'nice-ng136': 'As NICE NG136',
    'jsh-2019': 'As JSH 2019',
    'ish-2020': 'As ISH 2020',
    'who-2021': 'As WHO 2021',
  },
  format: {
    csv: 'A table of every value that was ever charted (CSV)',
    text: 'The newest signed round in plain text',
    fhir: 'The whole record of a person for another system or another Evenfall (FHIR R4)',
  },
  repair: { missed: 'Missed', doubled: 'Doubled' },
} as const;
