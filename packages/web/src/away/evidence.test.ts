import { DEFAULT_HOME_RULES } from '@evenfall/clinical';
import { bundleTable } from '@evenfall/exchange';
import { NOTHING_CHOSEN, roundFactsOf, seriesMade } from '@evenfall/record';
import { expect, test } from 'vitest';
import { type Beside, evidenceOf, linesOfLongNotes, linesOfUnreadArms } from './evidence.js';
import { columnsIn, columnsText, intakeOf, lineField } from './intake.js';
import { cellField, noteField, timeField } from './weekGrid.js';

const FACTS = roundFactsOf(null, [], '2025-03-10');
const BESIDE = {
  status: 'final' as const,
  diary: null,
  asleep: null,
  nap: null,
  scheduled: null,
  treated: null,
  note: null,
  features: null,
  arm: null,
  device: null,
  facts: FACTS,
};

function fieldsOf(given: Readonly<Record<string, string>>) {
  const all: Record<string, string> = {
    firstDay: '2025-03-29',
    days: '2',
    morning: '07:00',
    evening: '19:00',
    ...given,
  };
  return (field: string) => all[field] ?? '';
}

function kept(given: Readonly<Record<string, string>>, zone = 'Europe/Lisbon', said: Partial<Beside> = {}) {
  const text = fieldsOf(given);
  const intake = intakeOf(text, zone, DEFAULT_HOME_RULES, null);
  if (intake.read === null) throw new Error('nothing was read');
  return evidenceOf({ ...intake, read: intake.read }, text, { ...BESIDE, ...said });
}

const at = (day: number, part: 'morning' | 'evening') => ({ day, part, reading: 1 }) as const;

test('typed readings keep their own clock, and say whose time is only about right', () => {
  const evidence = kept({
    [cellField(at(1, 'evening'), 'systolic')]: '142',
    [cellField(at(1, 'evening'), 'diastolic')]: '88',
    [cellField(at(2, 'morning'), 'systolic')]: '139',
    [cellField(at(2, 'morning'), 'diastolic')]: '86',
    [timeField(at(2, 'morning'))]: '06:45',
  });
  // Clocks in Lisbon went forward in the night to 30 March 2025.
  expect(evidence.readings.map((one) => [one.at.at, one.at.asEntered, one.how, one.part])).toEqual([
    ['2025-03-29T19:00:00.000+00:00', '~19:00', 'typed', 'evening'],
    ['2025-03-30T06:45:00.000+01:00', '06:45', 'typed', 'morning'],
  ]);
  expect(evidence.readings.every(({ at: { zone } }) => zone === 'Europe/Lisbon')).toBe(true);
});

test('a note beside a day without a reading is kept with its date in the note of the series', () => {
  const typed = {
    [cellField(at(1, 'evening'), 'systolic')]: '142',
    [cellField(at(1, 'evening'), 'diastolic')]: '88',
    [noteField(1)]: 'tablets late',
    [noteField(2)]: 'fell, chest pain',
  };
  const { note, readings } = kept(typed);
  expect(note).toBe('2025-03-30: fell, chest pain');
  expect(readings.map((one) => one.note)).toEqual(['tablets late']);
  expect(kept(typed, undefined, { note: 'copied from paper' }).note).toBe(
    'copied from paper\n2025-03-30: fell, chest pain',
  );
});

test('one number of a pressure alone is a reading without the other; a pulse alone is refused', () => {
  const { readings, refused } = kept({
    [cellField(at(1, 'morning'), 'systolic')]: '148',
    [cellField(at(1, 'evening'), 'diastolic')]: '88',
    [cellField(at(2, 'morning'), 'pulse')]: '70',
  });
  expect(readings.map(({ systolic, diastolic }) => [systolic, diastolic])).toEqual([
    [148, null],
    [null, 88],
  ]);
  expect(refused).toHaveLength(1);
});

test('an arm and a device said once stand with every reading; one that names its own keeps it', () => {
  const said = { arm: 'left', device: 'Invented 3, large cuff' } as const;
  const grid = { [cellField(at(1, 'evening'), 'systolic')]: '142', [cellField(at(1, 'evening'), 'diastolic')]: '88' }; // biome-ignore format: one row
  const about = (found: ReturnType<typeof kept>) => found.readings.map(({ arm, device }) => [arm, device]);
  expect(about(kept(grid, 'Europe/Lisbon', said))).toEqual([['left', 'Invented 3, large cuff']]);
  expect(about(kept(grid))).toEqual([[null, null]]);
  const file = 'date;time;sys;dia;arm;device\n13/03/2025;07:30;142;88;right;Own\n13/03/2025;07:35;140;86;;';
  const read = kept({ way: 'file', file, zone: 'Europe/Lisbon' }, 'Europe/Lisbon', said);
  expect(about(read)).toEqual([['right', 'Own'], ['left', 'Invented 3, large cuff']]); // biome-ignore format: two rows
});

test('a reading that names its own arm is never kept on the one said once; what is not understood is kept as no arm, by its line', () => {
  // How people write an arm: common practice, no source.
  const named = ['left arm', 'Left upper arm', 'brazo izquierdo', 'LA', 'upper arm', 'both', ''];
  const rows = named.map((arm, k) => `2025-03-0${k + 1} 07:30;142;88;${arm}`);
  const given = { way: 'file', file: ['time;sys;dia;arm', ...rows].join('\n'), zone: 'Europe/Lisbon' };
  const arms = (of: typeof given) =>
    kept(of, 'Europe/Lisbon', { arm: 'right' }).readings.map(({ arm }) => arm);
  expect(arms(given)).toEqual(['left', 'left', 'left', 'left', null, null, 'right']);
  const { read } = intakeOf(fieldsOf(given), 'UTC', DEFAULT_HOME_RULES, null);
  expect(read === null ? null : linesOfUnreadArms(read)).toEqual([6, 7]);
  const sites = [
    'time;sys;dia;site',
    '2025-03-01 07:30;142;88;Left arm',
    '2025-03-01 07:35;142;88;upper arm',
  ];
  expect(arms({ ...given, file: sites.join('\n') })).toEqual(['left', 'right']);
});

test('the side of a body site in a bundle is the arm of its reading', () => {
  const quantity = (value: number) => ({ value, system: 'http://unitsofmeasure.org', code: 'mm[Hg]' });
  const loinc = (code: string) => ({ coding: [{ system: 'http://loinc.org', code }] });
  const observation = (day: number, bodySite: object | null, more = {}) => ({
    resourceType: 'Observation',
    status: 'final',
    code: loinc('85354-9'),
    subject: { display: 'Wren (invented)' },
    effectiveDateTime: `2025-03-0${day}T07:30:00+00:00`,
    component: [
      { code: loinc('8480-6'), valueQuantity: quantity(142) },
      { code: loinc('8462-4'), valueQuantity: quantity(88) },
    ],
    ...(bodySite === null ? {} : { bodySite }),
    ...more,
  });
  // SNOMED CT 368209003, right upper arm: FHIR R4's example of a blood pressure. Another code is not known here.
  const coded = (code: string) => ({ coding: [{ system: 'http://snomed.info/sct', code }] });
  const resources = [
    observation(1, { text: 'Left arm' }),
    observation(2, coded('368209003')),
    observation(3, coded('1')),
    observation(4, { text: 'Upper arm' }, { device: { display: 'Own' } }),
    observation(5, null),
  ];
  const bundle = {
    resourceType: 'Bundle',
    type: 'collection',
    entry: resources.map((resource) => ({ resource })),
  };
  const given = { way: 'file', file: bundleTable(JSON.stringify(bundle), 'home')?.text ?? '' };
  for (const said of ['left', 'right'] as const)
    expect(
      kept(given, 'UTC', { arm: said, device: 'Said' }).readings.map(({ arm, device }) => [arm, device]),
    ).toEqual([
      ['left', 'Said'],
      ['right', 'Said'],
      [null, 'Said'],
      [said, 'Own'],
      [said, 'Said'],
    ]);
});

const FILE = 'date;time;sys;dia\n13/03/2025;07:30;142;88\n14/03/2025;07:30;l39;87\n15/03/2025;07:30;84;137';

test('every row of a file is a reading or is kept as it stood, with its numbers where they can be read', () => {
  const evidence = kept({ way: 'file', file: FILE, zone: 'Europe/Lisbon' });
  expect(evidence.readings.map(({ line, systolic }) => [line, systolic])).toEqual([[2, 142]]);
  expect(evidence.refused).toEqual([
    { line: 3, got: '14/03/2025;07:30;l39;87', code: 'not-a-number', systolic: null, diastolic: 87 },
    { line: 4, got: '15/03/2025;07:30;84;137', code: 'not-below-systolic', systolic: 84, diastolic: 137 },
  ]);
  const { value } = seriesMade(evidence, NOTHING_CHOSEN, 'test');
  expect(value.dropped.length + value.used).toBe(evidence.readings.length);
});

test('a row that was put right is read anew, and what came is still there', () => {
  const given = { way: 'file', file: FILE, zone: 'Europe/Lisbon', [lineField(3)]: '14/03/2025;07:30;139;87' };
  expect(kept(given).readings.map(({ line, systolic }) => [line, systolic])).toEqual([
    [2, 142],
    [3, 139],
  ]);
  const intake = intakeOf(fieldsOf(given), 'UTC', DEFAULT_HOME_RULES, null);
  expect([...intake.mended]).toEqual([3]);
  expect(intake.lines[2]).toBe('14/03/2025;07:30;l39;87');
});

test('nothing is read before the zone was said, and nothing at all of nothing', () => {
  const read = intakeOf(
    fieldsOf({ way: 'file', file: FILE }),
    'Europe/Lisbon',
    DEFAULT_HOME_RULES,
    null,
  ).read;
  expect(read?.questions.map(({ of }) => of)).toEqual(['zone']);
  expect(read?.readings).toEqual([]);
  expect(intakeOf(fieldsOf({}), 'UTC', DEFAULT_HOME_RULES, null).read).toBeNull();
  expect(
    intakeOf(fieldsOf({ way: 'pasted', pasted: ' \n' }), 'UTC', DEFAULT_HOME_RULES, null).read,
  ).toBeNull();
});

test('a recording is never typed into the grid', () => {
  expect(intakeOf(fieldsOf({ of: 'ambulatory', way: 'typed' }), 'UTC', DEFAULT_HOME_RULES, null).way).toBe(
    'pasted',
  );
});

test('what each column is comes back from its field as it was', () => {
  const columns = ['time', null, 'systolic', 'diastolic'] as const;
  expect(columnsIn(columnsText(columns))).toEqual(columns);
  expect(columnsIn('')).toBeNull();
});

test('a row put right keeps what it said, and what the device marked and the clock did stays with its reading', () => {
  // Clocks in Lisbon went forward from 01:00 to 02:00 on 30 March 2025.
  const file = 'time;sys;dia;irregular pulse\n2025-03-30 01:30;142;88;no\n2025-03-30 07:30;l39;87;yes';
  const evidence = kept({
    way: 'file',
    file,
    zone: 'Europe/Lisbon',
    [lineField(3)]: '2025-03-30 07:30;139;87;yes',
  });
  expect(
    evidence.readings.map(({ systolic, irregular, clock, mended }) => [systolic, irregular, clock, mended]),
  ).toEqual([
    [142, false, 'skipped', null],
    [139, true, null, '2025-03-30 07:30;l39;87;yes'],
  ]);
});

test('of a note as much is kept as the record takes, and it is said of which line there was more', () => {
  // Source of 1000 characters: decision of this project (docs/conventions.md).
  const long = (characters: number) => 'n'.repeat(characters);
  const rows = [999, 1000, 1001].map((characters, k) => `2025-03-0${k + 1} 07:30;142;88;${long(characters)}`);
  const given = { way: 'file', file: ['time;sys;dia;note', ...rows].join('\n'), zone: 'Europe/Lisbon' };
  expect(kept(given).readings.map(({ note }) => note?.length)).toEqual([999, 1000, 1000]);
  const { read } = intakeOf(fieldsOf(given), 'UTC', DEFAULT_HOME_RULES, null);
  expect(read === null ? null : linesOfLongNotes(read)).toEqual([4]);
});
