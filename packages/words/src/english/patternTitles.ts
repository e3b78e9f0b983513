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
  surgeName: {
    sleepTrough: 'from the trough of the sleep',
    preWaking: 'about waking',
    rising: 'on getting up',
    movingTrough: 'from the lowest hour of the sleep',
    fourReadings: 'by four readings',
    ratePerHour: 'rate of the rise',
    eveningFall: 'fall of the evening',
  },
  surgeDefinition: {
    sleepTrough: 'two hours after waking minus the three readings about the lowest asleep',
    preWaking: 'two hours after waking minus the two hours before',
    rising: 'the first reading up minus the last one lying, each within half an hour of waking',
    movingTrough:
      'two hours after waking minus the hour asleep with the lowest mean, of two readings or more',
    fourReadings: 'the first four readings after waking minus the three lowest asleep',
    ratePerHour: 'slope from the lowest reading asleep to two hours after waking',
    eveningFall: 'two hours before bed minus the three readings about the lowest asleep',
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
