import type { Aids } from '@evenfall/record';
import { useEffect, useState } from 'react';
import { LOUDNESS, SoundPlayer, warmUp } from './audio/index.js';
import type { RoomEngine } from './engine.js';

/** The sound card of this page, opened by a touch; one for the page, since a browser has few. */
let card: AudioContext | null = null;
let loudness = LOUDNESS.start;

/** How long a card may take to begin, ms. */
const LONGEST_WAIT_MS = 1000;

export function hasSoundHere(): boolean {
  return typeof window.AudioContext === 'function';
}

/** Opens it within a touch; null where it plays nothing. */
export async function openCard(): Promise<AudioContext | null> {
  if (!hasSoundHere()) return null;
  try {
    if (card === null || card.state === 'closed') card = new AudioContext();
    // A card that may not begin yet never answers: nobody waits for it at the door.
    await Promise.race([card.resume(), new Promise((go) => window.setTimeout(go, LONGEST_WAIT_MS))]);
    return card.state === 'running' ? card : null;
  } catch {
    return null;
  }
}

export function openedCard(): AudioContext | null {
  return card !== null && card.state === 'running' ? card : null;
}

export function loudnessNow(): number {
  return loudness;
}

export function setLoudness(share: number): void {
  loudness = share;
}

/** The last tap has rung out after so long. */
const TAP_SECONDS = 0.5;

/** A player for the three taps, at the loudness of the moment; answers how long they take, seconds. */
export function playCheck(on: AudioContext, isLoudspeakerVoice: boolean): number {
  const player = new SoundPlayer(on, { seed: 1, isLoudspeakerVoice });
  player.setLoudness(loudness);
  const starts = player.check();
  player.retire();
  return (starts.at(-1) ?? 0) + TAP_SECONDS;
}

/** Lets a room be heard while it is on; answers whether it is, and the ways to turn it on and off. */
export function useSound(
  engine: RoomEngine,
  { seed, aids, noiseDbA }: { readonly seed: number; readonly aids: Aids; readonly noiseDbA: number | null },
) {
  const [on, setOn] = useState<AudioContext | null>(() => (aids.hadSound ? openedCard() : null));
  const { isLoudspeakerVoice } = aids;
  const [share, setShare] = useState(loudness);
  const [player, setPlayer] = useState<SoundPlayer | null>(null);
  const [isHeldUp, setHeldUp] = useState(false);
  useEffect(() => {
    if (on === null) return;
    // A call that comes in takes the card away while the page is looked at.
    const look = () => setHeldUp(on.state !== 'running');
    look();
    on.addEventListener('statechange', look);
    return () => {
      on.removeEventListener('statechange', look);
      setHeldUp(false);
    };
  }, [on]);
  useEffect(() => {
    if (on === null) return;
    const made = new SoundPlayer(on, { seed, isLoudspeakerVoice });
    warmUp(made);
    made.setLoudness(loudness);
    setPlayer(made);
    engine.setPlayer(made);
    return () => {
      engine.setPlayer(null);
      made.dispose();
      setPlayer(null);
    };
  }, [engine, on, seed, isLoudspeakerVoice]);
  useEffect(() => player?.setRoom(noiseDbA), [player, noiseDbA]);
  return {
    isOn: on !== null,
    /** Whether the card was taken away: no sound comes, and the visit, which goes by its clock, stands still. */
    isHeldUp,
    turnOn: async () => {
      const opened = await openCard();
      setOn(opened);
      return opened !== null;
    },
    turnOff: () => setOn(null),
    loudness: share,
    setLoudness: (next: number) => {
      setLoudness(next);
      setShare(next);
      player?.setLoudness(next);
    },
    player,
  };
}
