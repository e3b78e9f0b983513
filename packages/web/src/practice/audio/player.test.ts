import type { SoundEvent } from '@evenfall/physiology';
import { loudnessCheck, pulseTap, voiceOf } from '@evenfall/physiology/audio';
import { expect, test } from 'vitest';
import type { Clock } from './audioClock.js';
import { LOUDNESS, SoundPlayer, warmUp } from './player.js';
import { Replay } from './replay.js';
import type { SoundCard } from './soundCard.js';

const RATE = 8_000;
type Started = { at: number; samples: Float32Array; loop: boolean; stoppedAt: number | null };

/** A card that plays nothing and notes what it was asked for; its clock goes when the test says so. */
function fakeCard() {
  const started: Started[] = [];
  const gains: { value: number }[] = [];
  /** Every node that hangs on another one, by a number for each. */
  const connected = new Set<number>();
  const running = new Set<() => void>();
  let nodes = 0;
  const node = () => {
    const own = nodes++;
    return { connect: () => connected.add(own), disconnect: () => connected.delete(own) };
  };
  const card = {
    currentTime: 10,
    baseLatency: undefined as number | undefined,
    outputLatency: undefined as number | undefined,
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
      const source = {
        ...node(),
        onended: null as (() => void) | null,
        set buffer(buffer: { getChannelData: () => Float32Array }) {
          one.samples = buffer.getChannelData();
        },
        set loop(loop: boolean) {
          one.loop = loop;
        },
        start(at = 0) {
          one.at = at;
          started.push(one);
          running.add(ended);
        },
        stop(at: number) {
          one.stoppedAt = at;
        },
      };
      const ended = () => {
        const length = one.loop ? Number.POSITIVE_INFINITY : one.samples.length / RATE;
        if (Math.min(one.at + length, one.stoppedAt ?? Number.POSITIVE_INFINITY) > card.currentTime) return;
        running.delete(ended);
        // What has ended lets go of its own line, as the Web Audio standard has it.
        source.disconnect();
        source.onended?.();
      };
      return source;
    },
  };
  const voices = () => started.filter(({ loop, stoppedAt }) => !loop && stoppedAt === null);
  const goTo = (seconds: number) => {
    card.currentTime = seconds;
    for (const ended of [...running]) ended();
  };
  return {
    card: card as unknown as SoundCard & { -readonly [Key in keyof Clock]: Clock[Key] },
    started,
    voices,
    gains,
    connected,
    goTo,
  };
}

const tap = loudnessCheck()[0] as SoundEvent;
const at = (beat: number, atSeconds: number): SoundEvent => ({ ...tap, beat, atSeconds });
const times = (voices: readonly Started[]) =>
  voices.map((one) => Number(one.at.toFixed(6))).sort((a, b) => a - b);

test('the two sounds of a beat of the heart are both played, neither of them twice', () => {
  const { card, started } = fakeCard();
  const player = new SoundPlayer(card, { seed: 5 });
  const beat = { beat: 7, levelDb: 34, centreHz: 45, durationMs: 110 };
  const events = [
    { ...beat, heart: 'first' as const, atSeconds: 30.1 },
    { ...beat, heart: 'second' as const, atSeconds: 30.4 },
  ];
  player.start(30);
  player.plan(events);
  player.plan(events);
  expect(started.map(({ at }) => at)).toEqual(
    events.map(({ atSeconds }) => player.clock.cardTimeOf(atSeconds)),
  );
  const [first, second] = started;
  expect(first?.samples).toEqual(voiceOf(events[0] as (typeof events)[0], 5, { rate: RATE }));
  expect(second?.samples).not.toEqual(first?.samples);
});

test('a pulse that is wanted heard is played at its instant, beside the sound of its beat', () => {
  const { card, started } = fakeCard();
  const player = new SoundPlayer(card, { seed: 5 });
  const pulse = { beat: 7, atSeconds: 30.2, strength: 0.6, isFelt: true };
  player.start(30);
  player.plan([at(7, 30.15), pulse]);
  player.plan([at(7, 30.15), pulse]);
  expect(started.map((one) => one.at)).toEqual(
    [30.15, 30.2].map((seconds) => player.clock.cardTimeOf(seconds)),
  );
  expect(started[1]?.samples).toEqual(pulseTap(0.6, { rate: RATE }));
});

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

test('a player that is done with leaves nothing on the card', () => {
  const { card, connected, started, goTo } = fakeCard();
  for (let made = 0; made < 10; made++) {
    const player = new SoundPlayer(card, { seed: 4 });
    warmUp(player);
    player.setRoom(60);
    player.start(0);
    player.plan([at(1, 0.1), at(2, 0.4)]);
    player.dispose();
  }
  goTo(10.1);
  expect([...connected]).toEqual([]);
  expect(started.filter(({ loop, stoppedAt }) => loop && stoppedAt === null)).toEqual([]);
});

test('a check is taken down when its taps have been heard, not before', () => {
  const { card, connected, goTo } = fakeCard();
  const player = new SoundPlayer(card, { seed: 4 });
  const begins = player.check();
  player.retire();
  goTo(10 + (begins.at(-1) ?? 0) + 0.01);
  expect(connected.size).toBeGreaterThan(0);
  goTo(20);
  expect(connected.size).toBe(0);
});

// `baseLatency` and `outputLatency`: Web Audio API 1.1.
test('behind headphones that are late the visit is as late as its sounds, and each is handed over in time', () => {
  const { card, voices } = fakeCard();
  card.baseLatency = 0.01;
  card.outputLatency = 0.24;
  const player = new SoundPlayer(card, { seed: 4 });
  player.start(100);
  // The instant of the card's clock that comes out of the headphones as the visit comes to the sound.
  player.plan([at(1, 100)]);
  const [sound] = times(voices());
  card.currentTime = (sound ?? 0) + 0.25;
  expect(player.clock.visitSeconds).toBeCloseTo(100, 9);
  // Just heard: everything up to so far ahead may still be handed over.
  player.plan([at(2, 100 + player.aheadSeconds)]);
  expect(times(voices()).at(-1)).toBeCloseTo(card.currentTime + 0.15, 9);
  expect(player.lateCount).toBe(0);
});

test('a sound that is on its way to late headphones is not played twice', () => {
  const { card, voices, goTo } = fakeCard();
  card.outputLatency = 0.5;
  const player = new SoundPlayer(card, { seed: 4 });
  player.start(0);
  for (let now = 10; now < 11.5; now += 0.02) {
    goTo(now);
    player.plan([at(1, 0.3)]);
  }
  expect(voices()).toHaveLength(1);
});

test.each([
  [undefined, undefined, 0],
  [0, -1, 0],
  [0.01, Number.NaN, 0],
  [0.02, 0.98, 1],
  [0.02, 0.99, 1],
])('a card that says %s and %s is %s s behind', (baseLatency, outputLatency, seconds) => {
  const { card } = fakeCard();
  Object.assign(card, { baseLatency, outputLatency });
  expect(new SoundPlayer(card, { seed: 4 }).clock.latencySeconds).toBeCloseTo(seconds, 9);
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

test('the noise of a place ends with a stop and is back when it goes on', () => {
  const { card, gains } = fakeCard();
  const player = new SoundPlayer(card, { seed: 4 });
  player.setRoom(70);
  const loud = gains.at(-1)?.value;
  expect(loud).toBeGreaterThan(0);
  player.start(0);
  player.stop();
  expect(gains.at(-1)?.value).toBe(0);
  player.start(3);
  expect(gains.at(-1)?.value).toBe(loud);
});

test('a replay stops when its page is hidden or its card is taken away, and says so', () => {
  const { card } = fakeCard();
  const replay = new Replay(new SoundPlayer(card, { seed: 4 }), [at(1, 1)], () => () => {});
  const page = Object.assign(new EventTarget(), { visibilityState: 'visible' });
  const audio = Object.assign(new EventTarget(), { state: 'running' });
  let stops = 0;
  const leave = replay.stopWhenAway(page, audio, () => {
    stops += 1;
  });
  replay.play(0);
  page.dispatchEvent(new Event('visibilitychange'));
  audio.dispatchEvent(new Event('statechange'));
  expect([replay.isPlaying, stops]).toEqual([true, 0]);
  page.visibilityState = 'hidden';
  page.dispatchEvent(new Event('visibilitychange'));
  expect([replay.isPlaying, stops]).toEqual([false, 1]);
  page.visibilityState = 'visible';
  replay.play(0);
  audio.state = 'interrupted';
  audio.dispatchEvent(new Event('statechange'));
  expect([replay.isPlaying, stops]).toEqual([false, 2]);
  leave();
  replay.play(0);
  audio.dispatchEvent(new Event('statechange'));
  expect(replay.isPlaying).toBe(true);
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
