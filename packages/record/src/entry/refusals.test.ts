import { describe, expect, test } from 'vitest';
import { z } from 'zod';
import { refusalsOf } from './refusals.js';

/** What a schema says of an input, as refusals. */
function refused(schema: z.ZodType, input: unknown, at?: string) {
  const read = schema.safeParse(input);
  return read.success ? [] : refusalsOf(read.error, input, at);
}

const sheet = z
  .object({
    n: z.number().int().min(0).max(400),
    clock: z.enum(['beat', 'any']),
    first: z.literal([0, 1]),
    name: z.string().trim().min(2).max(5),
    on: z.iso.date(),
    at: z.iso.datetime({ offset: true }),
    id: z.uuidv7(),
    list: z.array(z.boolean()).min(1).max(2),
    shape: z.union([z.object({ a: z.number() }), z.object({ b: z.number() })]),
  })
  .strict();

const GOOD = {
  n: 19,
  clock: 'any',
  first: 1,
  name: 'Wren',
  on: '1961-02-28',
  at: '2026-11-25T09:30:00Z',
  id: '01950000-0000-7000-8000-000000000001',
  list: [true],
  shape: { a: 1 },
};

test('nothing is refused of what is right', () => {
  expect(refused(sheet, GOOD)).toEqual([]);
});

// The codes of docs/conventions.md section 2.
describe('each complaint has the code that names it', () => {
  test.each([
    ['n', undefined, 'missing', 'number'],
    ['n', null, 'missing', 'number'],
    ['n', '', 'missing', 'number'],
    ['n', 'x', 'not-a-number', 'number'],
    ['n', 1.5, 'not-whole', 'int'],
    ['n', -1, 'out-of-range', 'at-least-number'],
    ['n', 401, 'out-of-range', 'at-most-number'],
    ['clock', 'later', 'unknown-id', 'choice'],
    ['clock', null, 'missing', 'choice'],
    ['first', 2, 'unknown-id', 'choice'],
    ['name', 'W', 'out-of-range', 'at-least-string'],
    ['name', '   ', 'missing', 'at-least-string'],
    ['name', '', 'missing', 'at-least-string'],
    ['name', 'Quillfeather', 'out-of-range', 'at-most-string'],
    ['name', 7, 'contradicts', 'string'],
    ['on', '1961-02-29', 'contradicts', 'date'],
    ['on', '', 'missing', 'date'],
    ['at', 'yesterday', 'not-a-time', 'datetime'],
    ['at', '', 'missing', 'datetime'],
    ['id', 'mine', 'contradicts', 'uuid'],
    ['list', [], 'out-of-range', 'at-least-array'],
    ['list', [true, true, true], 'out-of-range', 'at-most-array'],
    ['shape', { c: 1 }, 'contradicts', 'one-of-the-shapes'],
    ['shape', 'a', 'contradicts', 'one-of-the-shapes'],
    ['shape', undefined, 'missing', 'one-of-the-shapes'],
  ])('%s = %j: %s, %s', (field, got, code, expected) => {
    expect(refused(sheet, { ...GOOD, [field]: got })).toMatchObject([
      { field: `/${field}`, code, expected, line: null },
    ]);
  });

  test('a rule of the project says its own name', () => {
    const even = z.object({ n: z.number().nullable() }).refine(({ n }) => n !== null && n % 2 === 0, {
      path: ['n'],
      message: 'even',
    });
    expect(refused(even, { n: 3 })).toMatchObject([{ field: '/n', code: 'contradicts', expected: 'even' }]);
    expect(refused(even, { n: null })).toMatchObject([{ field: '/n', code: 'missing', expected: 'even' }]);
  });
});

test('what fits one shape better than the others is refused at the place where it does not fit', () => {
  const shape = z.union([
    z.object({ n: z.number().int(), seconds: z.number() }).strict(),
    z.object({ seconds: z.number(), why: z.string() }).strict(),
  ]);
  const counts = z.object({ counts: z.array(shape) });
  expect(refused(counts, { counts: [{ n: 1.5, seconds: 30 }] })).toMatchObject([
    { field: '/counts/0/n', code: 'not-whole' },
  ]);
  expect(refused(counts, { counts: [{ seconds: 30 }] })).toMatchObject([
    { field: '/counts/0', expected: 'one-of-the-shapes' },
  ]);
});

test('the figures and the choices that would have been taken come with it, and what came', () => {
  expect(refused(sheet, { ...GOOD, n: 401, clock: 'later' })).toMatchObject([
    { got: '401', figures: { maximum: 400 }, choices: [] },
    { got: 'later', figures: {}, choices: ['beat', 'any'] },
  ]);
});

test('all problems of one input come together, each at its place below the place of the whole', () => {
  const bent = { ...GOOD, n: 'x', list: [true, 1], extra: 1, 'a/b~c': 2 };
  expect(refused(sheet, bent, '/entries/3').map(({ field, code }) => [field, code])).toEqual([
    ['/entries/3/n', 'not-a-number'],
    ['/entries/3/list/1', 'contradicts'],
    ['/entries/3/extra', 'unknown-field'],
    // RFC 6901 section 3: `~` is ~0 and `/` is ~1 inside a key.
    ['/entries/3/a~1b~0c', 'unknown-field'],
  ]);
});

test('what is no object at all is refused as a whole', () => {
  expect(refused(sheet, 'n=19')).toMatchObject([{ field: '', code: 'contradicts', expected: 'object' }]);
  expect(refused(sheet, null)).toMatchObject([{ field: '', code: 'missing', expected: 'object' }]);
});
