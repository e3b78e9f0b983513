import { type AmbulatoryResult, OUT_OF_OFFICE_FIGURES } from '@evenfall/clinical';
import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { variationRows } from './furtherFigures.js';

const RESULT = { spread: {} } as AmbulatoryResult;

// The steps that are left out are a figure of the rules, not a word; all of them are in mmHg as the rows beside them say.
test.each(['en', 'es'])(
  'from reading to reading, with the longest step and the unit (%s)',
  async (language) => {
    const words = await loadWords(language);
    const names = variationRows(RESULT, words).map(({ name }) => name);
    expect(names[4]).toContain(` ${OUT_OF_OFFICE_FIGURES.longestStepHours.value} h (mmHg)`);
    expect(words.sentence('away.arvWithoutGaps', { hours: 3 })).toContain(' 3 h (mmHg)');
    for (const name of names.slice(2, 7)) expect(name).toMatch(/ \(mmHg\)$/);
  },
);
