/** What each invented person of the model book teaches, in a sentence or two; shown when the exercise is over. */
export const scenarioLessons = {
  scenarioLesson: {
    'quiet-morning':
      'A first reading is often higher than the next ones: take another before you believe it.',
    'long-runner':
      'A slow pulse that quickens with each breath in is irregular and normal. At few beats a minute let down slowly: a beat is a long step.',
    'stiff-pipe':
      'The sounds begin high, fall silent for a stretch and come back: what is felt first shows that the first sound after the silence is not the first of all.',
    'hidden-shelf':
      'Pumped up too little, the lower edge of the silent stretch looks like the systolic: wrong by fifty.',
    'white-corridor':
      'Somebody new at the bedside can raise it by a lot. Wait, repeat, and ask for readings from home.',
    'calm-here-not-there': 'Normal here and raised at home: only readings from home show it.',
    'leaves-in-wind':
      'Wholly irregular: no two beats alike. Count a full minute, take three readings, and say that it was irregular.',
    'storm-of-leaves':
      'Many beats are too weak to reach the wrist: what is counted there is less than the heart does. Listen at the apex for a full minute, and report both.',
    'two-by-two':
      'Every second beat is weak. The wrist counts half of what is heard at the apex, and lower down the sounds come twice as fast.',
    'missed-step': 'After a pause comes a strong beat. Alone it is not yet the first sound.',
    'strong-weak':
      'Evenly spaced, strong and weak by turns: as the cuff comes down the sounds double. Say so.',
    'tight-chest':
      'The first sounds come only while breathing out. Let down very slowly, and note where they come with every beat.',
    'tight-sac':
      'Faint sounds that vanish with each breath in, and a fast pulse: this cannot wait. Tell somebody now.',
    'open-gate': 'The sounds go on down to nothing. Write three numbers: first, muffled, last.',
    'slow-hill':
      'A pulse that rises slowly is weak under the fingers and makes soft sounds. Say so; a quiet place and a light hand find them.',
    'second-trimester':
      'In pregnancy the last sound counts. A muffling is often not to be heard, and sounds may go on.',
    'third-trimester-alarm':
      'So high in pregnancy cannot wait: repeat it within minutes and tell somebody now.',
    playground: 'A child needs a child’s cuff. Sounds may go far down: write where they are muffled too.',
    'wide-sleeve': 'Measure the arm. A standard cuff on an arm this wide reads almost twenty too high.',
    'thin-sleeve': 'Measure the arm. A standard cuff on an arm this thin reads too low.',
    'cold-hands':
      'So faint that the ear fails. Feel for the pulse instead, say that you did, and tell somebody now.',
    'warm-flush':
      'Warm hands, a bounding pulse and a low diastolic with fast breathing: an early warning. Tell somebody now.',
    'deep-and-fast':
      'Look at how deep the breaths are, not only how many. Deep and fast is a sign of its own.',
    tide: 'The breathing swells, fades and stops by turns. Half a minute can give four or twenty-two: count a full minute.',
    'broken-clock':
      'Irregular breathing, a slow pulse and a high pressure together: an emergency. Tell somebody now.',
    'sleepy-six': 'Six shallow breaths a minute: count a full minute, then act at once.',
    'up-too-fast': 'Lying it is well, on the feet it falls. Measure after one and three minutes of standing.',
    'two-arms': 'The arms differ. Measure both at a first visit, and go on with the higher one.',
    'slow-bell': 'Thirty-six beats a minute: let down no faster than 2 mmHg for each beat.',
    'racing-warm':
      'Fast, warm and bounding: sounds go on far below the diastolic. Write where they are muffled.',
    'fever-ward':
      'Fever makes the pulse fast. Write it down with the temperature, and come back for the trend.',
    unheralded:
      'Very high and nothing felt. Repeat it, confirm it on the other arm, and act by the rules of your place.',
    'noisy-bay':
      'In noise the first soft sounds and the last ones are lost: too low and too high. Find a quieter place, or feel.',
    'bad-hose': 'The needle does not rest at zero and the cuff leaks. Look at the instrument first.',
    'feverish-toddler': 'Settle the child first. Everything is faster in tears; count for a full minute.',
    'calm-after-stairs':
      'After stairs the first minutes read high. Five quiet minutes bring the pressure down: let them sit first.',
  },
} as const;
