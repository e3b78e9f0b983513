import { firstWindow, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import { type Arranged, scenarioOf } from '@evenfall/physiology';
import { useCallback, useEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { Asking } from '../parts/Asking.js';
import { SimulatedPage } from '../parts/SimulatedPage.js';
import { FeelPanel } from '../pressure/FeelPanel.js';
import { NumbersPanel } from '../pressure/NumbersPanel.js';
import type { PressureAt } from '../pressure/pressureDraft.js';
import { blankReading } from '../pressure/pressureSteps.js';
import { ReadBackPanel } from '../pressure/ReadBackPanel.js';
import { READY } from '../round/measuring.js';
import { useWakeLock } from '../round/useWakeLock.js';
import { useOwnScenarios } from '../scenarios/ownScenarios.js';
import { loadAbout } from '../server/load.js';
import { FRESH_EARS, keepEars, noiseHeard, readEars } from './ears.js';
import { devicePictures, RoomEngine } from './engine.js';
import { LONGEST_SECONDS } from './exerciseOf.js';
import { GiveUp } from './GiveUp.js';
import { breathDbfs, type PieceAt } from './heardBreath.js';
import { deviceShelf, type PracticeDraft } from './keptPractice.js';
import { LetterKeys } from './LetterKeys.js';
import { isOfThisPage, nowOfThisPage } from './ofThisPage.js';
import { BeginPanel } from './panels/BeginPanel.js';
import { CountPanel } from './panels/CountPanel.js';
import { DonePanel, Kept, TruthPanel } from './panels/DonePanel.js';
import { Loudness, Tick } from './panels/EarsPanel.js';
import { RoomNext } from './panels/RoomNext.js';
import { RoomPanel } from './panels/RoomPanel.js';
import { WrittenPanel } from './panels/WrittenPanel.js';
import { StepHeading } from './StepHeading.js';
import { hasSoundHere, useSound } from './sound.js';
import { useHandNoise } from './useHandNoise.js';
import { useIsFlat } from './useIsFlat.js';
import { KEYS_HERE, useKeys } from './useKeys.js';
import { type Change, useApexRound, usePractice, useRoundOf } from './usePractice.js';
import { useRunKept } from './useRunKept.js';
import { useWritten } from './useWritten.js';
import { isAtApex, noiseNow, nowOf, Visit } from './visit.js';
import { onceHandedOver } from './waitingExercise.js';
import { personName } from './whoComesIn.js';

/** The room of one simulated person. */
export function RoomPage({ scenario: id }: { readonly scenario: string }) {
  const app = useApp();
  const { words } = app;
  const practice = usePractice();
  useEffect(() => void loadAbout(app), [app]);
  const { draft } = practice;
  const known = draft?.visit.scenario.id === id ? draft.visit.scenario : scenarioOf(id);
  const own = useOwnScenarios(known === undefined);
  const scenario = known ?? own.asked.value?.find((one) => one.id === id);
  const back = { href: '/practice', text: words.sentence('practice.title') };
  if (scenario === undefined)
    return (
      <SimulatedPage title={words.sentence('practice.title')} back={back}>
        <Asking asked={own.asked} again={own.again}>
          {() => <p>{words.sentence('practice.notThere')}</p>}
        </Asking>
      </SimulatedPage>
    );
  const isUnderWay = draft !== null && draft.visit.scenario.id === id;
  return (
    <SimulatedPage title={personName(scenario)} back={back} isBare isWide>
      {isUnderWay && practice.isElsewhere ? (
        <div className="notice">
          <p>{words.sentence('practice.elsewhere')}</p>
          <button type="button" className="button" onClick={practice.goOnHere}>
            {words.sentence('practice.goOnHere')}
          </button>
        </div>
      ) : isUnderWay ? (
        <Exercise key={draft.exercise} {...practice} draft={draft} />
      ) : (
        <BeginPanel
          scenario={scenario}
          draft={draft}
          onBegin={practice.put}
          onGiveUp={() => practice.put(null)}
        />
      )}
    </SimulatedPage>
  );
}

type ExerciseProps = {
  readonly draft: PracticeDraft;
  readonly put: (draft: PracticeDraft | null) => void;
  readonly change: Change;
  readonly keepQuietly: Change;
  readonly forget: (exercise: string) => void;
};

function Exercise({ draft, put, change, keepQuietly, forget }: ExerciseProps) {
  const { words, clock, store } = useApp();
  const say = words.sentence;
  const [engine] = useState(() => new RoomEngine(new Visit(draft.visit), devicePictures, LONGEST_SECONDS));
  const [stopped, setStopped] = useState<Stopped | null>(() =>
    isOfThisPage(draft.exercise) ? null : 'reloaded',
  );
  // Handed over, it may still be the room's, where the device's shelf was full.
  const [isKept, setKept] = useState(() =>
    store.get().kept.waiting.some(({ round }) => round === draft.exercise),
  );
  const [hearsPulse, setHearsPulse] = useState(() => readEars(deviceShelf())?.hearsPulse ?? false);
  const [showsSounds, setShowsSounds] = useState(draft.wasShown);
  const { step } = draft;
  const isLive = step !== 'done';
  useWakeLock(isLive && stopped === null);
  const sound = useSound(engine, {
    seed: draft.visit.seed,
    aids: draft.aids,
    noiseDbA: noiseHeard(noiseNow(draft.visit)),
  });
  const touch = useHandNoise(engine, draft, sound.player);
  const isApex = isAtApex(draft.visit.actions);
  const pieceAt: PieceAt =
    draft.isOnChest === true ? 'chest' : draft.piece === null && !isApex ? 'hand' : 'arm';
  const { scenario } = draft.visit;
  useEffect(() => {
    engine.hearBreaths(
      (depth) => breathDbfs(scenario, pieceAt, depth),
      scenario.breathing.kind === 'wheezing',
    );
  }, [engine, scenario, pieceAt]);
  // Without its card a visit stands still by itself; it says so, and waits.
  useEffect(() => {
    if (sound.isHeldUp && isLive) setStopped('sound');
  }, [sound.isHeldUp, isLive]);
  const goOn = async () => {
    if (stopped === 'at-end') return;
    // A card that does not come back is done without.
    if (stopped === 'sound') await sound.turnOn();
    setStopped(null);
  };
  const stopOrGoOn = () => (stopped === null ? setStopped('by-hand') : void goOn());

  const atEnd = useRef(() => {});
  const { peak, keepNow } = useRunKept({ engine, draft, change, keepQuietly, onEnd: () => atEnd.current() });

  useEffect(() => {
    window.scrollTo(0, 0);
    nowOfThisPage(draft.exercise);
  }, [draft.exercise]);

  // A page that is not looked at stands still, and says so.
  useEffect(() => {
    if (!isLive || stopped !== null) {
      engine.stop();
      return;
    }
    engine.start();
    const onHidden = () => {
      if (document.visibilityState !== 'hidden') return;
      engine.stop();
      keepNow();
      setStopped('hidden');
    };
    document.addEventListener('visibilitychange', onHidden);
    return () => {
      document.removeEventListener('visibilitychange', onHidden);
      engine.stop();
    };
  }, [engine, isLive, stopped, keepNow]);

  const turnOn = async () => {
    if (await sound.turnOn()) change((was) => ({ ...was, aids: { ...was.aids, hadSound: true } }));
  };
  const secondsAt = useCallback((ms: number) => engine.secondsAt(ms), [engine]);
  const round = useRoundOf(draft, change, secondsAt);
  const apexRound = useApexRound(draft, change, secondsAt);
  const to = useCallback(
    (next: PracticeDraft['step']) => {
      change((was) => ({
        ...was,
        visit: engine.visit.data(),
        wentUpSeconds: peak.current.wentUpSeconds,
        peakSeconds: peak.current.peakSeconds,
        step: next,
      }));
      window.scrollTo(0, 0);
    },
    [change, engine, peak],
  );
  atEnd.current = () => {
    if (stopped === 'at-end') return;
    setStopped('at-end');
    if (step !== 'done' && step !== 'numbers' && step !== 'written') to('done');
  };
  const toRoom = useCallback(() => to('room'), [to]);
  const count = (sign: 'pulse' | 'apex' | 'breaths') => {
    // At the apex the window is offered that the place counts there.
    if (sign === 'apex') {
      const at = { ...UNKNOWN_CIRCUMSTANCES, site: 'apical' as const };
      const { windowSeconds } = firstWindow('pulse', at, false, round.inForce.countRules);
      apexRound.measure('pulse', { at: 'ready', way: 'count', windowSeconds });
    } else round.measure(sign, READY);
    to(sign);
  };
  const { refused, open, write, estimate } = useWritten({ engine, draft, change, round, peak, to });
  /** Taken again with the person otherwise: on another arm the cuff is put on anew. */
  const again = (arranged: Arranged) => {
    engine.visit.arrange(arranged, null, engine.secondsAt(performance.now()));
    if (arranged.arm !== undefined && draft.piece !== null)
      engine.act({ kind: 'chest-piece', offMm: null, held: 'light' }, performance.now());
    change((was) => ({
      ...was,
      ...(arranged.arm === undefined ? {} : { isCuffOn: false, piece: null }),
      visit: engine.visit.data(),
    }));
    to('room');
  };
  useKeys((key, { repeat }) => {
    if (step !== 'room' || repeat || (key !== 'p' && key !== 'P')) return false;
    stopOrGoOn();
    return true;
  });

  const measuring = round.draft.pressure.measuring;
  const { place } = round.draft.pressure;
  const isAtEnd = stopped === 'at-end';
  const isFlat = useIsFlat(engine);
  // That nothing more can be done is said where it is kept, too.
  const isStanding = stopped !== null && (isLive || isAtEnd) && !isKept;
  return (
    <>
      <div className={isStanding ? 'notice room-stopped' : isKept ? undefined : 'unseen'}>
        {/* There before its text is: a voice says what comes into it. */}
        <div role="status">
          {isKept ? <Kept exercise={draft.exercise} /> : isStanding ? <p>{say(STOPPED[stopped])}</p> : null}
        </div>
        {isStanding && !isAtEnd ? (
          <button type="button" className="button button-first" onClick={() => void goOn()}>
            {say(stopped === 'sound' ? 'showing.goOnWithSound' : 'practice.goOnNow')}
          </button>
        ) : null}
      </div>
      {isKept ? (
        <TruthPanel draft={draft} onAgain={() => put(null)} />
      ) : step === 'room' ? (
        <div {...KEYS_HERE} className="room-keys">
          <StepHeading text={say('practice.room')} isUnseen />
          {hasSoundHere() && !sound.isOn ? (
            <button type="button" className="button room-sound-on" onClick={() => void turnOn()}>
              {say('practice.soundOn')}
            </button>
          ) : null}
          <RoomPanel
            engine={engine}
            draft={draft}
            change={change}
            showsSounds={showsSounds}
            hearsPulse={hearsPulse}
            onShowSounds={(shows) => {
              setShowsSounds(shows);
              // Once seen, it stays said in the result.
              change((was) => ({ ...was, wasShown: was.wasShown || shows }));
            }}
            isStopped={stopped !== null}
            touch={touch}
            peakSeconds={() => peak.current.peakSeconds}
            next={
              <RoomNext
                draft={draft}
                change={change}
                isStopped={stopped !== null}
                refused={refused}
                onCount={count}
                onWrite={write}
                onEstimate={estimate}
                onStop={isAtEnd ? null : stopOrGoOn}
                onDone={() => to('done')}
              />
            }
          />
          <details className="room-more">
            <summary>{say('practice.more')}</summary>
            <div className="room-foot">
              {!hasSoundHere() ? null : sound.isOn ? (
                <>
                  <Loudness share={sound.loudness} onChange={sound.setLoudness} />
                  <Tick
                    text={say('practice.hearPulse')}
                    isOn={hearsPulse}
                    onTick={(isOn) => {
                      setHearsPulse(isOn);
                      const shelf = deviceShelf();
                      keepEars(shelf, { ...(readEars(shelf) ?? FRESH_EARS), hearsPulse: isOn });
                    }}
                  />
                  <button type="button" className="button button-quiet" onClick={sound.turnOff}>
                    {say('practice.soundOff')}
                  </button>
                </>
              ) : null}
              <LetterKeys />
              <GiveUp onGiveUp={() => put(null)} />
            </div>
          </details>
        </div>
      ) : step === 'pulse' || step === 'apex' || step === 'breaths' ? (
        <CountPanel
          engine={engine}
          draft={draft}
          round={step === 'apex' ? apexRound : round}
          sign={step === 'apex' ? 'pulse' : step}
          isAtApex={step === 'apex'}
          showsSounds={showsSounds}
          hearsPulse={hearsPulse}
          onBack={toRoom}
        />
      ) : step === 'numbers' && isWriting(measuring) && place !== null ? (
        <div className="measure-stage practice-writing">
          <StepHeading
            text={say(measuring.at === 'feel' ? 'pressure.feelTitle' : 'practice.write')}
            isUnseen
          />
          {measuring.at === 'feel' ? (
            <FeelPanel
              round={round}
              place={place}
              typed={measuring.typed}
              onFeelOnly={() => write('palpation')}
            />
          ) : measuring.at === 'typing' ? (
            <NumbersPanel round={round} place={place} measuring={measuring} isBare={!draft.isCuffOn} />
          ) : (
            <>
              <ReadBackPanel round={round} place={place} measuring={measuring} isBare={!draft.isCuffOn} />
              <button
                type="button"
                className="button button-quiet"
                onClick={() =>
                  open(blankReading(measuring.method, { measuredAt: clock.stamp(), inflatedAt: null }))
                }
              >
                {say('moments.untimed')}
              </button>
            </>
          )}
          <button type="button" className="button button-quiet" onClick={toRoom}>
            {say('practice.backToRoom')}
          </button>
        </div>
      ) : step === 'written' ? (
        <WrittenPanel
          draft={draft}
          canArrange={isFlat && !isAtEnd}
          isAtEnd={isAtEnd}
          onAgain={toRoom}
          onOtherArm={() =>
            again({ arm: nowOf(draft.visit).circumstances.arm === 'left' ? 'right' : 'left' })
          }
          onPosture={(posture) => again({ posture })}
          onDone={() => to('done')}
        />
      ) : step === 'done' ? (
        <DonePanel
          draft={draft}
          change={change}
          onMore={toRoom}
          onKept={() => {
            onceHandedOver(store, draft.exercise, () => forget(draft.exercise));
            setKept(true);
          }}
        />
      ) : null}
    </>
  );
}

/** Why the room stands still. */
type Stopped = 'by-hand' | 'hidden' | 'reloaded' | 'sound' | 'at-end';
const STOPPED = {
  'by-hand': 'practice.stopped',
  hidden: 'practice.stoppedHidden',
  reloaded: 'practice.stoppedReloaded',
  sound: 'showing.stoppedSound',
  'at-end': 'practice.stoppedAtEnd',
} as const;

type Writing = Extract<PressureAt, { at: 'feel' | 'typing' | 'reading' }>;

/** Whether one of the bedside's screens of the numbers is up. */
function isWriting(measuring: PressureAt): measuring is Writing {
  return measuring.at === 'feel' || measuring.at === 'typing' || measuring.at === 'reading';
}
