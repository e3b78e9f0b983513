import { expect, test } from 'vitest';
import { gaugeFields, isSameGauge, readGauge } from './readGauge.js';

const GAUGE = {
  what: 'gauge' as const,
  name: 'Gauge 3',
  type: 'mercury' as const,
  room: null,
  serial: 'INV-G3',
  note: null,
};
const typed = (fields: Readonly<Record<string, string>>) => (field: string) => fields[field] ?? '';

test('a gauge reads back from the form that puts it right, and says then that nothing is changed', () => {
  const read = readGauge(typed(gaugeFields(GAUGE)));
  expect(read).toEqual(GAUGE);
  expect(read !== null && isSameGauge(read, GAUGE)).toBe(true);
});

test.each(['name', 'type', 'room', 'serial', 'note'])('another %s is another', (field) => {
  const read = readGauge(
    typed({ ...gaugeFields(GAUGE), [field]: field === 'type' ? 'electronic' : 'other' }),
  );
  expect(read !== null && isSameGauge(read, GAUGE)).toBe(false);
});

test('without a name it is none, and a blank is nothing said', () => {
  expect(readGauge(typed({ ...gaugeFields(GAUGE), name: '  ' }))).toBeNull();
  expect(readGauge(typed({ name: ' Gauge 1 ', room: '  ' }))).toMatchObject({
    name: 'Gauge 1',
    type: 'aneroid',
    room: null,
  });
});
