import { noiseOf, type Scenario } from '@evenfall/physiology';
import { debrief } from '@evenfall/practice';
import { exerciseFigure } from '@evenfall/report';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { FigureShown } from '../away/FigureShown.js';
import { runDrawn } from '../debrief/runFigure.js';
import { useWakeLock } from '../round/useWakeLock.js';
import { ClassSaid } from './ClassSaid.js';
import { ShownArm } from './drawing/ShownArm.js';
import { ShownGrip } from './drawing/ShownGrip.js';
import { NO_AIDS, noiseHeard } from './ears.js';
import type { RoomEngine } from './engine.js';
import { heldAgainst } from './heldAgainst.js';
import { LiveGauge } from './LiveGauge.js';
import { Loudness } from './panels/EarsPanel.js';
import { notAsked, type Reveal, revealNext } from './reveal.js';
import { SoundStrip } from './SoundStrip.js';
import { StepHeading } from './StepHeading.js';
import type { Said } from './said.js';
import { scenarioLesson, scenarioTitle, whoText } from './scenarioText.js';
import { besideText, isCounted, sensedText } from './shownText.js';
import { useSound } from './sound.js';
import { TruthBeyond } from './TruthBeyond.js';
import { KEYS_HERE, useKeys } from './useKeys.js';
import { beforeFirst, stepsBy, useAt, useShown } from './useShown.js';

const JUMP_SECONDS = 5;
/** As low as it may get, and as narrow: what room is left stretches it, and its lettering with it. */
const FIGURE = { height: 255, leastWidth: 540, mostWidth: 780, fills: true } as const;
const HEARD = { ...NO_AIDS, hadSound: true };

type ProjectedProps = {
  readonly scenario: Scenario;
  readonly seed: number;
  readonly onAnother: () => void;
};

/**
 * What a whole room looks at and listens to. The truth and the figure come where the gauge is large, which makes room for them; buttons
 * and the field of what the class said stay where the hand is, and on a projector nothing of it all is below its edge.
 */
export function Projected({ scenario, seed, onAnother }: ProjectedProps) {
  const { words } = useApp();
  const say = words.sentence;
  const { shown, exercise, engine, isPlaying, isOver, play, stop, seek } = useShown(scenario, seed);
  const [reveal, setReveal] = useState<Reveal>('hidden');
  const isRevealed = reveal === 'shown';
  const [showsSounds, setShowsSounds] = useState(false);
  const [said, setSaid] = useState<readonly Said[]>([]);
  const noiseDbA = noiseOf(exercise.scenario, exercise.circumstances);
  const sound = useSound(engine, { seed, aids: HEARD, noiseDbA: noiseHeard(noiseDbA) });
  useWakeLock(true);
  useEffect(() => play(), [play]);
  useEffect(() => {
    if (sound.isHeldUp) stop();
  }, [sound.isHeldUp, stop]);
  const goOn = async () => {
    if (sound.isHeldUp) await sound.turnOn();
    play();
  };
  const toggle = () => (isPlaying ? stop() : void goOn());
  const jump = (by: number) => seek(engine.visit.seconds + by);
  const first = beforeFirst(shown);
  const touchTruth = () => setReveal((was) => revealNext(was, isOver));
  useKeys((key, { repeat }) => {
    const isTruth = key === 't' || key === 'T';
    if (!isTruth) setReveal(notAsked);
    if (key === 'ArrowLeft') jump(-JUMP_SECONDS);
    else if (key === 'ArrowRight') jump(JUMP_SECONDS);
    else if (repeat) return key === ' ';
    else if (key === ' ') toggle();
    else if (isTruth) touchTruth();
    else if (key === 'n' || key === 'N') onAnother();
    else return false;
    return true;
  });
  const whole = useRef<HTMLDivElement>(null);
  useEffect(() => {
    const place = whole.current;
    if (place === null) return;
    // A button that was clicked lets go of the keys: the space bar stops and goes on, whatever was clicked last.
    const letGo = ({ detail, target }: MouseEvent) => {
      if (!(target instanceof Element && target.closest('[data-truth]'))) setReveal(notAsked);
      if (detail > 0 && target instanceof Element && target.closest('button') !== null)
        place.focus({ preventScroll: true });
    };
    place.addEventListener('click', letGo);
    return () => place.removeEventListener('click', letGo);
  }, []);
  const make = useCallback((seconds: number) => stepsBy(shown, seconds).at(-1), [shown]);
  const step = useAt(engine, make, (one) => `${one?.code} ${one?.atSeconds}`);
  const result = useMemo(() => (isRevealed ? debrief(exercise) : null), [isRevealed, exercise]);
  const held = useMemo(() => (result === null ? null : heldAgainst(result)), [result]);
  // A paradox is two numbers: the first beats, and from where every one is heard.
  const every = shown.steps.find((one) => one.code === 'every-beat')?.mmHg ?? null;
  const lesson = scenarioLesson(scenario, words);
  const state = sound.isHeldUp
    ? 'showing.stoppedSound'
    : reveal === 'asked'
      ? 'showing.truthAsked'
      : isPlaying
        ? sensedText(step?.code ?? 'looking', shown.manner)
        : isOver
          ? 'showing.roomOver'
          : 'practice.roomAsk';
  const code = step?.code ?? 'looking';
  // Where nothing is read off the gauge, what is counted has its place.
  const isWatched = isCounted(code);
  const picture = <ShownArm engine={engine} exercise={exercise} code={code} />;
  return (
    <div ref={whole} className="projected" {...KEYS_HERE}>
      <StepHeading text={say('showing.roomPlaying')} isUnseen />
      <div
        className={[
          'projected-sight',
          ...(held === null ? [] : ['projected-shown']),
          ...(showsSounds ? ['projected-heard'] : []),
        ].join(' ')}
      >
        <div className="projected-read">
          <div className="projected-gauge">{isWatched ? picture : <LiveGauge engine={engine} />}</div>
          {result === null || held === null ? null : (
            <div className="projected-says">
              <p className="small soft">{say('debrief.had')}</p>
              <div className="projected-had">
                <p className="projected-numbers">{say('showing.numbersNow', held.had)}</p>
                <p>{say('showing.trueOnAverage', held.truth)}</p>
              </div>
              {every === null || held.had.systolic === null ? null : (
                <p>{say('showing.apart', { first: held.had.systolic, every })}</p>
              )}
              {held.isMuffled ? <p>{say('showing.isMuffled')}</p> : null}
              <p>
                <strong>{scenarioTitle(scenario, words)}</strong> · {whoText(scenario, words)} ·{' '}
                {say('practice.pulse')} {words.say.rate(result.truth.pulsePerMinute)} ·{' '}
                {say('practice.breaths')} {words.say.rate(result.truth.breathsPerMinute)}
              </p>
              {lesson === null ? null : <p>{lesson}</p>}
              <TruthBeyond scenario={scenario} truth={result.truth} />
            </div>
          )}
        </div>
        {showsSounds ? <SoundStrip engine={engine} noiseDbA={noiseDbA} /> : null}
        {result === null || result.fall === null ? null : (
          <section className="projected-figure">
            <h2>{say('showing.figure')}</h2>
            <FigureShown
              name="run"
              draw={(how) =>
                exerciseFigure(
                  runDrawn({
                    ...result,
                    fall: result.fall as NonNullable<typeof result.fall>,
                    marks: marksOf(said),
                  }),
                  words,
                  { ...how, showsKey: false },
                )
              }
              {...FIGURE}
            />
            <p className="small soft projected-legend">{say('showing.figureKey')}</p>
          </section>
        )}
      </div>
      <div className="projected-beside">
        <div className="projected-now">
          <p className="projected-state" role="status">
            {say(state)}
          </p>
          <Clock engine={engine} seconds={exercise.seconds} />
        </div>
        <div className="projected-doing">
          <p>{step === undefined ? null : besideText(step, shown.manner, words, isRevealed)}</p>
          {isWatched ? null : <ShownGrip code={code} />}
        </div>
        <div className="room-buttons">
          <button type="button" className="button button-first" onClick={toggle}>
            {say(isPlaying ? 'practice.stop' : isOver ? 'showing.fromStart' : 'practice.goOnNow')}
          </button>
          <button type="button" className="button" data-truth onClick={touchTruth}>
            {say(isRevealed ? 'practice.hide' : reveal === 'asked' ? 'showing.truthNow' : 'practice.reveal')}
          </button>
          <button type="button" className="button" onClick={() => jump(-JUMP_SECONDS)}>
            {say('practice.back5')}
          </button>
          <button type="button" className="button" onClick={() => jump(JUMP_SECONDS)}>
            {say('practice.forth5')}
          </button>
          {first === null ? null : (
            <button type="button" className="button" onClick={() => seek(first)}>
              {say('showing.beforeFirst')}
            </button>
          )}
          <button type="button" className="button" onClick={() => setShowsSounds(!showsSounds)}>
            {say(showsSounds ? 'practice.hideSounds' : 'practice.showSoundsNow')}
          </button>
          <button type="button" className="button" onClick={onAnother}>
            {say('practice.another')}
          </button>
          {sound.isOn ? (
            <Loudness share={sound.loudness} onChange={sound.setLoudness} />
          ) : (
            <button type="button" className="button" onClick={() => void sound.turnOn()}>
              {say('practice.soundOn')}
            </button>
          )}
        </div>
        <ClassSaid said={said} onSaid={setSaid} held={held} />
        {isWatched ? null : <div className="projected-place">{picture}</div>}
        <p className="small soft projected-keys">{say('practice.roomKeys')}</p>
      </div>
    </div>
  );
}

/** What was said last, as marks that have no time. */
function marksOf(said: readonly Said[]) {
  const one = said.at(-1);
  if (one === undefined) return [];
  const mark = (what: 'first sound' | 'last sound', mmHg: number) => ({ what, mmHg, atSeconds: null });
  return [mark('first sound', one.first), ...(one.last === null ? [] : [mark('last sound', one.last)])];
}

/** How far it is, second by second. */
function Clock({ engine, seconds }: { readonly engine: RoomEngine; readonly seconds: number }) {
  const { words } = useApp();
  const [now, setNow] = useState(0);
  useEffect(() => engine.subscribe(({ now: at }) => setNow(Math.round(at.seconds))), [engine]);
  return (
    <p className="soft">{words.sentence('practice.secondsOf', { seconds: now, all: Math.round(seconds) })}</p>
  );
}
