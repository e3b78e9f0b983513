import { SCENARIOS, type Scenario, scenarioOf } from '@evenfall/physiology';
import { useEffect, useState } from 'react';
import { useApp } from '../app/context.js';
import { Field } from '../parts/Field.js';
import { SimulatedPage } from '../parts/SimulatedPage.js';
import { useWakeLock } from '../round/useWakeLock.js';
import { NO_AIDS } from './ears.js';
import type { RoomEngine } from './engine.js';
import { LiveGauge } from './LiveGauge.js';
import { Loudness } from './panels/EarsPanel.js';
import { SoundStrip } from './SoundStrip.js';
import { scenarioLesson, scenarioTitle, whoText } from './scenarioText.js';
import { openCard, useSound } from './sound.js';
import { useKeys } from './useKeys.js';
import { truthOf, useShown } from './useShown.js';

const JUMP_SECONDS = 5;
const HEARD = { ...NO_AIDS, hadSound: true };

/** One laptop, a projector and no phones: a large gauge and the sound for all; the teacher stops, asks, reveals, replays. */
export function RoomModePage() {
  const { words } = useApp();
  const say = words.sentence;
  const [chosen, setChosen] = useState<{ readonly scenario: Scenario; readonly seed: number } | null>(null);
  const [id, setId] = useState<string>(SCENARIOS[0]?.id ?? '');
  const begin = async (scenario: string) => {
    // Opened by this touch, for a page may not begin to sound by itself.
    await openCard();
    const found = scenarioOf(scenario);
    const seed = crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;
    if (found !== undefined) setChosen({ scenario: found, seed });
  };
  const back = { href: '/practice', text: say('practice.title') };
  return (
    <SimulatedPage title={say('practice.roomTitle')} back={back} isBare isWide>
      {chosen === null ? (
        <form
          className="form ears"
          onSubmit={(event) => {
            event.preventDefault();
            void begin(id);
          }}
        >
          <p>{say('practice.roomLead')}</p>
          <p className="notice">{say('practice.startLow')}</p>
          <Field label={say('practice.roomWho')}>
            {(control) => (
              <select {...control} value={id} onChange={(event) => setId(event.target.value)}>
                {SCENARIOS.map((one) => (
                  <option key={one.id} value={one.id}>
                    {`${scenarioTitle(one, words)} · ${whoText(one, words)}`}
                  </option>
                ))}
              </select>
            )}
          </Field>
          <p className="small soft">{say('practice.roomKeys')}</p>
          <button type="submit" className="button button-first button-large">
            {say('practice.roomBegin')}
          </button>
        </form>
      ) : (
        <Projected key={chosen.seed} {...chosen} onAnother={() => setChosen(null)} />
      )}
    </SimulatedPage>
  );
}

type ProjectedProps = {
  readonly scenario: Scenario;
  readonly seed: number;
  readonly onAnother: () => void;
};

function Projected({ scenario, seed, onAnother }: ProjectedProps) {
  const { words } = useApp();
  const say = words.sentence;
  const { exercise, engine, isPlaying, play, stop, seek } = useShown(scenario, seed);
  const [isRevealed, setRevealed] = useState(false);
  const [showsSounds, setShowsSounds] = useState(false);
  const sound = useSound(engine, {
    seed,
    aids: HEARD,
    noiseDbA: scenario.noiseDbA > 45 ? scenario.noiseDbA : null,
  });
  useWakeLock(true);
  useEffect(() => play(), [play]);
  const toggle = () => (isPlaying ? stop() : play());
  const jump = (by: number) => seek(engine.visit.seconds + by);
  useKeys((key, { repeat }) => {
    if (key === 'ArrowLeft') jump(-JUMP_SECONDS);
    else if (key === 'ArrowRight') jump(JUMP_SECONDS);
    else if (repeat) return key === ' ';
    else if (key === ' ') toggle();
    else if (key === 't' || key === 'T') setRevealed((was) => !was);
    else if (key === 'n' || key === 'N') onAnother();
    else return false;
    return true;
  });
  const was = truthOf(exercise);
  const lesson = scenarioLesson(scenario, words);
  return (
    <div className="projected">
      <div className="projected-gauge">
        <LiveGauge engine={engine} />
      </div>
      <div className="projected-beside">
        <p className="projected-state" role="status">
          {say(isPlaying ? 'practice.roomListens' : 'practice.roomAsk')}
        </p>
        <Clock engine={engine} seconds={exercise.seconds} />
        {showsSounds ? <SoundStrip engine={engine} noiseDbA={scenario.noiseDbA} /> : null}
        {isRevealed ? (
          <div className="projected-truth">
            <p className="projected-numbers">
              {Math.round(was.longRun.systolic)}/{Math.round(was.longRun.diastolic)}
            </p>
            <p>
              {say('practice.truth')} · {say('practice.pulse')} {words.say.rate(was.pulsePerMinute)} ·{' '}
              {say('practice.breaths')} {words.say.rate(was.breathsPerMinute)}
            </p>
            {lesson === null ? null : <p>{lesson}</p>}
          </div>
        ) : null}
        <div className="room-buttons">
          <button type="button" className="button button-first" onClick={toggle}>
            {say(isPlaying ? 'practice.stop' : 'practice.goOnNow')}
          </button>
          <button type="button" className="button" onClick={() => setRevealed(!isRevealed)}>
            {say(isRevealed ? 'practice.hide' : 'practice.reveal')}
          </button>
          <button type="button" className="button" onClick={() => jump(-JUMP_SECONDS)}>
            {say('practice.back5')}
          </button>
          <button type="button" className="button" onClick={() => jump(JUMP_SECONDS)}>
            {say('practice.forth5')}
          </button>
          <button type="button" className="button" onClick={() => setShowsSounds(!showsSounds)}>
            {say(showsSounds ? 'practice.hideSounds' : 'practice.showSoundsNow')}
          </button>
          <button type="button" className="button" onClick={onAnother}>
            {say('practice.another')}
          </button>
        </div>
        {sound.isOn ? (
          <Loudness share={sound.loudness} onChange={sound.setLoudness} />
        ) : (
          <button type="button" className="button" onClick={() => void sound.turnOn()}>
            {say('practice.soundOn')}
          </button>
        )}
        <p className="small soft">{say('practice.roomKeys')}</p>
      </div>
    </div>
  );
}

/** How far it is, second by second. */
function Clock({ engine, seconds }: { readonly engine: RoomEngine; readonly seconds: number }) {
  const { words } = useApp();
  const [now, setNow] = useState(0);
  useEffect(() => engine.subscribe(({ now: at }) => setNow(Math.floor(at.seconds))), [engine]);
  return (
    <p className="soft">{words.sentence('practice.secondsOf', { seconds: now, all: Math.round(seconds) })}</p>
  );
}
