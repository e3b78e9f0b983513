import type { ChartedSeries } from '@evenfall/record';
import { expect, test } from 'vitest';
import { devicesNamed } from './devicesNamed.js';

const of = (...devices: (string | null)[]) =>
  ({ content: { readings: devices.map((device) => ({ device })) } }) as unknown as ChartedSeries;

test('each device that a series names is offered once, that of the newest first', () => {
  expect(devicesNamed([of('B', null, 'B'), of('A', 'B')])).toEqual(['B', 'A']);
  expect(devicesNamed([of(null)])).toEqual([]);
});
