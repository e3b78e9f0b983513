import { bladderFor, PROPER, type Scenario, SOUND_INSTRUMENT, scenarioOf } from '@evenfall/physiology';
import { expect, test } from 'vitest';
import { GOOD_OBSERVER } from '../observer/observer.js';
import { demonstrate } from './demonstrate.js';
import { replay, settledNeedle } from './replay.js';

// The physiology handbook (6.4) has the needle swing by 1 to 4 mmHg within the sounds and says not to read by the swing:
// what an observer reads is its middle at the sound. Held against the needle of the same visit, as it was drawn.
test.each(['quiet-morning', 'stiff-pipe', 'leaves-in-wind'])(
  '%s: what is read at a sound is the middle of the needle’s swing about it',
  (id) => {
    const scenario = scenarioOf(id) as Scenario;
    const instrument = { ...SOUND_INSTRUMENT, frictionMmHg: 0, bladder: bladderFor(scenario.armCm) };
    const exercise = demonstrate(GOOD_OBSERVER, scenario, 4, PROPER, instrument);
    const played = replay(exercise);
    const from = exercise.evidence.run?.startSeconds ?? 0;
    const sounds = played.sounds.filter(({ atSeconds, levelDb }) => atSeconds > from && levelDb >= 0);
    expect(sounds.length).toBeGreaterThan(8);
    let [off, widest] = [0, 0];
    for (const [i, sound] of sounds.slice(0, -1).entries()) {
      const next = sounds[i + 1]?.atSeconds ?? 0;
      // Beside the fall itself, so that a swing is left.
      let [low, high] = [Number.POSITIVE_INFINITY, Number.NEGATIVE_INFINITY];
      for (let at = sound.atSeconds - 0.1; at < next - 0.1; at += 0.02) {
        const shown = played.needleMmHg[Math.round(at * played.tracePerSecond)] as number;
        const beside = shown - settledNeedle(played, instrument, at);
        low = Math.min(low, beside);
        high = Math.max(high, beside);
      }
      off += (low + high) / 2 / (sounds.length - 1);
      widest = Math.max(widest, high - low);
    }
    expect(widest).toBeGreaterThan(1.5);
    // A quarter of a graduation of 2 mmHg.
    expect(Math.abs(off)).toBeLessThan(0.5);
  },
);
