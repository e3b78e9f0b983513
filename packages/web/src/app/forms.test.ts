import { expect, test } from 'vitest';
import { freshKept } from '../store/kept.js';
import { withAdds, withEntry, withField, withoutForm, withoutFormsOf } from './forms.js';

const stamp = (at: string) => ({ at, zone: 'UTC', asEntered: null });

test('what was typed stays with its form', () => {
  const kept = withField(withField(freshKept('d'), 'add', 'name', 'Ada'), 'add', 'number', '7');
  expect(kept.forms.add?.fields).toEqual({ name: 'Ada', number: '7' });
  expect(withoutForm(kept, 'add').forms).toEqual({});
});

test('sending again sends the same: ids, number and time are made once', () => {
  let made = 0;
  const id = () => {
    made += 1;
    return `id-${made}`;
  };
  const once = withEntry(withAdds(freshKept('d'), 'add', id), 'add', id, () => stamp('first'));
  const twice = withEntry(withAdds(once, 'add', id), 'add', id, () => stamp('second'));
  expect(twice).toEqual(once);
  expect(once.forms.add).toMatchObject({
    adds: 'id-1',
    entry: { id: 'id-2', sequence: 0, measuredAt: stamp('first'), writtenAt: stamp('first').at },
  });
  expect(once.sequence).toBe(1);
});

test('what was typed for a round goes with the round, and nothing else does', () => {
  const typed = ['signs 7', 'place 7', 'signs 17', 'add'].reduce(
    (kept, form) => withField(kept, form, 'text', 'x'),
    freshKept('d'),
  );
  expect(Object.keys(withoutFormsOf(typed, '7').forms)).toEqual(['signs 17', 'add']);
  expect(withoutFormsOf(typed, '8')).toBe(typed);
});
