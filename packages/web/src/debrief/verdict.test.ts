import { bladderFor, PROPER, type Scenario, SOUND_INSTRUMENT, scenarioOf } from '@evenfall/physiology';
import { type Debrief, debrief, demonstrate, GOOD_OBSERVER, resultRows } from '@evenfall/practice';
import { loadWords, wordsFor } from '@evenfall/words';
import { describe, expect, test } from 'vitest';
import { chanceTexts, flagText, limitText, partsTexts, verdictText } from './verdict.js';

const words = wordsFor('en');
const of = (id: string, seed: number): Debrief => {
  const scenario = scenarioOf(id) as Scenario;
  const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) };
  return debrief(demonstrate(GOOD_OBSERVER, scenario, seed, PROPER, instrument));
};

test('numbers that nothing was heard of are not accepted, however near they lie, and nothing more is said of them', () => {
  const found: Debrief = { ...of('quiet-morning', 2), fromNothing: 'unheard' };
  expect(verdictText(found, words)).toMatch(
    /^Not accepted, whatever the numbers are: nothing was to be heard/,
  );
  expect([...partsTexts(found, words), ...chanceTexts(found, words)]).toEqual([]);
});

test('of a number that was written by feel and not felt the same is said, by what was to be felt', () => {
  const found: Debrief = {
    ...of('quiet-morning', 2),
    fromNothing: 'unfelt',
    accepted: { withinMmHg: 5, systolic: false, diastolic: null },
  };
  expect(verdictText(found, words)).toMatch(
    /^Not accepted, whatever the number is: no pulse came back under/,
  );
});

test('a beat that stood higher than the usual is said to be nobody’s hand, and the reading is accepted', () => {
  const found = of('missed-step', 12);
  expect(verdictText(found, words)).toMatch(/^Accepted: both numbers/);
  expect(chanceTexts(found, words).join(' ')).toMatch(/diastolic .* lay 7 mmHg above .* not your hand/);
});

describe('of one reading the number alone changes', () => {
  const found = of('quiet-morning', 2);
  const written = (systolic: number): Debrief => ({
    ...found,
    entered: { ...found.entered, systolic },
    accepted: { ...found.accepted, systolic: Math.abs(systolic - had) <= 5 },
  });
  const had = found.had.systolic?.mmHg ?? 0;

  test('the row holds what was written against what was to be had', () => {
    expect(resultRows(written(had + 6))[0]).toMatchObject({ error: 6, isAccepted: false, isMuffled: false });
    expect(verdictText(written(had + 6), words)).toMatch(/^Half accepted: the diastolic/);
  });

  test('near what is true on average, but not by what was heard: that is luck', () => {
    const lucky = { ...written(had + 6), reference: { ...found.reference, systolic: had + 6 } };
    expect(chanceTexts(lucky, words)[0]).toContain('by luck');
    const not = { ...written(had + 6), reference: { ...found.reference, systolic: had } };
    expect(chanceTexts(not, words)).toEqual([]);
  });
});

// Physiology handbook 2.5: a fall with each breath in cannot be measured at ordinary speed.
test('a systolic missed by the fall with each breath in is no ordinary chance: far slower is advised, and not only another reading', () => {
  const scenario = scenarioOf('tight-chest') as Scenario;
  const hand = { ...GOOD_OBSERVER.hand, rateMmHgPerSecond: 4, mostPerBeatMmHg: null };
  const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) };
  const found = debrief(demonstrate({ ...GOOD_OBSERVER, hand }, scenario, 29, PROPER, instrument));
  const said = chanceTexts(found, words).join(' ');
  expect(said).toMatch(/with each breath in .* far more slowly/);
  expect(said).not.toContain('A second reading shows it');
});

// Assessment handbook 1: the observer is scored apart from the technique.
test('who read right what was to be heard is told so, and what was not prepared made the difference', () => {
  const scenario = scenarioOf('quiet-morning') as Scenario;
  const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) };
  const smoked = { ...PROPER, hadNicotine: true, hasLegsCrossed: true };
  const found = debrief(demonstrate(GOOD_OBSERVER, scenario, 1, smoked, instrument));
  const [systolic] = resultRows(found);
  expect(found.accepted.systolic).toBe(false);
  expect(partsTexts(found, words)[0]).toMatch(
    new RegExp(
      `^The systolic you read right: ${systolic?.asTheyWere} .* too high: prepared by the book, ${systolic?.had}`,
    ),
  );
  const lucky = { ...found, entered: { ...found.entered, systolic: systolic?.had ?? 0 } };
  const accepted = { ...lucky, accepted: { ...found.accepted, systolic: true } };
  expect(partsTexts(accepted, words)[0]).toContain('near by luck');
  expect(partsTexts(of('quiet-morning', 1), words)).toEqual([]);
});

// The larger part of an error of 5 with no more than 4 of it allowed.
describe('what was not read right, or not by the person alone', () => {
  const scenario = scenarioOf('quiet-morning') as Scenario;
  const instrument = { ...SOUND_INSTRUMENT, zeroOffsetMmHg: 12, bladder: bladderFor(scenario.armCm) };
  const found = debrief(demonstrate(GOOD_OBSERVER, scenario, 1, PROPER, instrument));
  const parted = (ofReading: number, ofPreparing: number, withinMmHg: number): Debrief => {
    const had = found.had.systolic?.mmHg ?? 0;
    const asTheyWere = had + ofPreparing;
    return {
      ...found,
      asTheyWere: { systolic: asTheyWere, muffled: null, diastolic: null },
      entered: { ...found.entered, systolic: asTheyWere + ofReading },
      accepted: { ...found.accepted, systolic: false, withinMmHg },
    };
  };

  test.each([
    [4, 1],
    [-4, -1],
    [3, 3],
  ])('%i of hand and ear beside %i of preparing is told as both', (ofReading, ofPreparing) => {
    const [text] = partsTexts(parted(ofReading, ofPreparing, 4), words);
    expect(text).toMatch(/^Of the systolic, .* of hand, ear and eye, and .* of what was not prepared/);
    expect(partsTexts(parted(ofPreparing - Math.sign(ofPreparing), 9, 4), words)[0]).toContain('read right');
  });

  test('a gauge off its zero is no person that was not prepared, in either language', async () => {
    expect(found.costs.costs.map(({ code }) => code)).toContain('gauge-off');
    expect(partsTexts(found, words)[0]).toMatch(/^The systolic you read right: .* What was not prepared/);
    const [spanish] = partsTexts(found, await loadWords('es'));
    expect(spanish).toMatch(/^La sistólica la leyó bien: .* Lo que no se preparó/);
    expect(spanish).not.toMatch(/persona|preparada /);
  });

  test('a muffling stands in the middle of its sentence', async () => {
    const { systolic, diastolic } = parted(1, 9, 4).accepted;
    const one: Debrief = {
      ...found,
      isByMuffled: true,
      had: { ...found.had, muffled: { mmHg: 70, lowMmHg: 68, highMmHg: 72 } },
      asTheyWere: { systolic: null, muffled: 82, diastolic: null },
      entered: { ...found.entered, muffled: 82 },
      accepted: { systolic, diastolic: diastolic === null ? null : false, withinMmHg: 4 },
    };
    expect(partsTexts(one, words)[0]).toMatch(
      /^The diastolic where the sounds became muffled you read right:/,
    );
    expect(partsTexts(one, await loadWords('es'))[0]).toMatch(
      /^La diastólica en la que se apagaron los ruidos la leyó bien:/,
    );
  });
});

// docs/conventions.md section 6: where sounds go on to nothing, the muffling stands for the diastolic.
test('where the sounds went on the muffling is the number that is judged, and its truth stands beside it', () => {
  const found = of('open-gate', 4);
  const [, diastolic] = resultRows(found);
  expect(diastolic).toMatchObject({ isMuffled: true, written: found.entered.muffled, isAccepted: true });
  expect(Math.abs((diastolic?.written ?? 0) - (diastolic?.truth ?? 99))).toBeLessThan(10);
});

test('every answer to whether something has to be told at once is answered', () => {
  const flag = { redFlag: { code: 'shock', isSeen: false, isKnowable: true } } as const;
  expect(flagText({ redFlag: null }, false, words)?.text).toContain('So it is');
  expect(flagText({ redFlag: null }, true, words)).toMatchObject({ isMissed: false });
  expect(flagText(flag, false, words)).toMatchObject({ isMissed: true });
  expect(flagText(flag, null, words)).toMatchObject({ isMissed: false });
  expect(flagText({ redFlag: null }, null, words)).toBeNull();
});

test('with no pressure but a rate that is all that is said of the pressure; with nothing at all, that', () => {
  const found = of('quiet-morning', 2);
  const nothing: Debrief = {
    ...found,
    entered: { systolic: null, muffled: null, diastolic: null, pulsePerMinute: null, breathsPerMinute: null },
    accepted: { ...found.accepted, systolic: null, diastolic: null },
  };
  expect(verdictText(nothing, words)).toBe('Nothing was written, so there is nothing to judge.');
  const breaths = { ...nothing, entered: { ...nothing.entered, breathsPerMinute: 16 } };
  expect(verdictText(breaths, words)).toBe('No pressure was written.');
});

// Physiology handbook 14: within 10 mmHg where no two beats are alike. A number may be read right and still say nothing of the person.
test('a diastolic read as it was to be heard, far from what is true on average, is not called accepted', () => {
  const scenario = scenarioOf('leaves-in-wind') as Scenario;
  const shown = of('leaves-in-wind', 3);
  const had = shown.had.diastolic?.mmHg ?? 0;
  const far: Debrief = {
    ...shown,
    fromNothing: null,
    isByMuffled: false,
    entered: { ...shown.entered, systolic: shown.had.systolic?.mmHg ?? 0, diastolic: had },
    reference: { ...shown.reference, systolic: shown.had.systolic?.mmHg ?? 0, diastolic: had + 17 },
    accepted: { withinMmHg: 10, systolic: true, diastolic: true },
  };
  expect(verdictText(far, words)).toBe(
    'Accepted: the systolic lies within 10 mmHg of what was to be had at that moment. Read as it was to be heard, and still not right for this person: the diastolic lies 17 mmHg below what is true on average.',
  );
  expect(resultRows(far).map(({ isFar }) => isFar)).toEqual([false, true]);
  expect(limitText(far, scenario, words)).toMatch(
    /^The limit is 10 mmHg for this person, and not the usual 5/,
  );
  const near = { ...far, reference: { ...far.reference, diastolic: had + 9 } };
  expect(verdictText(near, words)).toMatch(/^Accepted: both numbers/);
  expect(limitText(near, scenarioOf('quiet-morning') as Scenario, words)).toBeNull();
});

test('what could not be known from the number that was written was not missed', () => {
  const flag = { redFlag: { code: 'severe-pressure', isSeen: false, isKnowable: false } } as const;
  expect(flagText(flag, false, words)).toMatchObject({ isMissed: false });
  expect(flagText(flag, false, words)?.text).toContain('nobody could know of it');
});
