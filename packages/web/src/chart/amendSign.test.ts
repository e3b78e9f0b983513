import { UNKNOWN_SIGN_CIRCUMSTANCES } from '@evenfall/clinical';
import type { StoredEntry } from '@evenfall/record';
import { USUAL_MANNER } from '@evenfall/words';
import { expect, test } from 'vitest';
import { withReading } from './amendSign.js';

const entryOf = (sign: object) =>
  ({
    kind: 'sign',
    content: { evidence: { sign, circumstances: UNKNOWN_SIGN_CIRCUMSTANCES } },
  }) as unknown as StoredEntry & { kind: 'sign' };
const PAIN = { of: 'pain', score: 4.7, word: null, tool: 'visual-analogue', moving: true, where: 'hip' };

// Bedside handbook 4.3 (from memory): 0 to 100 mm on a line, 0 to 10 in numbers.
test('a mark on a line is put right in mm, and a score in points', () => {
  const line = entryOf(PAIN);
  expect(withReading(line, '52', USUAL_MANNER)).toEqual({ ok: true, value: { ...PAIN, score: 5.2 } });
  expect(withReading(line, '100', USUAL_MANNER)).toMatchObject({ ok: true, value: { score: 10 } });
  expect(withReading(line, '101', USUAL_MANNER)).toMatchObject({
    ok: false,
    refusals: [{ field: '/score', code: 'out-of-range', got: '101', figures: { minimum: 0, maximum: 100 } }],
  });
  expect(withReading(line, '', USUAL_MANNER)).toMatchObject({ ok: false, refusals: [{ code: 'missing' }] });
  const numeric = entryOf({ ...PAIN, tool: 'numeric', score: 4 });
  expect(withReading(numeric, '6', USUAL_MANNER)).toMatchObject({ ok: true, value: { score: 6 } });
  expect(withReading(numeric, '52', USUAL_MANNER)).toMatchObject({
    ok: false,
    refusals: [{ code: 'out-of-range' }],
  });
});
