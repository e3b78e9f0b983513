import { expect, test } from 'vitest';
import { isVoid, parseCountOrVoid, voidResult } from './voidCount.js';

function refused(input: unknown): string[] {
  const parsed = parseCountOrVoid(input);
  return parsed.ok ? [] : parsed.refusals.map(({ field, code }) => `${field} ${code}`);
}

const interrupted = { atSeconds: 12.5, reason: 'spoken-to' };

test('an interrupted count is kept and has no value', () => {
  // Bedside handbook 1.2 (common practice, no source): stop, wait, start again; do not guess.
  const parsed = parseCountOrVoid({ windowSeconds: 30, interrupted });
  expect(parsed).toEqual({
    ok: true,
    value: { of: 'pulse', windowSeconds: 30, clock: 'any', first: 1, interrupted },
  });
  if (!parsed.ok || !isVoid(parsed.value)) throw new Error('not void');
  expect(voidResult(parsed.value)).toEqual({
    perMinute: null,
    stepPerMinute: null,
    lowPerMinute: null,
    highPerMinute: null,
    lowIncluded: null,
    highIncluded: null,
    flags: [],
    nextWindowSeconds: 30,
    why: [{ code: 'interrupted', figures: { atSeconds: 12.5 } }],
  });
});

test('the moment of the interruption may be unknown, and is then no zero', () => {
  const parsed = parseCountOrVoid({ windowSeconds: 30, interrupted: { atSeconds: null, reason: 'other' } });
  if (!parsed.ok || !isVoid(parsed.value)) throw new Error('not void');
  expect(parsed.value.interrupted.atSeconds).toBeNull();
  expect(voidResult(parsed.value).why).toEqual([{ code: 'interrupted', figures: {} }]);
});

test.each([[{ n: 19, windowSeconds: 15 }], [{ n: 19, windowSeconds: 15, interrupted: null }]])(
  '%j is a count',
  (input) => {
    const parsed = parseCountOrVoid(input);
    expect(parsed.ok && !isVoid(parsed.value) && parsed.value.n).toBe(19);
  },
);

test.each<[unknown, string[]]>([
  [{ n: 7, windowSeconds: 30, interrupted }, ['/n unknown-field']],
  [{ interrupted }, ['/windowSeconds missing']],
  [{ windowSeconds: 30, interrupted: {} }, ['/interrupted/reason missing']],
  [{ windowSeconds: 30, interrupted: { ...interrupted, reason: 'x' } }, ['/interrupted/reason unknown-id']],
  [
    { windowSeconds: 30, interrupted: { ...interrupted, atSeconds: -1 } },
    ['/interrupted/atSeconds out-of-range'],
  ],
  [
    { windowSeconds: 30, interrupted: { ...interrupted, atSeconds: 30 } },
    ['/interrupted/atSeconds contradicts'],
  ],
  [{ windowSeconds: 30, interrupted: { ...interrupted, by: 1 } }, ['/interrupted/by unknown-field']],
  [{ windowSeconds: 30, interrupted: 'yes' }, ['/interrupted missing', '/interrupted/reason missing']],
  [{ n: 1.5, windowSeconds: 15, interrupted: null }, ['/n not-whole']],
])('%j is refused as %j', (input, refusals) => {
  expect(refused(input)).toEqual(refusals);
});
