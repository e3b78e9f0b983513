import { noiseOf, type Scenario } from '@evenfall/physiology';
import type { Exercise, ShownStep } from '@evenfall/practice';
import { useCallback, useEffect, useState } from 'react';
import { useApp } from '../../app/context.js';
import { ShownArm } from '../drawing/ShownArm.js';
import { ShownGrip } from '../drawing/ShownGrip.js';
import { type Ears, noiseHeard } from '../ears.js';
import { LiveGauge } from '../LiveGauge.js';
import { SoundStrip } from '../SoundStrip.js';
import { StepHeading } from '../StepHeading.js';
import { toldText } from '../shownText.js';
import { hasSoundHere, useSound } from '../sound.js';
import { KEYS_HERE, useKeys } from '../useKeys.js';
import { isBeforeNext, nextStepAt, stepsBy, useAt, useShown } from '../useShown.js';

type ShowProps = {
  readonly scenario: Scenario;
  readonly seed: number;
  readonly ears: Ears;
  readonly onEnd: () => void;
};

const lengthOf = (steps: readonly ShownStep[]) => String(steps.length);
/** What each number is called as it is found. */
const FOUND = {
  lost: 'showing.lostAt',
  first: 'showing.firstAt',
  'every-beat': 'showing.everyAt',
  gap: 'showing.gapAt',
  'gap-over': 'showing.gapOverAt',
  muffled: 'showing.muffledAt',
  last: 'showing.lastAt',
  back: 'showing.backAt',
} as const;

/** How it is done, step by step in words and in the same drawing; the numbers are written down as they come. */
export function ShowPanel({ scenario, seed, ears, onEnd }: ShowProps) {
  const { words } = useApp();
  const say = words.sentence;
  const { shown, exercise, engine, isPlaying, isOver, play, stop, seek } = useShown(scenario, seed);
  const noiseDbA = noiseOf(exercise.scenario, exercise.circumstances);
  const sound = useSound(engine, { seed, aids: ears.aids, noiseDbA: noiseHeard(noiseDbA) });
  // Sound is asked for before anything is shown: the first of it is not to be missed.
  const [isAsked, setAsked] = useState(() => hasSoundHere() && !sound.isOn);
  const make = useCallback((seconds: number) => stepsBy(shown, seconds), [shown]);
  const steps = useAt(engine, make, lengthOf);
  useEffect(() => window.scrollTo(0, 0), []);
  useEffect(() => {
    if (!isAsked) play();
  }, [isAsked, play]);
  useEffect(() => {
    if (sound.isHeldUp) stop();
  }, [sound.isHeldUp, stop]);
  const begin = async (withSound: boolean) => {
    if (withSound) await sound.turnOn();
    setAsked(false);
  };
  // How many steps had begun where a press went to just before the next one.
  const [awaiting, setAwaiting] = useState<number | null>(null);
  const goOn = async () => {
    if (sound.isHeldUp) await sound.turnOn();
    play();
  };
  const toNext = () => {
    const from = engine.visit.seconds;
    const at = nextStepAt(shown, from);
    if (at === null) return;
    setAwaiting(isBeforeNext(shown, from, at) ? stepsBy(shown, at).length : null);
    seek(at);
  };
  useKeys((key, { repeat }) => {
    if (key !== 'ArrowRight' || isAsked || isOver) return false;
    if (!repeat) toNext();
    return true;
  });
  const now = steps.at(-1);
  const found = steps.filter((one) => one.code in FOUND && one.mmHg !== null);
  return (
    <div className="room room-shown" data-view="arm" {...KEYS_HERE}>
      <div className="room-lead">
        <StepHeading text={say('practice.showMe')} isUnseen />
        <p role="status" className="shown-says">
          {isAsked
            ? say('showing.withSoundFirst')
            : sound.isHeldUp
              ? say('showing.stoppedSound')
              : now === undefined
                ? null
                : awaiting === steps.length
                  ? say(shown.manner === 'by-feel' ? 'showing.comesFelt' : 'showing.comesHeard')
                  : toldText(now, shown.manner, words)}
        </p>
        {isAsked ? (
          <div className="buttons">
            <button type="button" className="button button-first" onClick={() => void begin(true)}>
              {say('showing.showWithSound')}
            </button>
            <button type="button" className="button" onClick={() => void begin(false)}>
              {say('showing.showSilent')}
            </button>
          </div>
        ) : null}
      </div>
      <div className="room-scene">
        <ShownArm engine={engine} exercise={exercise} code={now?.code ?? 'looking'} />
        <dl className="shown-found" aria-label={say('showing.numbersSoFar')}>
          {found.map(({ code, mmHg, atSeconds }) => (
            <div key={`${code}-${atSeconds}`}>
              <dt className="small soft">{say(FOUND[code as keyof typeof FOUND])}</dt>
              <dd>{words.say.number(mmHg ?? 0)}</dd>
            </div>
          ))}
        </dl>
        {isOver ? <WrittenDown exercise={exercise} steps={steps} /> : null}
      </div>
      <div className="room-hands">
        <div className="room-gauge">
          <LiveGauge engine={engine} />
        </div>
        <ShownGrip code={now?.code ?? 'looking'} />
        <SoundStrip engine={engine} noiseDbA={noiseDbA} />
      </div>
      <div className="room-next">
        {isAsked ? null : (
          <button type="button" className="button" onClick={isPlaying ? stop : () => void goOn()}>
            {say(isPlaying ? 'practice.stop' : isOver ? 'showing.onceMore' : 'practice.goOnNow')}
          </button>
        )}
        {isAsked || isOver ? null : (
          <button type="button" className="button" aria-keyshortcuts="ArrowRight" onClick={toNext}>
            {say('showing.nextStep')} <span aria-hidden="true">→</span>
          </button>
        )}
        <button type="button" className={isAsked ? 'button' : 'button button-first'} onClick={onEnd}>
          {say('practice.showEnd')}
        </button>
      </div>
    </div>
  );
}

/** What the lesson of this person asks for beside what was shown. */
function notShownOf({ leftArm, standing, home }: Scenario) {
  return [
    ...(leftArm === null ? [] : ['showing.rightOnly' as const]),
    ...(standing === null ? [] : ['showing.sittingOnly' as const]),
    ...(home === null ? [] : ['showing.hereOnly' as const]),
  ];
}

/** What came of it, as it is written down. */
function WrittenDown({
  exercise: { entered, scenario },
  steps,
}: {
  readonly exercise: Exercise;
  readonly steps: readonly ShownStep[];
}) {
  const { words } = useApp();
  const say = words.sentence;
  const { systolic, muffled, diastolic } = entered;
  if (systolic === null) return null;
  const mmHgAt = (code: ShownStep['code']) => steps.find((one) => one.code === code)?.mmHg ?? null;
  const every = mmHgAt('every-beat');
  const [from, to] = [mmHgAt('gap'), mmHgAt('gap-over')];
  return (
    <div className="shown-written">
      <p className="small soft">{say('showing.writtenDown')}</p>
      <p className="entered-large">
        {diastolic === null
          ? say('showing.byFeel', { systolic })
          : say('showing.byEar', { systolic, muffled, diastolic })}{' '}
        <span className="small soft">{say('pressure.mmHg')}</span>
      </p>
      {every === null ? null : <p>{say('showing.apart', { first: systolic, every })}</p>}
      {from === null || to === null ? null : <p>{say('showing.gapWas', { from, to })}</p>}
      {notShownOf(scenario).map((one) => (
        <p key={one}>{say(one)}</p>
      ))}
    </div>
  );
}
