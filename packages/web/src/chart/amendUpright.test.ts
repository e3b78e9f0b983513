import { projectDuties, type RunContent, readEntry, type StoredEntry } from '@evenfall/record';
import { loadWords, USUAL_MANNER } from '@evenfall/words';
import { expect, test } from 'vitest';
import { stampOfLocal } from '../ports/stampAt.js';
import { NO_PRESSURE } from '../pressure/pressureDraft.js';
import { readRun } from '../pressure/readRun.js';
import { entriesOf } from '../round/entries.js';
import { AT, complete, ID, NO_PROTOCOL, SIGNED } from '../round/testing.js';
import { type AmendFields, amendedContent, readAmendment } from './amendForm.js';
import { isTakenStanding, uprightFieldsOf } from './amendUpright.js';

const PLACE = { site: 'upper-arm', side: 'right', cuff: null, armCm: null, override: null } as const;

/** A signed round with 120/76 lying and 112/72 after so many minutes on the feet, as kept. */
function signed(unwellUpright: boolean | null, uprightMinutes: number | null = 1.1): StoredEntry[] {
  const reading = (id: number, typed: string, posture: 'lie' | 'stand') => {
    const typedAs = { method: 'auscultation', typed, fields: {}, reinflated: false } as const;
    const { run } = readRun(typedAs, { pulsePerMinute: 76, lostMmHg: null }, NO_PROTOCOL.runRules.deflation);
    if (run === null) throw new Error(typed);
    const isUp = posture === 'stand';
    return {
      kind: 'run' as const,
      entry: ID(id),
      sequence: id,
      measuredAt: AT(2),
      run,
      place: { ...PLACE, posture },
      uprightMinutes: isUp ? uprightMinutes : null,
      unwellUpright: isUp ? unwellUpright : null,
      inflatedAt: null,
      keptAt: { session: 's', atMs: id * 60_000 },
      typedAs,
      note: null,
    };
  };
  const values = [reading(30, '120/76', 'lie'), reading(31, '112/72', 'stand')];
  const pressure = { ...NO_PRESSURE, place: values[0]?.place ?? null, values };
  return entriesOf({ ...complete(), pressure: { ...pressure, measuring: { at: 'ready' } } }, SIGNED).map(
    (frame) => ({ ...frame, recordedAt: '2026-03-05T09:06:00Z' }) as unknown as StoredEntry,
  );
}

const find = (entries: readonly StoredEntry[], id: number) => {
  const found = entries.find((entry) => entry.id === ID(id));
  if (found === undefined) throw new Error('no such entry');
  return found;
};
const [english, spanish] = [(await loadWords('en')).say, (await loadWords('es')).say];
const read = (entry: StoredEntry, fields: Partial<AmendFields>) =>
  readAmendment(
    entry,
    {
      ...{ what: 'upright', n: '', unit: '', side: '', cuff: '', site: '', perMinute: '', time: '' },
      ...{ reason: 'typing-slip', text: '', ...uprightFieldsOf(entry, english), ...fields },
    },
    NO_PROTOCOL,
    {
      now: AT(9),
      stampOf: (typed) => stampOfLocal(typed, 'Europe/Vienna', () => 0),
      birthDate: '1950-12-31',
      ageMonths: 902,
      manner: USUAL_MANNER,
    },
  );

/** The entries with the reading standing put right. */
function put(entries: readonly StoredEntry[], fields: Partial<AmendFields>): StoredEntry[] {
  const entry = find(entries, 31);
  const { amendment, wrong } = read(entry, fields);
  if (amendment === null) throw new Error(JSON.stringify(wrong));
  const made = amendedContent(entry, amendment, { inForce: NO_PROTOCOL, program: 'evenfall test' });
  const { recordedAt, ...frame } = entry as StoredEntry & Record<string, unknown>;
  const amending = { ...frame, ...made, id: ID(60), sequence: 60, amends: amendment.amends };
  expect(readEntry(amending)).toMatchObject({ ok: true });
  return [...entries, { ...amending, recordedAt: '2026-03-05T09:20:00Z' } as unknown as StoredEntry];
}
const alerts = (entries: readonly StoredEntry[]) =>
  projectDuties(entries).actNow.map(({ condition }) => condition);

// Bedside handbook 3.14: dizzy, faint or unsteady on the feet is charted and reported.
test('that somebody felt unwell on their feet is added after signing, and the alert comes with it', () => {
  for (const before of [null, false]) {
    expect(alerts(signed(before))).toEqual([]);
    expect(alerts(put(signed(before), { unwellUpright: 'unwell' }))).toEqual(['unwell-upright']);
  }
});

test('a slip of it is put right, and the alert goes with it; the reading keeps its numbers and minutes', () => {
  expect(alerts(signed(true))).toEqual(['unwell-upright']);
  for (const [felt, kept] of [
    ['none', false],
    ['unasked', null],
  ] as const) {
    const entries = put(signed(true), { unwellUpright: felt });
    expect(alerts(entries)).toEqual([]);
    const { evidence, value } = find(entries, 60).content as RunContent;
    expect(evidence.circumstances).toMatchObject({ unwellUpright: kept, uprightMinutes: 1.1 });
    expect(evidence.place.posture).toBe('stand');
    expect(value).toMatchObject({ systolic: 112, diastolic: 72 });
  }
});

test('the minutes on the feet are put right, as known or as not', () => {
  const minutes = (typed: string) =>
    (find(put(signed(true), { uprightMinutes: typed }), 60).content as RunContent).evidence.circumstances;
  expect(minutes('3')).toMatchObject({ uprightMinutes: 3, unwellUpright: true });
  expect(minutes(' ')).toMatchObject({ uprightMinutes: null, unwellUpright: true });
});

test.each([
  [{}, { unwellUpright: 'uprightSame' }],
  [{ unwellUpright: '' }, { unwellUpright: 'uprightSame' }],
  [{ uprightMinutes: '-1' }, { uprightMinutes: 'uprightMissing' }],
  [{ uprightMinutes: '61' }, { uprightMinutes: 'uprightMissing' }],
  [{ uprightMinutes: 'soon' }, { uprightMinutes: 'uprightMissing' }],
])('refuses %j', (fields, wrong) => {
  expect(read(find(signed(null), 31), fields)).toEqual({ amendment: null, wrong });
});

test('only a reading standing has it to be put right', () => {
  const entries = signed(true);
  expect([30, 31, 20].map((id) => isTakenStanding(find(entries, id)))).toEqual([false, true, false]);
  const felt = { what: 'upright', unwellUpright: 'unwell' };
  expect(read(find(entries, 30), felt).wrong).toEqual({ what: 'whatMissing' });
  expect(uprightFieldsOf(find(entries, 30), english)).toEqual({ unwellUpright: '', uprightMinutes: '' });
  // A decimal comma where its language writes one: what is typed there is read so.
  expect(uprightFieldsOf(find(entries, 31), spanish).uprightMinutes).toBe('1,1');
});
