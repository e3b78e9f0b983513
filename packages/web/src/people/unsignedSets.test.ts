import { expect, test } from 'vitest';
import { withField } from '../app/forms.js';
import { freshKept } from '../store/kept.js';
import { lostTo, unsignedSets, withAgent } from './unsignedSets.js';

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
  expect(lostTo(kept, 'kit')).toEqual([{ person: 'mira', text: '150/94 80' }]);
  const changed = withAgent(kept, 'kit');
  expect(changed.agent).toBe('kit');
  expect(unsignedSets(changed)).toEqual([]);
  expect(changed.forms).toEqual({});
  // Nobody chosen in between is no way round it.
  expect(unsignedSets(withAgent(withAgent(kept, null), 'kit'))).toEqual([]);
});

test('whoever goes on measuring, or says who they are only after typing, loses nothing', () => {
  for (const kept of [typed('wren'), typed(null)]) {
    expect(lostTo(kept, 'wren')).toEqual([]);
    expect(withAgent(kept, 'wren').forms).toEqual(kept.forms);
  }
});
