import { expect, test } from 'vitest';
import { withField } from '../app/forms.js';
import { begun, complete, PERSON } from '../round/testing.js';
import { takenBy } from '../round/whose.js';
import { freshKept } from '../store/kept.js';
import { leftBehind, unsignedSets, withAgent } from './unsignedSets.js';

const typed = (agent: string | null) =>
  withField(
    withField(
      withField({ ...freshKept('device'), agent }, 'quick mira', 'text', '150/94 80'),
      'quick habit',
      'windowSeconds',
      '15',
    ),
    'quick nils',
    'text',
    ' ',
  );

test('somebody else who measures finds a blank keypad, and what that loses is known before', () => {
  const kept = typed('wren');
  expect(leftBehind(kept, 'kit').sets).toEqual([{ person: 'mira', text: '150/94 80' }]);
  const changed = withAgent(kept, 'kit');
  expect(changed.agent).toBe('kit');
  expect(unsignedSets(changed)).toEqual([]);
  expect(changed.forms).toEqual({});
  // Nobody chosen in between is no way round it.
  expect(unsignedSets(withAgent(withAgent(kept, null), 'kit'))).toEqual([]);
});

test('whoever goes on measuring, or says who they are only after typing, loses nothing', () => {
  for (const kept of [typed('wren'), typed(null)]) {
    expect(leftBehind(kept, 'wren')).toEqual({ sets: [], rounds: [] });
    expect(withAgent(kept, 'wren').forms).toEqual(kept.forms);
  }
});

test('a round begun, a set kept in it too, is named before somebody else measures, and stays whose it is', () => {
  const kept = { ...freshKept('device'), agent: 'kit', drafts: { [PERSON]: takenBy(complete(), 'kit') } };
  expect(leftBehind(kept, 'wren').rounds).toEqual([PERSON]);
  expect(withAgent(kept, 'wren').drafts).toEqual(kept.drafts);
  // Somebody else's, left before, was named then.
  expect(leftBehind(withAgent(kept, 'wren'), 'ines').rounds).toEqual([]);
});

test('what was taken before anybody said who they are is of whoever says so first; a round only opened is of nobody', () => {
  const kept = { ...freshKept('device'), drafts: { [PERSON]: complete(), nils: begun() } };
  expect(withAgent(kept, 'kit').drafts).toMatchObject({ [PERSON]: { by: 'kit' }, nils: { by: null } });
});

test('where somebody signs in, a name chosen in a class changes nothing beside a bed', () => {
  const kept = { ...typed('wren'), drafts: { [PERSON]: takenBy(complete(), 'wren') } };
  expect(leftBehind(kept, 'kit', 'class')).toEqual({ sets: [], rounds: [] });
  expect(withAgent(kept, 'kit', 'class').forms).toEqual(kept.forms);
});

test('where somebody signs in, the first name chosen in a class takes what is of the class and nothing beside a bed', () => {
  const drafts = { [PERSON]: complete(), nils: { ...complete(), book: 'class' as const } };
  const kept = { ...freshKept('device'), drafts };
  expect(withAgent(kept, 'kit', 'class').drafts).toMatchObject({
    [PERSON]: { by: null },
    nils: { by: 'kit' },
  });
});
