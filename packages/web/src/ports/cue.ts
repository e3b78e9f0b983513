/** A cue at the start and at the end of a count. */
export type Cue = { readonly tick: () => void };

/** A tick's pitch, length and loudness: heard by whoever holds the device, no more. Source: decision. */
const HERTZ = 1_200;
const SECONDS = 0.03;
const LOUDNESS = 0.2;

/** The device's own sound. It is made when first asked for; a device that cannot, or may not, stays silent. */
export function deviceCue(Audio: typeof AudioContext | undefined): Cue {
  let audio: AudioContext | null = null;
  return {
    tick() {
      if (Audio === undefined) return;
      try {
        audio ??= new Audio();
        const now = audio.currentTime;
        const pitch = audio.createOscillator();
        const volume = audio.createGain();
        pitch.frequency.value = HERTZ;
        volume.gain.setValueAtTime(LOUDNESS, now);
        volume.gain.exponentialRampToValueAtTime(0.001, now + SECONDS);
        pitch.connect(volume).connect(audio.destination);
        pitch.start(now);
        pitch.stop(now + SECONDS);
        audio.resume().catch(() => undefined);
      } catch {
        // No cue is better than no count.
      }
    },
  };
}
