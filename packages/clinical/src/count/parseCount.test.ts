import { expect, test } from 'vitest';
import { parseCount } from './parseCount.js';
import { DEFAULT_COUNT_RULES } from './rules.js';

/** `field code` of each refusal, in the order reported. */
function refused(input: unknown): string[] {
  const parsed = parseCount(input);
  return parsed.ok ? [] : parsed.refusals.map(({ field, code }) => `${field} ${code}`);
}

test('absent parts take the default start and a pulse', () => {
  // docs/conventions.md section 5: `--clock any --first 1 --of pulse`.
  const count = { of: 'pulse', n: 19, windowSeconds: 15, clock: 'any', first: 1 };
  expect(parseCount({ n: 19, windowSeconds: 15 })).toEqual({ ok: true, value: count });
  expect(parseCount({ n: '19', windowSeconds: '15', clock: '', first: null })).toEqual({
    ok: true,
    value: count,
  });
});

test('a protocol may start otherwise', () => {
  const rules = { ...DEFAULT_COUNT_RULES, clock: 'beat', first: 0 } as const;
  expect(parseCount({ n: 18, windowSeconds: 15 }, rules)).toMatchObject({
    value: { clock: 'beat', first: 0 },
  });
});

test.each([
  [{ n: '19', windowSeconds: '15', clock: 'beat', first: '0', of: 'breaths' }],
  [{ n: 19, windowSeconds: 15, clock: 'beat', first: 0, of: 'breaths' }],
])('reads numbers and numbers as text alike', (input) => {
  const count = { of: 'breaths', n: 19, windowSeconds: 15, clock: 'beat', first: 0 };
  expect(parseCount(input)).toEqual({ ok: true, value: count });
});

test.each<[unknown, string[]]>([
  [{}, ['/n missing', '/windowSeconds missing']],
  [null, ['/n missing', '/windowSeconds missing']],
  ['19', [' missing', '/n missing', '/windowSeconds missing']],
  [
    [19, 15],
    [' missing', '/n missing', '/windowSeconds missing'],
  ],
  [{ n: '', windowSeconds: null }, ['/n missing', '/windowSeconds missing']],
  [{ n: 'x', windowSeconds: '1,5' }, ['/n not-a-number', '/windowSeconds not-a-number']],
  [{ n: '1e2', windowSeconds: true }, ['/n not-a-number', '/windowSeconds not-a-number']],
  [{ n: 18.5, windowSeconds: 15 }, ['/n not-whole']],
  [{ n: '18.0', windowSeconds: 15 }, []],
  [{ n: -1, windowSeconds: 15 }, ['/n out-of-range']],
  [{ n: 0, windowSeconds: 15 }, []],
  [{ n: 0, windowSeconds: 15, clock: 'beat', first: 0 }, []],
  [{ n: 0, windowSeconds: 15, clock: 'beat' }, ['/n out-of-range']],
  [{ n: 1, windowSeconds: 15, clock: 'beat' }, []],
  [{ n: 1, windowSeconds: 0 }, ['/windowSeconds out-of-range']],
  [{ n: 1, windowSeconds: -15 }, ['/windowSeconds out-of-range']],
  [{ n: 1, windowSeconds: 0.5 }, []],
  [{ n: 0, windowSeconds: 0.001 }, []],
  [{ n: 0, windowSeconds: 0.000999 }, ['/windowSeconds out-of-range']],
  [{ n: 0, windowSeconds: 1e-310 }, ['/windowSeconds out-of-range']],
  [{ n: 0, windowSeconds: 1e-306 }, ['/windowSeconds out-of-range']],
  [{ n: 1, windowSeconds: 300 }, []],
  [{ n: 1, windowSeconds: 300.1 }, ['/windowSeconds out-of-range']],
  [{ n: 100, windowSeconds: 15 }, []],
  [{ n: 101, windowSeconds: 15 }, ['/n impossible']],
  [{ n: 1, windowSeconds: 15, first: 2 }, ['/first unknown-id']],
  [{ n: 1, windowSeconds: 15, of: 'Pulse' }, ['/of unknown-id']],
  [{ n: 1, windowSeconds: 15, rate: 4 }, ['/rate unknown-field']],
  [{ n: 1, windowSeconds: 15, 'a/b': 4 }, ['/a~1b unknown-field']],
])('%j is refused as %j', (input, refusals) => {
  expect(refused(input)).toEqual(refusals);
});

test('all that is wrong is reported together, in the order of the fields, unknown ones last', () => {
  const input = { extra: 1, of: 'heart', first: 'two', clock: 'watch', windowSeconds: 'w', n: 1.5 };
  expect(refused(input)).toEqual([
    '/n not-whole',
    '/windowSeconds not-a-number',
    '/clock unknown-id',
    '/first unknown-id',
    '/of unknown-id',
    '/extra unknown-field',
  ]);
});

test('a refusal says what came, what would have been taken and the numbers of the rule', () => {
  expect(parseCount({ n: 101, windowSeconds: 15, clock: 'watch' })).toEqual({
    ok: false,
    refusals: [
      {
        field: '/n',
        line: null,
        code: 'impossible',
        expected: 'at-most-per-minute',
        figures: { perMinute: 404, ceilingPerMinute: 400 },
        choices: [],
        got: '101',
      },
      {
        field: '/clock',
        line: null,
        code: 'unknown-id',
        expected: 'one-of',
        figures: {},
        choices: ['beat', 'any'],
        got: 'watch',
      },
    ],
  });
});

test('a key of the object prototype is neither a field nor a value', () => {
  expect(refused(JSON.parse('{"n":1,"windowSeconds":15,"__proto__":{"of":"x"}}'))).toEqual([
    '/__proto__ unknown-field',
  ]);
});
