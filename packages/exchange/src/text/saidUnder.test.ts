import { projectChart } from '@evenfall/record';
import { loadWords, wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import {
  heard,
  idOf,
  type Made,
  made,
  ORLA,
  run,
  signing,
  UNDER_PROTOCOL,
  WREN,
} from '../../testing/charts.js';
import { broughtTemplate, leftOutOfText, roundText, TEMPLATE_IDS } from './roundText.js';

/** Before anything of these rounds is late. */
const NOW = '2026-11-25T10:00:00+01:00';

function text(template: string, all: readonly Made[], words = wordsFor('en')): string {
  const { rounds } = projectChart(all.map(({ entry }) => entry));
  const [round] = rounds;
  if (round === undefined) throw new Error('no round');
  const rulesOf = (version: string | null) => (version === null ? null : UNDER_PROTOCOL);
  const of = {
    round,
    rounds,
    identity: ORLA,
    agents: [WREN],
    rulesOf,
    words,
    dayText: (date: string) => date,
    now: NOW,
    gauges: [],
  };
  const filled = roundText(template, of, []);
  if (!filled.ok) throw new Error(JSON.stringify(filled.refusals));
  return filled.value;
}

function roundOf(...pressures: readonly (readonly [number, number])[]): readonly Made[] {
  const readings = pressures.map(([systolic, diastolic], at) =>
    run(at + 1, heard(systolic, diastolic), { inForce: UNDER_PROTOCOL }),
  );
  return [...readings, signing(9, readings, { inForce: UNDER_PROTOCOL })];
}

const LOW = roundOf([88, 52], [86, 50]);

/** Somebody was told of the low pressure, and said it back. */
const TOLD = made(
  20,
  'act-now-closed',
  {
    conditions: ['very-low-pressure'],
    toldWhom: 'Dr Abara (invented)',
    toldAt: { at: '2026-11-25T10:20:00.000+01:00', zone: 'Europe/Vienna', asEntered: null },
    saidBack: 'Comes at once.',
    saw: LOW.map(({ entry }) => entry.id),
  },
  { round: LOW[0]?.entry.round ?? idOf(1), schema: 2 },
);

// Bedside handbook 7.1: whom was told, when, and what was said back.
test.each(TEMPLATE_IDS)('%s says whom an alert was told to', (id) => {
  const said = text(broughtTemplate(id, wordsFor('en')), [...LOW, TOLD]);
  expect(said).toMatch(
    /Told to Dr Abara \(invented\), 10:20 \([^)]*very low[^)]*\)\. Said back: Comes at once\./i,
  );
});

test('what a template from before leaves out stands under the text', async () => {
  const older = '{pressure} mmHg[ Category: {category}.]';
  const [first, ...under] = text(older, LOW).split('\n');
  expect(first).toBe('88/52, 86/50 mmHg');
  expect(under).toEqual([
    expect.stringMatching(/^Act now: A systolic of 86 is very low/),
    expect.stringMatching(/^Not closed: nobody is noted as told of this yet/),
    expect.stringMatching(/^No category of high pressure is given/),
  ]);
  expect(text(older, [...LOW, TOLD]).split('\n')[2]).toMatch(/^Told to Dr Abara/);
  const [, ...spanish] = text(older, LOW, await loadWords('es')).split('\n');
  expect(spanish).toEqual([
    expect.stringMatching(/^Actúe ya: /),
    expect.stringMatching(/^Sin cerrar: /),
    expect.stringMatching(/categoría/),
  ]);
});

test('nothing stands under a text where there is nothing of it, nor twice', () => {
  expect(text('{pressure} mmHg', roundOf([122, 76], [120, 74]))).toBe('122/76, 120/74 mmHg');
  const said = text('{pressure}[, {actNow}][, {told}]', LOW);
  expect(said.match(/very low \(90/g)).toHaveLength(1);
  expect(said).not.toContain('\n');
});

test('whoever changes a template is told what it leaves out; none that is brought leaves out anything', async () => {
  expect(leftOutOfText('{pressure}')).toEqual(['actNow', 'told']);
  expect(leftOutOfText('{category}[ {told}]')).toEqual(['actNow', 'caution']);
  expect(leftOutOfText('{category}[ {alerts}]')).toEqual(['caution']);
  expect(leftOutOfText('{category')).toEqual([]);
  for (const id of TEMPLATE_IDS)
    for (const language of ['en', 'es'])
      expect(leftOutOfText(broughtTemplate(id, await loadWords(language)))).toEqual([]);
});
