import { expect, test } from 'vitest';
import { localFields } from './localFields.js';
import { overrideFields, restoreField } from './override.js';
import { presetProtocol } from './presetProtocol.js';

function must<T>(read: { ok: true; value: T } | { ok: false }): T {
  if (!read.ok) throw new Error('refused');
  return read.value;
}

// Bedside handbook 3.5: the margin is a setting from 10 to 40; 30 is common practice.
test('what the place decided is listed with what it took the place of, and nothing else is', () => {
  const preset = must(presetProtocol({}));
  expect(localFields(preset)).toEqual([]);
  const local = must(
    overrideFields(preset, [
      { section: 'readings', key: 'gapSeconds', value: 90 },
      { section: 'inflation', key: 'marginMmHg', value: 25 },
    ]),
  );
  expect(localFields(local)).toMatchObject([
    { section: 'inflation', key: 'marginMmHg', field: { value: 25, replaces: { value: 30 } } },
    { section: 'readings', key: 'gapSeconds', field: { value: 90, replaces: { value: 60 } } },
  ]);
  const restored = must(restoreField(local, 'inflation', 'marginMmHg'));
  expect(localFields(restored).map(({ key }) => key)).toEqual(['gapSeconds']);
});
