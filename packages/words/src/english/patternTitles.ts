/** Patterns of pressures away from the clinic, each said after "consistent with". */
export const patternTitles = {
  ambulatoryPattern: {
    'none-high': 'no period high',
    'day-and-night-high': 'high by day and by night',
    'day-alone-high': 'high by day alone',
    'night-alone-high': 'high by night alone',
    'whole-alone-high': 'high over 24 hours, by neither day nor night alone',
  },
  dipClass: {
    reverse: 'higher by night than by day',
    'non-dipper': 'a small fall by night',
    dipper: 'the usual fall by night',
    extreme: 'a large fall by night',
  },
  phenotype: {
    'sustained-normotension': 'pressures not high in the office or outside it',
    'white-coat-hypertension': 'white-coat hypertension',
    'masked-hypertension': 'masked hypertension',
    'sustained-hypertension': 'sustained hypertension',
    controlled: 'pressures under treatment not high in the office or outside it',
    'white-coat-effect': 'a white-coat effect under treatment',
    'masked-uncontrolled': 'masked uncontrolled pressure under treatment',
    uncontrolled: 'uncontrolled pressure under treatment',
  },
} as const;
