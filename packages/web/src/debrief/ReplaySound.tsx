import { TICKS_PER_SECOND } from '@evenfall/physiology';
import { type Debrief, type Exercise, replay, traceAt } from '@evenfall/practice';
import { useEffect, useMemo, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { LOUDNESS, Replay, SoundPlayer, warmUp } from '../practice/audio/index.js';
import { FRESH_EARS, noiseHeard, readEars } from '../practice/ears.js';
import { deviceShelf } from '../practice/keptPractice.js';
import { loudnessNow, openCard, setLoudness as setRoomLoudness } from '../practice/sound.js';
import { noiseNow } from '../practice/visit.js';

type ReplayProps = {
  readonly exercise: Exercise;
  readonly result: Debrief & { readonly fall: NonNullable<Debrief['fall']> };
};

/** How long before a sound or a mark it is played from, seconds. */
const LEAD_SECONDS = 3;
const STEP_SECONDS = 0.1;

type Playing = {
  readonly card: AudioContext;
  readonly player: SoundPlayer;
  readonly again: Replay;
  readonly leave: () => void;
};

/**
 * The letting down heard again from any instant, with the voice, the loudness and the noise that the room had. The page's sound card is
 * asked for when it is first played; where nobody looks at the page it stops.
 */
export function ReplaySound({ exercise, result }: ReplayProps) {
  const { words } = useApp();
  const { fall, marks, sounds, cuffMmHg, tracePerSecond } = result;
  const events = useMemo(() => replay(exercise).sounds, [exercise]);
  const [at, setAt] = useState(fall.peakSeconds);
  const [isPlaying, setPlaying] = useState(false);
  const [loudness, setLoudness] = useState<number>(loudnessNow());
  const playing = useRef<Playing | null>(null);
  const end = fall.endSeconds;
  useEffect(() => {
    if (!isPlaying) return;
    let frame = 0;
    const follow = () => {
      const seconds = playing.current?.again.visitSeconds ?? end;
      if (seconds >= end) {
        playing.current?.again.stop();
        setPlaying(false);
        setAt(fall.peakSeconds);
        return;
      }
      setAt(Math.max(fall.peakSeconds, seconds));
      frame = requestAnimationFrame(follow);
    };
    frame = requestAnimationFrame(follow);
    return () => cancelAnimationFrame(frame);
  }, [isPlaying, end, fall.peakSeconds]);
  useEffect(
    () => () => {
      playing.current?.leave();
      playing.current?.again.stop();
      playing.current?.player.dispose();
      playing.current = null;
    },
    [],
  );
  if (events.length === 0) return null;
  const start = async (from: number) => {
    const card = await openCard();
    if (card === null) return;
    if (playing.current?.card !== card) {
      playing.current?.leave();
      playing.current?.player.dispose();
      playing.current = made(card, exercise, fall.peakSeconds, events, () => setPlaying(false));
    }
    const { player, again } = playing.current;
    player.setLoudness(loudness);
    again.play(from);
    setAt(from);
    setPlaying(true);
  };
  const stop = () => {
    playing.current?.again.stop();
    setPlaying(false);
  };
  const seek = (to: number) => {
    setAt(to);
    if (isPlaying) playing.current?.again.seek(to);
  };
  const first = sounds.find(({ atSeconds, isAudible }) => isAudible && atSeconds > fall.peakSeconds);
  const before = (seconds: number) => Math.max(fall.peakSeconds, seconds - LEAD_SECONDS);
  const says = words.sentence('debrief.replayAt', {
    seconds: words.say.number(at - fall.peakSeconds, 1),
    mmHg: traceAt(cuffMmHg, tracePerSecond, at),
  });
  return (
    <div className="debrief-replay not-printed">
      <h3>{words.sentence('debrief.replay')}</h3>
      <p className="small soft">{words.sentence('debrief.replayHint')}</p>
      <div className="trend-readout">
        <label>
          <span className="small soft">{words.sentence('debrief.replayFrom')}</span>
          <input
            type="range"
            min={fall.peakSeconds}
            max={end}
            step={STEP_SECONDS}
            value={at}
            aria-valuetext={says}
            onInput={({ currentTarget }) => seek(currentTarget.valueAsNumber)}
          />
        </label>
        <output aria-live="off">{says}</output>
      </div>
      <div className="buttons">
        <button type="button" className="button" onClick={() => (isPlaying ? stop() : void start(at))}>
          {words.sentence(isPlaying ? 'debrief.replayStop' : 'debrief.replayPlay')}
        </button>
        {first === undefined ? null : (
          <button
            type="button"
            className="button button-quiet"
            onClick={() => void start(before(first.atSeconds))}
          >
            {words.sentence('debrief.replayFirst')}
          </button>
        )}
        {marks.map(({ what, atSeconds }) =>
          atSeconds === null ? null : (
            <button
              key={what}
              type="button"
              className="button button-quiet"
              onClick={() => void start(before(atSeconds))}
            >
              {words.sentence('debrief.replayMark', { what: words.sentence(`debrief.${what}`) })}
            </button>
          ),
        )}
      </div>
      <div className="trend-readout">
        <label>
          <span className="small soft">{words.sentence('debrief.loudness')}</span>
          <input
            type="range"
            min={0}
            max={1}
            step={0.05}
            value={loudness}
            aria-valuetext={words.sentence('debrief.loudnessSays', { share: loudness })}
            onInput={({ currentTarget }) => {
              setLoudness(currentTarget.valueAsNumber);
              setRoomLoudness(currentTarget.valueAsNumber);
              playing.current?.player.setLoudness(currentTarget.valueAsNumber);
            }}
          />
        </label>
        {loudness >= LOUDNESS.warnFrom ? <p role="status">{words.sentence('debrief.tooLoud')}</p> : null}
      </div>
    </div>
  );
}

function made(
  card: AudioContext,
  { seed, scenario, circumstances, instrument, actions }: Exercise,
  untilSeconds: number,
  events: ReturnType<typeof replay>['sounds'],
  onStopped: () => void,
): Playing {
  const { isLoudspeakerVoice } = (readEars(deviceShelf()) ?? FRESH_EARS).aids;
  const player = new SoundPlayer(card, { seed, isLoudspeakerVoice });
  warmUp(player);
  const before = actions.filter(({ tick }) => tick <= untilSeconds * TICKS_PER_SECOND);
  player.setRoom(noiseHeard(noiseNow({ scenario, circumstances, instrument, actions: before })));
  // The noise is of the place and comes with the sounds.
  player.stop();
  const again = new Replay(player, events);
  return { card, player, again, leave: again.stopWhenAway(document, card, onStopped) };
}
