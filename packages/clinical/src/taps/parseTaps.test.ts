import { expect, test } from 'vitest';
import { parseTaps } from './parseTaps.js';

function faults(input: unknown): string[] {
  const parsed = parseTaps(input);
  return parsed.ok ? [] : parsed.refusals.map(({ field, code }) => `${field} ${code}`);
}

test('a pulse unless it says breaths', () => {
  expect(parseTaps({ source: 'key', seconds: [0, 0.8, 1.7] })).toEqual({
    ok: true,
    value: { of: 'pulse', source: 'key', seconds: [0, 0.8, 1.7] },
  });
  expect(parseTaps({ of: 'breaths', source: 'touch', seconds: [3] })).toMatchObject({
    value: { of: 'breaths', seconds: [3] },
  });
});

test.each([
  [undefined, ['/source missing', '/seconds missing']],
  [{ source: 'key' }, ['/seconds missing']],
  [{ source: 'key', seconds: [] }, ['/seconds missing']],
  [{ source: 'key', seconds: 'many' }, ['/seconds not-a-number']],
  [{ source: 'clap', seconds: [0, 1] }, ['/source unknown-id']],
  [{ of: 'steps', source: 'key', seconds: [0, 1] }, ['/of unknown-id']],
  [{ source: 'key', seconds: [0, null, 1] }, ['/seconds/1 missing']],
  [{ source: 'key', seconds: [0, Number.NaN, 1] }, ['/seconds/1 not-a-number']],
  [{ source: 'key', seconds: [0, Number.POSITIVE_INFINITY] }, ['/seconds/1 not-a-number']],
  [{ source: 'key', seconds: [0, 1, 1] }, ['/seconds/2 out-of-order']],
  [{ source: 'key', seconds: [0, 1], note: 'left' }, ['/note unknown-field']],
  [
    { source: 'clap', seconds: [1, 0], x: 1 },
    ['/source unknown-id', '/seconds/1 out-of-order', '/x unknown-field'],
  ],
])('%j: %j', (input, expected) => {
  expect(faults(input)).toEqual(expected);
});

test('over 400 a minute is impossible, but a screen that bounces refuses nothing', () => {
  // A beat every 0.25 s, each tap seen twice: 480 taps a minute, 240 beats.
  const seconds = Array.from({ length: 40 }, (_, i) => Math.floor(i / 2) * 0.25 + (i % 2) * 0.05);
  expect(faults({ source: 'key', seconds })).toEqual(['/seconds impossible']);
  expect(faults({ source: 'touch', seconds })).toEqual([]);
});
