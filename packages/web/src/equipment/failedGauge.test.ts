import type { Gauge } from '@evenfall/record';
import { wordsFor } from '@evenfall/words';
import { expect, test } from 'vitest';
import { failedGauge } from './failedGauge.js';
import { gaugeChoiceText } from './GaugeChoice.js';

const words = wordsFor('en-GB');
const gauge = (id: string, state: string) =>
  ({
    id,
    endedOn: null,
    named: { name: `Gauge ${id}`, type: 'aneroid' },
    standing: { state, checks: [{ of: 'zero', state, dueDay: null }] },
  }) as unknown as Gauge;
const GAUGES = [gauge('1', 'good'), gauge('2', 'overdue'), gauge('3', 'failed')];

// Common practice, no source: a gauge off zero is taken out of use.
test('a gauge that is out of use is said wherever its reading stands, and what to do; one that is in order is not', () => {
  const said = failedGauge(GAUGES, '3', words);
  expect(said).toMatch(/^Gauge 3 — .*zero.*\. Take another gauge/);
  expect(said).not.toContain('..');
  expect(['1', '2', '9', null].map((id) => failedGauge(GAUGES, id, words))).toEqual([null, null, null, null]);
});

test('among others a gauge that is out of use, or due for a check, says so before it is chosen', () => {
  expect(GAUGES.map((one) => gaugeChoiceText(one, words))).toEqual([
    'Gauge 1',
    'Gauge 2, check due',
    'Gauge 3, out of use',
  ]);
});
