import { bladderFor, PROPER, type Scenario, SOUND_INSTRUMENT, scenarioOf } from '@evenfall/physiology';
import { debrief, demonstrate, GOOD_OBSERVER } from '@evenfall/practice';
import { expect, test } from 'vitest';
import { bedsideFlags } from './bedsideFlags.js';

const codes = (flags: readonly { readonly code: string }[]) => flags.map(({ code }) => code);

// Physiology handbook 14 (29: block at 36 a minute, no gap), 9 (let down at 8 mmHg/s the systolic is read too low).
test('a pulse felt above a first sound that was missed by haste is no silent gap, and the debrief says so', () => {
  const scenario = scenarioOf('slow-bell') as Scenario;
  const hand = { ...GOOD_OBSERVER.hand, rateMmHgPerSecond: 8, mostPerBeatMmHg: null };
  const instrument = { ...SOUND_INSTRUMENT, bladder: bladderFor(scenario.armCm) };
  const found = debrief(demonstrate({ ...GOOD_OBSERVER, hand }, scenario, 4, PROPER, instrument));
  expect(codes(found.reading?.flags ?? [])).toContain('possible-gap');
  const said = bedsideFlags(found);
  expect(said.first).toEqual([]);
  expect(codes(said.besides)).toContain('possible-gap');
  expect(said.isNoGap).toBe(true);
  // Of somebody who has one it stands first.
  const gap = { topMmHg: 170, bottomMmHg: 150 };
  expect(codes(bedsideFlags({ ...found, gap }).first)).toEqual(['possible-gap']);
  expect(codes(bedsideFlags({ ...found, gap }).besides)).not.toContain('possible-gap');
});
