import { createHash } from 'node:crypto';
import {
  heartSounds,
  makePerson,
  PROPER,
  type Scenario,
  type SoundEvent,
  scenarioOf,
} from '@evenfall/physiology';
import { heardLetDown, loudnessCheck, renderRun, voiceOf, wav } from '@evenfall/physiology/audio';
import { expect, test } from './evenfall.js';
import { soundBundle } from './soundBundle.js';

/** What the page loads: the sounds and their player. */
type Sound = typeof import('./soundEntry.js');
declare global {
  interface Window {
    sound: Sound;
  }
}

const hashOf = (bytes: Uint8Array) => createHash('sha256').update(bytes).digest('hex');
const bytesOf = (samples: Float32Array) =>
  new Uint8Array(samples.buffer, samples.byteOffset, samples.byteLength);
const CASES = [
  ['stiff-pipe', 3],
  ['leaves-in-wind', 5],
  ['open-gate', 8],
] as const;

test('the browser makes the same sounds as the command line, under the policy of the page, and begins them in time', async ({
  page,
  demo,
}) => {
  const code = await soundBundle();
  await page.route('**/sound-under-test.js', (route) =>
    route.fulfill({ contentType: 'text/javascript', body: code }),
  );
  await page.goto(`${demo.address}/`);
  await page.evaluate(async () => {
    const path = '/sound-under-test.js';
    window.sound = (await import(path)) as Sound;
  });

  await test.step('whole runs are the same to the last bit', async () => {
    for (const [id, seed] of CASES) {
      const there = await page.evaluate(
        async ([name, number]) => {
          const { heardLetDown: heard, renderRun: render, scenarioOf: of } = window.sound;
          const { simulation, contacts, seconds } = heard(of(name) as Scenario, number, 4);
          const cuff = { fromSeconds: 0, perSecond: simulation.tracePerSecond, mmHg: simulation.cuff };
          const options = { seed: number, fromSeconds: 0, toSeconds: seconds, roomDbA: 60, cuff, contacts };
          const { samples } = render(simulation.sounds, options);
          const digest = await crypto.subtle.digest('SHA-256', samples.slice().buffer);
          return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
        },
        [id, seed] as const,
      );
      const { simulation, contacts, seconds } = heardLetDown(scenarioOf(id) as Scenario, seed, 4);
      const cuff = { fromSeconds: 0, perSecond: simulation.tracePerSecond, mmHg: simulation.cuff };
      const here = renderRun(simulation.sounds, { seed, fromSeconds: 0, toSeconds: seconds, roomDbA: 60, cuff, contacts }); // biome-ignore format: one thought
      expect(there, id).toBe(hashOf(bytesOf(here.samples)));
    }
  });

  await test.step('so is a minute of a fibrillating heart at its apex', async () => {
    const there = await page.evaluate(async () => {
      const {
        heartSounds: heart,
        renderRun: render,
        makePerson: make,
        scenarioOf: of,
        PROPER: proper,
      } = window.sound;
      const sounds = heart(make(of('storm-of-leaves') as Scenario, 4), proper, 0, 60);
      const { samples } = render(sounds, { seed: 4, fromSeconds: 0, toSeconds: 60 });
      const digest = await crypto.subtle.digest('SHA-256', samples.slice().buffer);
      return Array.from(new Uint8Array(digest), (byte) => byte.toString(16).padStart(2, '0')).join('');
    });
    const sounds = heartSounds(makePerson(scenarioOf('storm-of-leaves') as Scenario, 4), PROPER, 0, 60);
    expect(sounds.length).toBeGreaterThan(200);
    const here = renderRun(sounds, { seed: 4, fromSeconds: 0, toSeconds: 60 });
    expect(there).toBe(hashOf(bytesOf(here.samples)));
  });

  await test.step('the browser reads the file that was written: rate, length, every sample to 16 bits', async () => {
    const samples = voiceOf(loudnessCheck()[0] as SoundEvent, 1, { rate: 48_000 });
    const file = wav(samples, 48_000, 'SIMULATED');
    const read = await page.evaluate(async (bytes) => {
      const card = new OfflineAudioContext(1, 1, 48_000);
      const decoded = await card.decodeAudioData(Uint8Array.from(bytes).buffer);
      return { rate: decoded.sampleRate, samples: Array.from(decoded.getChannelData(0)) };
    }, Array.from(file));
    expect([read.rate, read.samples.length]).toEqual([48_000, samples.length]);
    const worst = samples.reduce((most, x, i) => Math.max(most, Math.abs(x - (read.samples[i] ?? 9))), 0);
    expect(worst).toBeLessThan(1 / 32_767);
  });

  await test.step('the player begins each sound at its sample, and plays what was rendered', async () => {
    const { off, worst, heard } = await page.evaluate(async () => {
      const {
        SoundPlayer,
        LOUDNESS,
        loudnessCheck: check,
        voiceOf: voice,
        LOOK_AHEAD_SECONDS,
      } = window.sound;
      const rate = 44_100;
      const card = new OfflineAudioContext(1, 5 * rate, rate);
      const player = new SoundPlayer(card, { seed: 9 });
      const events = [0.0123, 0.9, 1.71111, 2.5, 3.33].map((atSeconds, beat) => ({
        ...(check()[0] as SoundEvent),
        beat,
        atSeconds: 60 + atSeconds,
        levelDb: 38,
      }));
      player.start(60);
      player.plan(events);
      const played = (await card.startRendering()).getChannelData(0);
      let most = 0;
      const late = events.map((event) => {
        const samples = voice(event, 9, { rate });
        const due = (event.atSeconds - 60 + LOOK_AHEAD_SECONDS) * rate;
        const first = Math.floor(due) - 20;
        const begun = played.findIndex((x, i) => i >= first && Math.abs(x) > 1e-7);
        const own = samples.findIndex((x) => Math.abs(x) * LOUDNESS.start > 1e-7);
        // Between two samples the card interpolates: what it plays is held against the nearer one, at its loudest.
        const peak = (of: Float32Array, from: number) =>
          of.subarray(from, from + samples.length).reduce((high, x) => Math.max(high, Math.abs(x)), 0);
        most = Math.max(most, Math.abs(peak(played, first) / (LOUDNESS.start * peak(samples, 0)) - 1));
        return ((begun - own - due) / rate) * 1000;
      });
      return { off: late, worst: most, heard: played.some((x) => x !== 0) };
    });
    expect(heard).toBe(true);
    for (const ms of off) expect(Math.abs(ms)).toBeLessThan(1);
    expect(worst).toBeLessThan(0.02);
  });

  await test.step('on a live card with the processor four times slower, every sound is handed over before it is due', async () => {
    const devtools = await page.context().newCDPSession(page);
    await devtools.send('Emulation.setCPUThrottlingRate', { rate: 4 });
    const { late, planned, lateCount } = await page.evaluate(async () => {
      const { SoundPlayer, Replay, heardLetDown: heard, scenarioOf: of } = window.sound;
      const card = new AudioContext();
      await card.resume();
      const { simulation, letDownFromSeconds } = heard(of('cold-hands') as Scenario, 2, 4);
      const events = simulation.sounds.filter(({ atSeconds }) => atSeconds > letDownFromSeconds);
      const begun: { at: number; now: number }[] = [];
      const make = card.createBufferSource.bind(card);
      card.createBufferSource = () => {
        const source = make();
        const start = source.start.bind(source);
        source.start = (at = 0) => {
          begun.push({ at, now: card.currentTime });
          start(at);
        };
        return source;
      };
      const player = new SoundPlayer(card, { seed: 2 });
      player.setLoudness(0);
      const replay = new Replay(player, events);
      const from = (events[0] as SoundEvent).atSeconds - 0.1;
      replay.play(from);
      const instant = player.clock.cardTimeOf(from);
      await new Promise((resolve) => setTimeout(resolve, 4_000));
      replay.stop();
      const { lateCount } = player;
      await card.close();
      const models = events.map(({ atSeconds }) => instant + atSeconds - from);
      const off = begun.map(({ at }) => Math.min(...models.map((model) => Math.abs(model - at))) * 1000);
      return {
        planned: begun.length,
        lateCount,
        late: begun.map(({ at, now }, i) => (now > at ? 1e9 : (off[i] ?? 1e9))),
      };
    });
    expect(planned).toBeGreaterThan(5);
    expect(lateCount).toBe(0);
    expect(Math.max(...late)).toBeLessThan(1);
  });
});
