import { keptFrom } from '@evenfall/clinical';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  amending,
  bundleOf,
  count,
  felt,
  heard,
  idOf,
  inError,
  type Made,
  made,
  ORLA,
  PROTOCOL,
  reported,
  run,
  sign,
  signing,
  taps,
  UNDER_PROTOCOL,
  VERSION,
  WREN,
} from '../../../testing/charts.js';
import { wrongInBundle } from '../../../testing/validate.js';
import { chartBundle } from '../chartBundle.js';
import { readBundle } from './readBundle.js';

/** Any text that a note may hold: other alphabets, odd spaces, quotes, what looks like an escape. */
const note = fc.option(
  fc.oneof(
    fc.string({ unit: 'grapheme', maxLength: 40 }),
    fc.constantFrom('cold\u00a0hands', '“a”\n\u2028b', '\\u0041', '{"a":1}', '\u{1f976}', '<b>&amp;</b>'),
  ),
  { nil: null },
);

const step = fc.record({
  kind: fc.constantFrom(
    'count',
    'broken',
    'taps',
    'heard',
    'felt',
    'sign',
    'amend',
    'error',
    'sign-off',
    'fact',
    'reported',
  ),
  round: fc.integer({ min: 0, max: 2 }),
  number: fc.integer({ min: 40, max: 200 }),
  of: fc.nat(30),
  note,
  isUnder: fc.boolean(),
});

type Step = typeof step extends fc.Arbitrary<infer One> ? One : never;

/** How a round began and what was rested, of every sort. */
function began(number: number, who: string | null): Pick<Signed, 'begun' | 'rest'> {
  const skipped = { reason: 'other', text: 'a bus' } as const;
  const named = who === null || who.trim() === '' ? null : who.trim().slice(0, 200);
  return {
    begun:
      number % 3 === 0
        ? null
        : {
            identifiers: ['name', 'number'],
            consent: 'agreed',
            chaperone: 'present',
            interpreter: 'offered-declined',
            who: named,
          },
    rest:
      number % 2 === 0
        ? null
        : { seconds: number, neededSeconds: 300, skipped: number % 5 === 0 ? skipped : null },
  };
}

type Signed = NonNullable<Parameters<typeof signing>[2]>;

/** A history of one person: values of every kind, amended, marked, signed. */
function history(steps: readonly Step[]): Made[] {
  const all: Made[] = [made(900, 'person', { identifiers: ['name', 'birthDate', 'number'] })];
  for (const [index, { kind, round, number, of, note: said, isUnder }] of steps.entries()) {
    const id = index + 1;
    const more = { round: idOf(500 + round) };
    const inForce = isUnder ? { inForce: UNDER_PROTOCOL } : {};
    const noted = said === null ? {} : { note: said };
    const counts = all.filter(({ entry }) => entry.kind === 'count');
    const target = counts[of % Math.max(1, counts.length)];
    if (kind === 'count')
      all.push(count(id, { n: number, windowSeconds: 60 }, { ...more, ...inForce, ...noted }));
    if (kind === 'broken') {
      const interrupted = { reason: 'called-away', atSeconds: 12 };
      all.push(count(id, { windowSeconds: 30, interrupted }, more));
    }
    if (kind === 'taps') all.push(taps(id, [0, 0.1 + number / 300, 1.1 + number / 150], more));
    if (kind === 'heard') all.push(run(id, heard(number + 40, number), { ...more, ...inForce }));
    if (kind === 'felt') all.push(run(id, felt(number), more));
    if (kind === 'sign') {
      const typed = { value: 86 + number / 10, unit: '[degF]' } as const;
      const celsius = isUnder ? keptFrom(typed.value, typed.unit) : 30 + number / 20;
      const said = isUnder ? { typed } : {};
      all.push(sign(id, { of: 'temperature', celsius, site: 'oral' }, { ...more, ...said }));
    }
    if (kind === 'reported') {
      const what = { note: said, until: isUnder ? '2026-11-25T12:00:00Z' : null };
      all.push(
        reported(
          id,
          { of: 'pressure', systolic: number + 40, diastolic: isUnder ? null : number },
          { said: what },
        ),
      );
    }
    if (kind === 'fact') {
      const about = { fact: 'fistula', side: 'left' };
      all.push(made(id, 'fact', { about, from: '2026-03-01', until: null, text: said }));
    }
    if (kind === 'amend' && target !== undefined) {
      const amended = Number.parseInt(target.entry.id.slice(-12), 16);
      const where = target.entry.round === null ? {} : { round: target.entry.round };
      all.push(count(id, { n: number, windowSeconds: 60 }, { ...where, ...amending(amended) }));
    }
    if (kind === 'error' && target !== undefined)
      all.push(inError(id, Number.parseInt(target.entry.id.slice(-12), 16)));
    if (kind === 'sign-off') {
      const values = all.filter(
        ({ entry }) =>
          entry.round === more.round &&
          ['count', 'taps', 'run', 'sign'].includes(entry.kind) &&
          entry.amends === null,
      );
      if (values.length > 0)
        all.push(signing(id, values, { ...more, ...inForce, ...noted, ...began(number, said) }));
    }
  }
  return all;
}

// Interoperability handbook 12, point 6, and the project's own promise: export then import gives the same record.
test('any record, written as a bundle and read again, is the same entry for entry; and every bundle is lawful', () => {
  fc.assert(
    fc.property(fc.array(step, { maxLength: 14 }), fc.boolean(), (steps, withIdentity) => {
      const all = history(steps);
      const bundle = chartBundle(bundleOf(all, { identity: withIdentity ? ORLA : null }));
      expect(wrongInBundle(bundle)).toEqual([]);
      const read = readBundle(JSON.parse(JSON.stringify(bundle)));
      if (!read.ok) throw new Error(JSON.stringify(read.refusals));
      const { own, refused, reported, passedOver, identity, agents, protocols } = read.value;
      expect(own.map(({ frame, recordedAt }) => ({ frame, recordedAt }))).toEqual(
        all.map(({ frame, recordedAt }) => ({ frame, recordedAt })),
      );
      expect([refused, reported, passedOver]).toEqual([[], [], {}]);
      // A name with a space that FHIR does not take comes back as it was.
      expect(identity).toEqual(withIdentity ? ORLA : null);
      expect(agents).toEqual([WREN]);
      expect(protocols).toHaveLength(1);
    }),
    { numRuns: 60 },
  );
}, 120_000);

test('a protocol version comes back as it was', () => {
  const bundle = chartBundle(bundleOf([]));
  const read = readBundle(JSON.parse(JSON.stringify(bundle)));
  const [kept] = read.ok ? read.value.protocols : [];
  expect(JSON.stringify(kept?.content)).toContain(PROTOCOL.presets.category);
  expect(JSON.stringify(bundle)).toContain(VERSION);
});
