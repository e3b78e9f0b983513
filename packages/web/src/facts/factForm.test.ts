import { AMENDMENT_REASONS, FACT_NAMES, KINDS } from '@evenfall/record';
import { describe, expect, test } from 'vitest';
import {
  CUFF_CHOICES,
  FACT_FIELDS,
  type FactFields,
  fieldsOf,
  isDay,
  readEnd,
  readError,
  readFact,
} from './factForm.js';

const TODAY = '2026-03-05';
const BLANK = Object.fromEntries(FACT_FIELDS.map((field) => [field, ''])) as FactFields;
const read = (typed: Partial<FactFields>) => readFact({ ...BLANK, from: '2026-03-01', ...typed }, TODAY);
const wrong = (typed: Partial<FactFields>) => read(typed).wrong;
const isTaken = (content: unknown) =>
  KINDS.fact.schemas[KINDS.fact.newest]?.safeParse(content).success === true;

/** What is typed into each field that some kind of fact needs. */
const TYPED = {
  side: 'left',
  weeks: '24',
  fromMmHg: '186',
  toMmHg: '152',
  cuff: 'aha-2005/large-adult',
  prescriber: ' Dr Example, invented ',
  sex: 'f',
};

describe('a fact as typed', () => {
  test.each(FACT_NAMES)('%s is read as the record takes it, and with a field missing is refused there', (fact) => {
    const { content, wrong: none } = read({ ...TYPED, fact, until: '2026-05-31', text: ' as told ' });
    expect(none).toEqual({});
    expect(content).toMatchObject({ about: { fact }, from: '2026-03-01', until: '2026-05-31', text: 'as told' });
    expect(isTaken(content)).toBe(true);
    for (const field of fieldsOf(fact).filter((one) => one !== 'weeks')) {
      expect(Object.keys(wrong({ ...TYPED, fact, [field]: '' }))).toEqual([field]);
    }
  }); // biome-ignore format: one thought

  test('blanks are null, never an empty text or a zero', () => {
    expect(read({ fact: 'pregnancy' }).content).toEqual({
      about: { fact: 'pregnancy', weeks: null },
      from: '2026-03-01',
      until: null,
      text: null,
    });
    expect(read({ fact: 'pregnancy', weeks: '0' }).content?.about).toEqual({ fact: 'pregnancy', weeks: 0 });
  });

  // The limits are the record's own: each is tried there too.
  test.each([
    ['weeks', { fact: 'pregnancy' }, ['0', '45'], ['46', '-1', '24.5', 'many']],
    ['fromMmHg', { fact: 'gap', toMmHg: '1' }, ['2', '300'], ['301', 'high', '']],
    ['toMmHg', { fact: 'gap', fromMmHg: '186' }, ['0', '185'], ['186', '187', '']],
  ] as const)('%s at its limits', (field, typed, taken, refused) => {
    for (const text of taken) {
      const { content } = read({ ...typed, [field]: text });
      expect([text, content !== null && isTaken(content)]).toEqual([text, true]);
    }
    for (const text of refused) expect(Object.keys(wrong({ ...typed, [field]: text }))).toEqual([field]);
  });

  test('a day that is none, or ahead, is refused: a slip in the year must not hide a fact', () => {
    const days = { from: (from: string) => wrong({ fact: 'tremor', from }).from };
    expect(days.from(TODAY)).toBeUndefined();
    expect(days.from('2026-03-06')).toBe('dayAhead');
    expect(days.from('2062-03-01')).toBe('dayAhead');
    expect([days.from(''), days.from('2026-02-30')]).toEqual(['dayWrong', 'dayWrong']);
    expect(wrong({ fact: 'tremor', until: '2026-03-01' })).toEqual({});
    expect(wrong({ fact: 'tremor', until: '2026-02-28' })).toEqual({ until: 'untilWrong' });
  });

  test('everything that is wrong is said at once', () => {
    expect(wrong({ from: '', until: 'soon', text: 'x'.repeat(501) })).toEqual({
      fact: 'factMissing',
      from: 'dayWrong',
      until: 'untilWrong',
      text: 'textLong',
    });
    expect(wrong({ fact: 'tremor', text: 'x'.repeat(500) })).toEqual({});
  });

  test('a cuff is chosen of its scheme, each of which the record takes', () => {
    for (const cuff of CUFF_CHOICES) expect(isTaken(read({ fact: 'usual-cuff', cuff }).content)).toBe(true);
    expect(wrong({ fact: 'usual-cuff', cuff: 'uk-arm-bands/thigh' })).toEqual({ cuff: 'chooseOne' });
  });
});

test('an end is a day not before the first one', () => {
  const fact = { from: '2026-03-01' };
  expect(readEnd('2026-03-01', fact)).toBe('2026-03-01');
  expect([readEnd('2026-02-28', fact), readEnd('', fact), readEnd('2026-13-01', fact)]).toEqual([null, null, null]);
  const ended = { fact: '01890a5d-ac96-774b-bcce-000000000001', until: '2026-03-01' };
  expect(KINDS['fact-ended'].schemas[1]?.safeParse(ended).success).toBe(true);
}); // biome-ignore format: one thought

test('an error needs a reason, and another reason its words', () => {
  expect(readError({ reason: '', text: 'x' }, 'e').wrong).toBe('reasonMissing');
  expect(readError({ reason: 'other', text: ' ' }, 'e').wrong).toBe('textMissing');
  for (const reason of AMENDMENT_REASONS)
    expect(readError({ reason, text: ' slip ' }, 'e').amends).toEqual({ entry: 'e', reason, text: 'slip' });
});

test('a day is a day of the calendar', () => {
  expect(['2024-02-29', '2026-02-29', '2026-1-1', '1961-02-28'].map(isDay)).toEqual([true, false, false, true]);
}); // biome-ignore format: one thought
