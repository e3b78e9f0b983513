import { useRef } from 'react';
import type { SoundPlayer } from './audio/index.js';
import { arteryY, heldAt } from './drawing/placing.js';
import type { RoomEngine } from './engine.js';
import type { PracticeDraft } from './keptPractice.js';
import { CONTACT_SECONDS, noiseOf, type Touched } from './touched.js';

/** The noise that a hand makes at what it touches, where it hides no sound. */
export function useHandNoise(
  engine: RoomEngine,
  draft: PracticeDraft,
  player: SoundPlayer | null,
): (what: Touched) => void {
  const touched = useRef(0);
  const rubbedAt = useRef(Number.NEGATIVE_INFINITY);
  return (what) => {
    const { piece, visit } = draft;
    const how = piece === null ? 'light' : heldAt(piece, arteryY(visit.seed)).held;
    const noise = noiseOf(what, { isOn: piece !== null, how });
    // A noise of the hands lies on no sound of the arm: the model has none that it would hide.
    if (noise === null || player === null || engine.willSound(CONTACT_SECONDS)) return;
    const nowMs = performance.now();
    if (what === 'moved' && nowMs - rubbedAt.current < 1000 * CONTACT_SECONDS) return;
    if (what === 'moved') rubbedAt.current = nowMs;
    touched.current += 1;
    player.touch(noise, touched.current);
  };
}
