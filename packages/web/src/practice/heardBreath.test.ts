import { makePerson, PROPER, SCENARIOS, type Scenario, scenarioOf, startRig } from '@evenfall/physiology';
import { AUDIO_FIGURES, breathSound } from '@evenfall/physiology/audio';
import { expect, test } from 'vitest';
import { breathDbfs } from './heardBreath.js';

const of = (id: string) => scenarioOf(id) as Scenario;

// Physiology handbook 5 and 13: a wheeze and Kussmaul's breathing are heard across a table, a quiet breath is not.
test('who is heard without a chest piece on the chest', () => {
  expect(breathDbfs(of('quiet-morning'), 'hand', 1)).toBeNull();
  expect(breathDbfs(of('tight-chest'), 'hand', 1)).not.toBeNull();
  expect(breathDbfs(of('deep-and-fast'), 'hand', 2.5)).not.toBeNull();
  for (const scenario of SCENARIOS) expect(breathDbfs(scenario, 'chest', 1)).not.toBeNull();
});

// The model book masks sounds by the noise of the place alone (11): a breath beside the arm may hide none of 0 dB or more.
test.each(['tight-chest', 'deep-and-fast'])(
  '%s: beside the sounds of the arm no breath is louder than one of 0 dB',
  (id) => {
    const rig = startRig(makePerson(of(id), 7), PROPER, {
      bladder: 'adult',
      gauge: 'aneroid',
      zeroOffsetMmHg: 0,
      scaleError: 0,
      frictionMmHg: 0.5,
      leakMmHgPerMinute: 0,
      valveExponent: 0.75,
    });
    const zeroDb = 10 ** (AUDIO_FIGURES.thresholdDbfs.value / 20);
    for (let breath = 0; breath < 20; breath++) {
      rig.advance(rig.tick + 400);
      const { breathing } = rig;
      const dbfs = breathDbfs(of(id), 'arm', breathing.depth) ?? 0;
      const gain = 10 ** ((dbfs - AUDIO_FIGURES.breathDbfs.value) / 20);
      const samples = breathSound(breathing, id === 'tight-chest', 7, 8000);
      const loudest = samples.reduce((most, one) => Math.max(most, Math.abs(gain * one)), 0);
      expect(loudest).toBeGreaterThan(zeroDb / 10);
      // A wheeze lies on the breath where that is loud: a tenth over it at most.
      expect(loudest).toBeLessThan(1.1 * zeroDb);
    }
  },
);
