import { projectChart } from '@evenfall/record';
import { loadWords, wordsFor } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import {
  amending,
  count,
  heard,
  idOf,
  inError,
  type Made,
  ORLA,
  run,
  sign,
  signing,
  UNDER_PROTOCOL,
  WREN,
} from '../../testing/charts.js';
import { broughtTemplate, roundText, TEMPLATE_IDS } from './roundText.js';

const words = wordsFor('en');

/** Before anything of these rounds is late. */
const NOW = '2026-11-25T10:00:00+01:00';

function text(
  template: string,
  all: readonly Made[],
  notices: readonly string[] = [],
  words = wordsFor('en'),
  id?: string,
): string {
  const { rounds } = projectChart(all.map(({ entry }) => entry));
  const round = id === undefined ? rounds[0] : rounds.find((one) => one.id === id);
  if (round === undefined) throw new Error('no round');
  const rulesOf = (version: string | null) => (version === null ? null : UNDER_PROTOCOL);
  const about = {
    round,
    rounds,
    identity: ORLA,
    agents: [WREN],
    rulesOf,
    words,
    dayText: (date: string) => date,
    now: NOW,
    gauges: [],
  };
  const made = roundText(template, about, notices);
  if (!made.ok) throw new Error(JSON.stringify(made.refusals));
  return made.value;
}

const pulse = count(1, { n: 19, windowSeconds: 15 });
const pressure = run(2, heard(148, 92));
const warm = sign(3, { of: 'temperature', celsius: 38.1, site: 'oral' });
const ALL = [pulse, pressure, warm, signing(9, [pulse, pressure, warm])];

describe('the templates that are brought', () => {
  test('one line', () => {
    expect(text(broughtTemplate('line', words), ALL)).toBe(
      'Orla\u00a0Wickstead (invented), born 1957-03-14, number -0001. 2026-11-25 10:09: 148/92 mmHg, right upper arm, sitting, pulse 76, 38.1 °C, in the mouth.',
    );
  });

  test('a paragraph for whoever takes over', () => {
    expect(text(broughtTemplate('handover', words), ALL).split('\n')).toEqual([
      'Orla\u00a0Wickstead (invented), born 1957-03-14, number -0001',
      '2026-11-25, 10:09, by Wren (invented) (clinician).',
      'Pressure 148/92 mmHg. At the right upper arm, sitting.',
      'Pulse per minute: 76.',
      'Temperature 38.1 °C, in the mouth.',
    ]);
  });

  test('a paragraph of a letter', () => {
    expect(text(broughtTemplate('letter', words), ALL)).toBe(
      'On 2026-11-25 at 10:09 I took the vital signs of Orla\u00a0Wickstead (invented) (born 1957-03-14). The blood pressure was 148/92 mmHg. It was taken at the right upper arm, sitting. The pulse per minute was 76.',
    );
  });

  test.each(TEMPLATE_IDS)('%s says nothing of what was not taken, and no zero for it', (id) => {
    const made = text(broughtTemplate(id, words), [pulse, signing(9, [pulse])]);
    expect(made).not.toMatch(/not known|\.\.|\b0\b|mmHg|undefined|null/);
  });
});

describe('what a reader elsewhere could not know stands before the text, whatever the template says', () => {
  test('an invented person, a round that is not signed, one of a learner', () => {
    expect(text('{pulse}', ALL, ['INVENTED'])).toBe('INVENTED: 76');
    expect(text('{pulse}', [pulse])).toBe('Not signed: 76');
    const learners = [pulse, signing(9, [pulse], { status: 'preliminary' })];
    expect(text('{pulse}', learners, ['INVENTED'])).toBe('INVENTED, Preliminary, not countersigned: 76');
  });

  test('a value that amendments dispute is said in each claim', () => {
    const claims = [
      count(11, { n: 18, windowSeconds: 15 }, amending(1)),
      count(12, { n: 20, windowSeconds: 15 }, amending(1)),
    ];
    expect(text('{pulse}', [...ALL, ...claims])).toBe('72 or 80 (two amendments disagree)');
  });

  test('a value in error is not said', () => {
    expect(text('{pulse}', [...ALL, inError(11, 1)])).toBe('not known');
  });
});

test('several readings are said as their mean, with how many it is of', () => {
  const readings = [heard(150, 92), heard(146, 90), heard(142, 88)].map((one, at) =>
    run(at + 1, one, { inForce: UNDER_PROTOCOL }),
  );
  // ESC 2024: the mean of the second and third.
  const all = [...readings, signing(9, readings, { inForce: UNDER_PROTOCOL })];
  expect(text('{pressure} mmHg[ (mean of {meanOf})]; {readings}; {category}', all)).toBe(
    '144/89 mmHg (mean of 2); 150/92, 146/90, 142/88; Hypertension range',
  );
});

// One line is short enough to be said on the telephone: what was found, and no order to whoever hears it.
describe('one line', () => {
  const under = { inForce: UNDER_PROTOCOL };
  const line = (readings: readonly Made[]) =>
    text(broughtTemplate('line', words), [pulse, ...readings, signing(9, [pulse, ...readings], under)]);

  test('says of which arm the mean is, that the arms differ and by how much, and when it is due again', () => {
    const readings = [
      run(2, heard(158, 94), under),
      run(3, heard(154, 92), under),
      run(4, heard(152, 90), under),
      run(5, heard(138, 86), { ...under, place: { side: 'left' } }),
    ];
    expect(line(readings)).toBe(
      'Orla\u00a0Wickstead (invented), born 1957-03-14, number -0001. Pressure due again from 10:15, by 10:20 (high by its category, second repeat). 2026-11-25 10:09: 153/91 mmHg (mean of 2), right upper arm, sitting, pulse 76. Also 138/86 (left upper arm, sitting). The right arm read 14 mmHg higher, not yet confirmed by a second pair.',
    );
  });

  // Bedside handbook 3.14: a fall of 20/10 within 3 minutes, later a delayed one; the pulse from 30 a minute on without a fall; symptoms.
  describe('of a test of lying and standing', () => {
    const lying = (systolic: number, diastolic: number, pulsePerMinute: number | null = null) =>
      run(2, { ...heard(systolic, diastolic), pulsePerMinute }, { ...under, place: { posture: 'lie' }, posture: { lyingMinutes: 5 } }); // biome-ignore format: a reading a line
    const up = (minutes: number, numbers: readonly [number, number], pulsePerMinute: number | null = null, unwellUpright = false) =>
      run(2 + minutes, { ...heard(...numbers), pulsePerMinute }, { ...under, place: { posture: 'stand' }, posture: { uprightMinutes: minutes, unwellUpright } }); // biome-ignore format: a reading a line

    test('a fall under the limits is no fall, and is said by how much it is none', () => {
      const said = line([lying(136, 84), up(1, [118, 76]), up(3, [122, 78])]);
      expect(said).toContain('On standing the pressure did not fall by 20/10 mmHg.');
    });

    test('says what was low on the feet, however little it fell', () => {
      const said = line([lying(102, 60), up(1, [86, 56]), up(3, [94, 58])]);
      expect(said).toContain('On standing the pressure did not fall by 20/10 mmHg. The systolic was low, 86 at 1 min on the feet.'); // biome-ignore format: a sentence
    });

    test('says who felt unwell on the feet, and the rise of the pulse that is to be reported', () => {
      const said = line([lying(124, 76, 70), up(1, [122, 78], 96, true), up(3, [120, 78], 104)]);
      expect(said).toContain('The person felt unwell at 1 min on the feet. The pulse rose by 34 a minute on the feet, without a fall in the readings taken.'); // biome-ignore format: two sentences
    });

    test('a rise of the pulse under the limit is none to report', () => {
      const said = line([lying(124, 76, 70), up(1, [122, 78], 96), up(3, [120, 78], 99)]);
      expect(said).not.toContain('pulse rose');
    });
    test('a fall after the third minute is said to be a late one; one that was over, to be over', () => {
      const late = line([lying(140, 84), up(1, [138, 84]), up(3, [136, 82]), up(5, [112, 70])]);
      expect(late).toContain('by 28 systolic and 14 diastolic at 5 min. It is a delayed fall, later than three minutes.'); // biome-ignore format: two sentences
      const over = line([lying(140, 84), up(1, [112, 70]), up(3, [136, 82])]);
      expect(over).toContain('by 28 systolic and 14 diastolic at 1 min. It was over at 3 min on the feet.');
    });
  });

  test('says how far the pressure fell on standing, and orders nobody about', () => {
    const place = (posture: 'lie' | 'stand') => ({ place: { posture } });
    const said = line([
      run(2, heard(140, 80), { ...under, ...place('lie'), posture: { lyingMinutes: 5 } }),
      run(3, heard(112, 70), { ...under, ...place('stand'), posture: { uprightMinutes: 1 } }),
      run(4, heard(118, 72), { ...under, ...place('stand'), posture: { uprightMinutes: 3 } }),
    ]);
    expect(said).toContain(
      'The pressure fell on standing by 28 systolic and 10 diastolic at 1 min and by 22 systolic and 8 diastolic at 3 min.',
    );
    expect(said).not.toMatch(/let the|lay the|chart it|report it|look at|repeat both/i);
    expect(said.split(/\s/).length).toBeLessThan(100);
  });
});

// A reading on the feet or on the other arm after them is no part of the mean, and never says where that was taken.
test('a mean is said where its own readings were taken; another arm or posture stands beside it with its own', () => {
  const readings = [
    run(1, heard(150, 92), { inForce: UNDER_PROTOCOL }),
    run(2, heard(146, 90), { inForce: UNDER_PROTOCOL }),
    run(3, heard(142, 88), { inForce: UNDER_PROTOCOL }),
    run(4, heard(118, 76), {
      inForce: UNDER_PROTOCOL,
      place: { side: 'left', posture: 'stand' },
      posture: { uprightMinutes: 1, unwellUpright: false },
    }),
  ];
  const all = [...readings, signing(9, readings, { inForce: UNDER_PROTOCOL })];
  expect(text('{pressure} ({place}); {others}', all)).toBe(
    '144/89 (right upper arm, sitting); 118/76 (left upper arm, standing, 1 min on the feet, well on their feet)',
  );
  const handover = text(broughtTemplate('handover', words), all);
  expect(handover).toContain('Pressure 144/89 mmHg. At the right upper arm, sitting. Mean of 2.');
  expect(handover).toContain('Also 118/76 (left upper arm, standing');
});

test('readings of two places without a mean each say their own', () => {
  const readings = [run(1, heard(150, 92)), run(2, heard(132, 80), { place: { side: 'left' } })];
  expect(text('{pressure}[ at the {place}]', [...readings, signing(9, readings)])).toBe(
    '150/92 (right upper arm, sitting), 132/80 (left upper arm, sitting)',
  );
});

// docs/conventions.md section 4: where the whole number would fall on the other side of a limit, one decimal.
test('a mean just under a limit is not written as the limit', () => {
  const readings = [heard(140, 88), heard(140, 88), heard(139.2, 88)].map((one, at) =>
    run(at + 1, { ...one, gaugeStepMmHg: 0.1 }, { inForce: UNDER_PROTOCOL }),
  );
  const all = [...readings, signing(9, readings, { inForce: UNDER_PROTOCOL })];
  expect(text('{pressure}; {category}', all)).toBe('139.6/88; Elevated');
});

describe('where two amendments disagree about a reading', () => {
  const readings = [heard(150, 92), heard(146, 90), heard(142, 88)].map((one, at) =>
    run(at + 1, one, { inForce: UNDER_PROTOCOL }),
  );
  const signed = [...readings, signing(9, readings, { inForce: UNDER_PROTOCOL })];
  const claim = (id: number, systolic: number, diastolic: number) =>
    run(id, heard(systolic, diastolic), { ...amending(3), inForce: UNDER_PROTOCOL });

  test('no mean of one of them stands for the round: every reading is said, and the dispute', () => {
    const said = text('{pressure}[ (mean of {meanOf})]', [...signed, claim(11, 144, 86), claim(12, 112, 70)]);
    expect(said).toBe('150/92, 146/90, 144/86 or 112/70 (two amendments disagree)');
  });

  test('an alert of either is said, whichever came last', () => {
    const low = /\bA systolic of 84 is very low/;
    expect(text('{actNow}', [...signed, claim(11, 84, 50), claim(12, 142, 86)])).toMatch(low);
    expect(text('{actNow}', [...signed, claim(11, 142, 86), claim(12, 84, 50)])).toMatch(low);
  });

  test('a category that they do not agree on is said as disputed', () => {
    const said = text('{category}', [...signed, claim(11, 146, 90), claim(12, 112, 70)]);
    expect(said).toBe('Elevated or Hypertension range (two amendments disagree)');
  });
});

describe('how a round began and the rest before the pressure', () => {
  const begun = {
    identifiers: ['name', 'birth-date'],
    consent: 'agreed',
    chaperone: 'present',
    interpreter: 'not-needed',
    who: 'Tove (invented)',
  } as const;
  const rest = { seconds: 300, neededSeconds: 300, skipped: null };
  const began = [
    pulse,
    signing(9, [pulse], { begun: { ...begun, identifiers: ['name', 'birth-date'] }, rest }),
  ];

  test('are fields of a template, and stand in the paragraph for whoever takes over', () => {
    expect(text('{begun}; {rest}', began)).toBe(
      'Identified by name, birth date · agreed · chaperone present · Tove (invented); Rested for 5 minutes, by the clock.',
    );
    const lines = text(broughtTemplate('handover', words), began).split('\n');
    expect(lines.slice(2, 4)).toEqual([
      'Identified by name, birth date · agreed · chaperone present · Tove (invented).',
      'Rested for 5 minutes, by the clock.',
    ]);
    expect(text(broughtTemplate('letter', words), began)).toContain(' Rested for 5 minutes, by the clock. ');
  });

  test('a rest that was not waited for says why; where nobody said, nothing is said', () => {
    const skipped = { seconds: 61, neededSeconds: 300, skipped: { reason: 'urgent', text: null } } as const;
    expect(text('{rest}', [pulse, signing(9, [pulse], { rest: skipped })])).toBe(
      'Rest not waited for after 1 minute and 1 second of 5 minutes: it is urgent.',
    );
    expect(text('{pulse}[; {begun}][; {rest}]', [pulse, signing(9, [pulse])])).toBe('76');
  });
});

// Bedside handbook 3.14 (symptoms at each step are part of the record) and 1.5 (felt irregular: a full minute).
describe('what is to be known of a number stands beside it', () => {
  test('how long somebody had stood or lain at a reading, and how they felt', () => {
    const lying = run(2, heard(148, 84), { place: { posture: 'lie' }, posture: { lyingMinutes: 5 } });
    const standing = {
      place: { posture: 'stand' },
      posture: { uprightMinutes: 1.1, unwellUpright: true },
    } as const;
    const stood = run(3, heard(120, 70), standing);
    const [said] = text('{readings}', [lying, stood, signing(9, [lying, stood])]).split('\n');
    expect(said).toBe(
      '148/84 (right upper arm, lying on the back, 5 min lying before), 120/70 (right upper arm, standing, 1.1 min on the feet, dizzy, faint or unwell on their feet)',
    );
  });

  test('the pulse of a reading of its own, and not the count of the round a second time', () => {
    const own = (perMinute: number) => ({ ...heard(112, 70), pulsePerMinute: perMinute });
    const stood = run(3, own(96), { place: { posture: 'stand' }, posture: { uprightMinutes: 1 } });
    const counted = run(4, own(76));
    const all = [pulse, stood, counted, signing(9, [pulse, stood, counted])];
    expect(text('{readings}', all)).toBe(
      '112/70 (right upper arm, standing, pulse 96, 1 min on the feet), 112/70 (right upper arm, sitting)',
    );
  });

  // Bedside handbook 3.15: unwell is repeated at once; 7.1: recheck due.
  test('when the pressure is to be looked at again, and why', () => {
    const low = run(2, heard(84, 50));
    expect(text('{again}[{actNow}{told}]', [low, signing(9, [low])])).toMatch(
      /^Pressure due again from 10:02, by 10:03 \(unwell, or very low\)\./,
    );
    expect(text('{pressure}[ {again}]', [pressure, signing(9, [pressure])])).toBe('148/92');
  });

  test('a repeat that was taken since is asked for no more; what another round asks for says of which', () => {
    const low = run(2, heard(84, 50), { inForce: UNDER_PROTOCOL });
    const first = [low, signing(9, [low], { inForce: UNDER_PROTOCOL })];
    const other = { round: idOf(77) };
    const later = (systolic: number, diastolic: number) => {
      const reading = run(20, heard(systolic, diastolic), { ...other, inForce: UNDER_PROTOCOL });
      return [reading, signing(29, [reading], { ...other, inForce: UNDER_PROTOCOL })];
    };
    const again = (all: readonly Made[]) =>
      text('{again}', all, [], words, low.entry.round ?? '').split('\n')[0];
    expect(again(first)).toBe('Pressure due again from 10:02, by 10:03 (unwell, or very low).');
    expect(again([...first, ...later(118, 76)])).toBe('not known');
    expect(again([...first, ...later(86, 52)])).toBe(
      'Pressure due again from 10:20, by 10:21 (unwell, or very low, by the round of 10:29).',
    );
  });

  test('that a pulse felt irregular, and that a longer count was asked for, until it was made', () => {
    const short = count(1, { n: 40, windowSeconds: 30 }, { noticed: { rhythmFelt: 'irregular' } });
    expect(text('{pulse}', [short, signing(9, [short])])).toBe(
      '80 (felt irregular, a short count; a longer one was asked for)',
    );
    const whole = count(4, { n: 78, windowSeconds: 60 }, { noticed: { rhythmFelt: 'irregular' } });
    expect(text('{pulse}', [short, whole, signing(9, [short, whole])])).toBe(
      '80 (felt irregular), 78 (felt irregular)',
    );
  });

  // Bedside handbook 3.14: 5 minutes lying before, at 1 and 3 minutes on the feet; a fall of 20/10.
  const posed = (posture: 'lie' | 'stand', minutes: object) => ({ place: { posture }, posture: minutes });

  test('what a chart says beside a reading, of each that the text names; of which where not of all', () => {
    const soon = 'Taken after 1 min lying';
    const lying = run(2, heard(144, 90), posed('lie', { lyingMinutes: 1 }));
    expect(text('{doubts}', [lying, signing(9, [lying])])).toMatch(new RegExp(`^${soon}`));
    const again = run(3, heard(142, 88), posed('lie', { lyingMinutes: 5 }));
    expect(text('{doubts}', [lying, again, signing(9, [lying, again])])).toMatch(
      new RegExp(`^144/90: ${soon}`),
    );
  });

  test('also of a reading that stands beside the mean', () => {
    const readings = [heard(150, 92), heard(146, 90), heard(142, 88)].map((one, at) =>
      run(at + 1, one, { inForce: UNDER_PROTOCOL }),
    );
    const lying = run(4, heard(128, 80), {
      inForce: UNDER_PROTOCOL,
      ...posed('lie', { lyingMinutes: 1 }),
    });
    const all = [...readings, lying, signing(9, [...readings, lying], { inForce: UNDER_PROTOCOL })];
    expect(text('{others}', all)).toContain('128/80');
    expect(text('{doubts}', all)).toContain('128/80: Taken after 1 min lying');
  });

  test('that nothing was measured at the third minute is said once', () => {
    const lying = run(2, heard(148, 84), posed('lie', { lyingMinutes: 5 }));
    const upAt = (systolic: number, diastolic: number) =>
      run(3, heard(systolic, diastolic), posed('stand', { uprightMinutes: 1, unwellUpright: false }));
    const said = (stood: Made) => text('{standing}', [lying, stood, signing(9, [lying, stood])]);
    expect(said(upAt(140, 82)).match(/There is no reading at 3 minutes/g)).toHaveLength(1);
    const fell = said(upAt(120, 70));
    expect(fell).toContain('meets the limits of a fall');
    expect(fell.match(/Nothing was measured at 3 minutes/g)).toHaveLength(1);
  });
});

test('a field of an own template is not said to be unknown where readings differ in it', () => {
  const readings = [run(1, heard(150, 92)), run(2, heard(132, 80), { place: { side: 'left' } })];
  const all = [...readings, signing(9, readings)];
  expect(text('[Pressure {pressure} mmHg, {arm}, {posture}.]', all)).toBe(
    'Pressure 150/92 (right upper arm, sitting), 132/80 (left upper arm, sitting) mmHg, right upper arm and left upper arm, sitting.',
  );
  expect(text('{arm}; {place}', all)).toBe(
    'right upper arm and left upper arm; right upper arm, sitting; left upper arm, sitting',
  );
  // Where each reading says its own, a part that is of the place alone is left out.
  expect(text('{pulse}[ at the {place}][ on the {arm}]', [pulse, ...all])).toBe('76');
  expect(text('{arm}', [pulse, signing(9, [pulse])])).toBe('not known');
});

test('in Spanish the limb stands before its side, and agrees with it', async () => {
  const spanish = await loadWords('es');
  const at = (side: 'left' | 'right', site: 'upper-arm' | 'wrist') => {
    const reading = run(2, heard(148, 92), { place: { side, site } });
    return text('{place}', [reading, signing(9, [reading])], [], spanish);
  };
  expect(at('right', 'upper-arm')).toBe('brazo derecho, en posición sentada');
  expect(at('left', 'wrist')).toBe('muñeca izquierda, en posición sentada');
});

// Bedside handbook 5.2 (90 or under), 3.14 (symptoms on the feet are part of the record) and 7.1 (whom was told, what was said back).
describe.each(TEMPLATE_IDS)('%s says the worst of a low round', (id) => {
  const lying = run(2, heard(88, 52), { place: { posture: 'lie' }, inForce: UNDER_PROTOCOL });
  const again = run(3, heard(86, 50), { place: { posture: 'lie' }, inForce: UNDER_PROTOCOL });
  const stood = run(4, heard(70, 40), {
    place: { posture: 'stand' },
    posture: { uprightMinutes: 1, unwellUpright: true },
    inForce: UNDER_PROTOCOL,
  });
  const readings = [lying, again, stood];
  const all = [...readings, signing(9, readings, { inForce: UNDER_PROTOCOL })];
  const said = text(broughtTemplate(id, words), all);

  test('posture, the reading on the feet, the lowest number and who felt unwell', () => {
    expect(said).toContain('lying on the back');
    expect(said).toMatch(/70\/40 \(right upper arm, standing, 1 min on the feet, dizzy, faint or unwell/);
    expect(said).toContain('The pressure fell on standing by 16 systolic and 10 diastolic at 1 min.');
  });

  test('what nobody is noted as told of', () => {
    expect(said).toMatch(/nobody is noted as told .*very low/i);
  });

  test('when it is due again', () => {
    expect(said).toMatch(/Pressure due again from 10:04, by 10:05 \(unwell, or very low\)\./);
  });

  test('no category of high pressures beside it', () => {
    expect(said).not.toContain('Category:');
    expect(text('{category}; {caution}', all)).toMatch(/^not known; No category of high pressure/);
  });
});
