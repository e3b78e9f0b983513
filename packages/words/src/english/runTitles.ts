/** What methods of a run and cuffs of every scheme are called. */
export const runTitles = {
  method: { auscultation: 'Heard', palpation: 'Felt', device: 'Read off a display' },
  moment: {
    peak: 'Pumped up to',
    'first sound': 'First sound',
    muffled: 'Muffled',
    'last sound': 'Last sound',
    'pulse back': 'Pulse back',
  },
  mark: {
    peak: 'Valve opened',
    'pulse lost': 'Pulse lost',
    'pulse back': 'Pulse back',
    'first sound': 'First sound',
    muffled: 'Muffled',
    'last sound': 'Last sound',
    slip: 'A slip: no moment',
  },
  cuff: {
    newborn: 'Newborn',
    infant: 'Infant',
    child: 'Child',
    'small-adult': 'Small adult',
    adult: 'Adult',
    'large-adult': 'Large adult',
    thigh: 'Thigh',
    small: 'Small',
    medium: 'Medium',
    large: 'Large',
  },
} as const;
