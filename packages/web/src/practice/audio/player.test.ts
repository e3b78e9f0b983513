import type { SoundEvent } from '@evenfall/physiology';
import { loudnessCheck, voiceOf } from '@evenfall/physiology/audio';
import { expect, test } from 'vitest';
import { LOUDNESS, SoundPlayer } from './player.js';
import { Replay } from './replay.js';
import type { SoundCard } from './soundCard.js';

const RATE = 8_000;
type Started = { at: number; samples: Float32Array; loop: boolean; stoppedAt: number | null };

/** A card that plays nothing and notes what it was asked for; its clock goes when the test says so. */
function fakeCard() {
  const started: Started[] = [];
  const gains: { value: number }[] = [];
  const node = () => ({ connect() {}, disconnect() {} });
  const card = {
    currentTime: 10,
    sampleRate: RATE,
    destination: node(),
    createBuffer: (_channels: number, length: number) => {
      const samples = new Float32Array(length);
      return { getChannelData: () => samples };
    },
    createGain() {
      const gain = {
        value: 1,
        setTargetAtTime(to: number) {
          gain.value = to;
        },
      };
      gains.push(gain);
      return { ...node(), gain };
    },
    createWaveShaper: () => ({ ...node(), curve: null }),
    createBufferSource() {
      const one: Started = { at: 0, samples: new Float32Array(0), loop: false, stoppedAt: null };
      return {
        ...node(),
        set buffer(buffer: { getChannelData: () => Float32Array }) {
          one.samples = buffer.getChannelData();
        },
        set loop(loop: boolean) {
          one.loop = loop;
        },
        start(at = 0) {
          one.at = at;
          started.push(one);
        },
        stop(at: number) {
          one.stoppedAt = at;
        },
      };
    },
  };
  const voices = () => started.filter(({ loop, stoppedAt }) => !loop && stoppedAt === null);
  return { card: card as unknown as SoundCard & { currentTime: number }, started, voices, gains };
}

const tap = loudnessCheck()[0] as SoundEvent;
const at = (beat: number, atSeconds: number): SoundEvent => ({ ...tap, beat, atSeconds });
const times = (voices: readonly Started[]) =>
  voices.map((one) => Number(one.at.toFixed(6))).sort((a, b) => a - b);

test('it starts low', () => {
  const { card, gains } = fakeCard();
  const player = new SoundPlayer(card, { seed: 1 });
  expect(gains[0]?.value).toBe(LOUDNESS.start);
  expect(LOUDNESS.start).toBeLessThan(LOUDNESS.warnFrom);
  player.setLoudness(7);
  expect(gains[0]?.value).toBe(1);
  player.setLoudness(-1);
  expect(gains[0]?.value).toBe(0);
});

test('a sound is handed to the card’s clock for its instant, with the samples of the rendered run', () => {
  const { card, voices } = fakeCard();
  const player = new SoundPlayer(card, { seed: 4 }, 0);
  player.start(100);
  player.plan([at(1, 100), at(2, 100.8123)]);
  // The visit's second 100 is heard 0.15 s from the card's 10.
  expect(times(voices())).toEqual([10.15, 10.9623]);
  expect(Array.from(voices()[0]!.samples)).toEqual(Array.from(voiceOf(at(1, 100), 4, { rate: RATE })));
});

test('nothing is played before it was started, and nothing that is over', () => {
  const { card, voices } = fakeCard();
  const player = new SoundPlayer(card, { seed: 4 }, 0);
  player.plan([at(1, 1)]);
  expect(voices()).toHaveLength(0);
  player.start(5);
  player.plan([at(1, 1), at(2, 4.8), at(3, 5.2)]);
  expect(times(voices())).toEqual([10.35]);
});

test('what a page that hung missed by a moment is played at once and counted; what is longer ago is not', () => {
  const { card, voices } = fakeCard();
  const player = new SoundPlayer(card, { seed: 4 }, 0);
  player.start(0);
  card.currentTime = 11;
  // The visit stands at 0.85 s.
  player.plan([at(1, 0.2), at(2, 0.74), at(3, 0.76), at(4, 1)]);
  expect(times(voices())).toEqual([11, 11.15]);
  expect(player.lateCount).toBe(1);
});

test('planned again it is played once; at another instant or not at all any more, it is taken back', () => {
  const { card, started, voices } = fakeCard();
  const player = new SoundPlayer(card, { seed: 4 }, 0);
  player.start(0);
  player.plan([at(1, 0.2), at(2, 1)]);
  player.plan([at(1, 0.2), at(2, 1)]);
  expect(started).toHaveLength(2);
  player.plan([at(1, 0.2), at(2, 1.1)]);
  expect(times(voices())).toEqual([10.35, 11.25]);
  player.plan([at(1, 0.2)]);
  expect(times(voices())).toEqual([10.35]);
  // What is heard already is not cut off.
  card.currentTime = 10.4;
  player.plan([]);
  expect(times(voices())).toEqual([10.35]);
});

test('stopped, all of it ends within 10 ms and the visit stays where it was', () => {
  const { card, started, voices } = fakeCard();
  const player = new SoundPlayer(card, { seed: 4 }, 0);
  player.start(0);
  player.plan([at(1, 0.2), at(2, 1)]);
  card.currentTime = 10.4;
  player.stop();
  expect(voices()).toHaveLength(0);
  expect(started.map(({ stoppedAt }) => stoppedAt)).toEqual([10.41, 0]);
  expect(player.clock.visitSeconds).toBeCloseTo(0.25, 9);
  card.currentTime = 20;
  expect(player.clock.visitSeconds).toBeCloseTo(0.25, 9);
});

test('the check has three taps, told when each begins', () => {
  const { card, voices } = fakeCard();
  const begins = new SoundPlayer(card, { seed: 4 }).check();
  expect(begins).toHaveLength(3);
  expect(times(voices())).toEqual(begins.map((after) => Number((10 + after).toFixed(6))));
});

test('room and air go round; turned to nothing they are silent', () => {
  const { card, started, gains } = fakeCard();
  const player = new SoundPlayer(card, { seed: 4 });
  player.setAir('valve', 2);
  player.setRoom(70);
  expect(started.map(({ loop }) => loop)).toEqual([true, true]);
  expect(gains.slice(1).every(({ value }) => value > 0)).toBe(true);
  player.setAir('valve', 0);
  player.setRoom(null);
  expect(gains.slice(1).map(({ value }) => value)).toEqual([0, 0]);
  expect(started).toHaveLength(2);
});

test('a replay plays every sound from where it is started, each once and at its instant, and seeks', () => {
  const { card, started, voices } = fakeCard();
  const player = new SoundPlayer(card, { seed: 4 });
  const events = Array.from({ length: 30 }, (_, beat) => at(beat, beat * 0.8));
  let look = () => {};
  let isLooking = false;
  const replay = new Replay(player, events, (_ms, call) => {
    look = call;
    isLooking = true;
    return () => {
      isLooking = false;
    };
  });
  replay.play(8);
  for (; card.currentTime < 14; card.currentTime += 0.2) look();
  const heard = Array.from({ length: 60 }, (_, beat) => 10.15 + 0.8 * beat).filter((time) => time < 15);
  expect(times(voices())).toEqual(heard.map((time) => Number(time.toFixed(6))));
  replay.seek(1.6);
  const now = card.currentTime;
  expect(times(voices().filter((one) => one.at > now))).toEqual(
    [now + 0.15, now + 0.95].map((time) => Number(time.toFixed(6))),
  );
  replay.stop();
  expect([isLooking, replay.isPlaying]).toEqual([false, false]);
  replay.seek(12);
  expect(replay.visitSeconds).toBe(12);
  const before = started.length;
  replay.play();
  expect(started.length).toBeGreaterThan(before);
  expect(Math.min(...times(started.slice(before)))).toBeCloseTo(card.currentTime + 0.15 + 0, 6);
});
