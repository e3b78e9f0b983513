import { firstWindow, UNKNOWN_CIRCUMSTANCES } from '@evenfall/clinical';
import { type Arranged, type Scenario, scenarioOf } from '@evenfall/physiology';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { Asking } from '../parts/Asking.js';
import { SimulatedPage } from '../parts/SimulatedPage.js';
import { FeelPanel } from '../pressure/FeelPanel.js';
import { NumbersPanel } from '../pressure/NumbersPanel.js';
import type { PressureAt } from '../pressure/pressureDraft.js';
import { blankReading, withPressureAt } from '../pressure/pressureSteps.js';
import { ReadBackPanel } from '../pressure/ReadBackPanel.js';
import { READY } from '../round/measuring.js';
import { useWakeLock } from '../round/useWakeLock.js';
import { useOwnScenarios } from '../scenarios/ownScenarios.js';
import { loadAbout } from '../server/load.js';
import { begunPractice } from './begin.js';
import { arteryY, heldAt } from './drawing/placing.js';
import { type Ears, FRESH_EARS, keepEars, noiseHeard, readEars } from './ears.js';
import { devicePictures, RoomEngine } from './engine.js';
import { LONGEST_SECONDS, withReadingKept } from './exerciseOf.js';
import { feltSince } from './feltSince.js';
import { GiveUp } from './GiveUp.js';
import { breathDbfs, type PieceAt } from './heardBreath.js';
import { deviceShelf, type PracticeDraft } from './keptPractice.js';
import { LetterKeys } from './LetterKeys.js';
import { begunReading, type RunAt, wasFingerOn } from './markedRun.js';
import { CountPanel } from './panels/CountPanel.js';
import { DonePanel, Kept, TruthPanel } from './panels/DonePanel.js';
import { EarsPanel, Loudness, Tick } from './panels/EarsPanel.js';
import { RoomNext } from './panels/RoomNext.js';
import { RoomPanel } from './panels/RoomPanel.js';
import { ShowPanel } from './panels/ShowPanel.js';
import { WrittenPanel } from './panels/WrittenPanel.js';
import { placeOf } from './placeOf.js';
import { roomAt } from './roomAt.js';
import { StepHeading } from './StepHeading.js';
import { hasSoundHere, useSound } from './sound.js';
import { CONTACT_SECONDS, noiseOf, type Touched } from './touched.js';
import { useIsFlat } from './useIsFlat.js';
import { KEYS_HERE, useKeys } from './useKeys.js';
import { type Change, useApexRound, usePractice, useRoundOf } from './usePractice.js';
import { isAtApex, noiseNow, nowOf, Visit } from './visit.js';
import { onceHandedOver } from './waitingExercise.js';
import { personName, seenText } from './whoComesIn.js';

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
        <Begin scenario={scenario} draft={draft} onBegin={practice.put} onGiveUp={() => practice.put(null)} />
      )}
    </SimulatedPage>
  );
}

type BeginProps = {
  readonly scenario: Scenario;
  readonly draft: PracticeDraft | null;
  readonly onBegin: (draft: PracticeDraft) => void;
  readonly onGiveUp: () => void;
};

/** The ears first, then one comes in. */
function Begin({ scenario, draft, onBegin, onGiveUp }: BeginProps) {
  const { words, ids, clock, store } = useApp();
  const shelf = useMemo(deviceShelf, []);
  const ears = useMemo(() => readEars(shelf) ?? FRESH_EARS, [shelf]);
  const [shownSeed, setShownSeed] = useState<number | null>(null);
  const begin = (said: Ears) => {
    keepEars(shelf, said);
    const { sequence } = store.get().kept;
    store.change((state) => ({ ...state, kept: { ...state.kept, sequence: sequence + 1 } }));
    ofThisPage = ids();
    const made = { exercise: ofThisPage, round: ids(), sequence, begunAt: clock.stamp() };
    const { aids, thresholdDb, showsSounds } = said;
    onBegin({
      ...begunPractice(scenario, freshSeed(), made, { aids, thresholdDb }),
      wasShown: showsSounds,
    });
  };
  if (shownSeed !== null)
    return <ShowPanel scenario={scenario} seed={shownSeed} ears={ears} onEnd={() => setShownSeed(null)} />;
  return (
    <>
      <p>{seenText(scenario, words)}</p>
      {draft === null ? (
        <EarsPanel ears={ears} done={words.sentence('practice.withSound')} onDone={begin} />
      ) : (
        <div className="notice">
          <p>
            {words.sentence('practice.otherUnderWay')}{' '}
            <Link href={roomAt(draft.visit.scenario.id)}>
              {words.sentence('practice.underWay', { text: personName(draft.visit.scenario) })}
            </Link>
          </p>
          <GiveUp onGiveUp={onGiveUp} />
        </div>
      )}
      <button type="button" className="button button-quiet" onClick={() => setShownSeed(freshSeed())}>
        {words.sentence('practice.showMe')}
      </button>
    </>
  );
}

function freshSeed(): number {
  return crypto.getRandomValues(new Uint32Array(1))[0] ?? 1;
}

/** How often what moves is kept, ms. */
const KEEP_EVERY_MS = 1000;
/** Under this the cuff is flat again, and a new peak begins. */
const FLAT_MMHG = 4;

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
  const [refused, setRefused] = useState<Refused | null>(null);
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
  const touched = useRef(0);
  const rubbedAt = useRef(Number.NEGATIVE_INFINITY);
  const touch = (what: Touched) => {
    const { piece, visit } = draft;
    const how = piece === null ? 'light' : heldAt(piece, arteryY(visit.seed)).held;
    const noise = noiseOf(what, { isOn: piece !== null, how });
    // A noise of the hands lies on no sound of the arm: the model has none that it would hide.
    if (noise === null || sound.player === null || engine.willSound(CONTACT_SECONDS)) return;
    const nowMs = performance.now();
    if (what === 'moved' && nowMs - rubbedAt.current < 1000 * CONTACT_SECONDS) return;
    if (what === 'moved') rubbedAt.current = nowMs;
    touched.current += 1;
    sound.player.touch(noise, touched.current);
  };
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
  // What moves is drawn by the engine and kept now and then, so that a reload finds it.
  const peak = useRef<RunAt & { mmHg: number }>({
    wentUpSeconds: draft.wentUpSeconds ?? draft.peakSeconds,
    peakSeconds: draft.peakSeconds,
    mmHg: draft.peakMmHg ?? 0,
  });
  const keptAt = useRef(draft.visit.tick);
  const keepNow = useCallback(() => {
    // A visit that stands still is not written again: another tab may go on with it.
    if (engine.visit.tick === keptAt.current) return;
    keptAt.current = engine.visit.tick;
    keepQuietly((was) =>
      was.exercise === draft.exercise
        ? {
            ...was,
            visit: engine.visit.data(),
            wentUpSeconds: peak.current.wentUpSeconds,
            peakSeconds: peak.current.peakSeconds,
            peakMmHg: peak.current.mmHg,
          }
        : was,
    );
  }, [engine, keepQuietly, draft.exercise]);
  useEffect(() => {
    const stop = engine.subscribe(({ now }) => {
      if (engine.isAtEnd) atEnd.current();
      const { cuffMmHg, seconds } = now;
      const was = peak.current;
      if (cuffMmHg < FLAT_MMHG) was.mmHg = 0;
      else if (cuffMmHg > was.mmHg) {
        // Touches are of one run: with the cuff up from flat a new one begins.
        const isNew = was.mmHg === 0;
        peak.current = {
          wentUpSeconds: isNew ? seconds : was.wentUpSeconds,
          peakSeconds: seconds,
          mmHg: cuffMmHg,
        };
        if (isNew) change((one) => (one.marks.length === 0 ? one : { ...one, marks: [] }));
      }
    });
    const timer = window.setInterval(keepNow, KEEP_EVERY_MS);
    window.addEventListener('pagehide', keepNow);
    return () => {
      stop();
      window.clearInterval(timer);
      window.removeEventListener('pagehide', keepNow);
      keepNow();
    };
  }, [engine, keepNow, change]);

  useEffect(() => {
    window.scrollTo(0, 0);
    ofThisPage = draft.exercise;
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
    [change, engine],
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
  const { felt } = draft.round.pressure;
  const feltBefore = useRef(felt.length);
  const open = (measuring: PressureAt) => {
    feltBefore.current = felt.length;
    change((was) => ({
      ...was,
      writtenFrom: peak.current.peakSeconds,
      round: withPressureAt(
        { ...was.round, pressure: { ...was.round.pressure, place: placeOf(was.visit) } },
        measuring,
      ),
    }));
    to('numbers');
  };
  const refuse = (why: Refused) => {
    setRefused(why);
    if (step !== 'room') to('room');
  };
  const write = (method: 'auscultation' | 'palpation') => {
    setRefused(null);
    const { peakSeconds } = peak.current;
    let { marks } = draft;
    if (method === 'palpation') {
      // What no finger felt is not written down as felt, and no mark from before it stands for it.
      const { hadFinger, first } = feltSince(engine.visit.data(), peakSeconds);
      if (first === null) return refuse(hadFinger ? 'practice.notFelt' : 'practice.noFinger');
      marks = marks.filter((at) => at >= first.atSeconds || (peakSeconds !== null && at <= peakSeconds));
    }
    open(begunReading(method, marks, peak.current, engine.visit.data().actions, clock.stamp()));
  };
  /** Where the pulse was lost on the way up: the estimate before listening. */
  const estimate = () => {
    setRefused(null);
    const { wentUpSeconds, peakSeconds } = peak.current;
    const { actions } = engine.visit.data();
    if (peakSeconds === null || !wasFingerOn(actions, wentUpSeconds ?? peakSeconds, peakSeconds))
      return refuse('practice.noFingerUp');
    open({ at: 'feel', typed: '' });
  };
  const isReadingIn = round.draft.pressure.measuring.at === 'shown';
  const { at: pressureAt } = round.draft.pressure.measuring;
  const isToRoom = pressureAt === 'place' || pressureAt === 'ready';
  useEffect(() => {
    // The screen of the reading leads on by itself, or back to the cuff where that is changed.
    if (step === 'numbers' && isReadingIn) {
      change(withReadingKept);
      to('written');
    } else if (step === 'numbers' && isToRoom) {
      // The estimate is written: what is pumped up from now on is another run, also where the cuff is not quite empty.
      if (felt.length > feltBefore.current) {
        peak.current.mmHg = 0;
        change((was) => ({ ...was, marks: [] }));
      }
      to('room');
    }
  }, [step, isReadingIn, isToRoom, felt.length, to, change]);
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
              <p className="small">{say('practice.keysAre')}</p>
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
        <div className="measure-stage">
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
            <NumbersPanel round={round} place={place} measuring={measuring} />
          ) : (
            <>
              <ReadBackPanel round={round} place={place} measuring={measuring} />
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

/** The exercise that was last under way on this page; another one was begun before the page was loaded. */
let ofThisPage: string | null = null;

function isOfThisPage(exercise: string): boolean {
  return ofThisPage === exercise;
}

/** Why nothing was written by feel. */
type Refused = 'practice.noFinger' | 'practice.noFingerUp' | 'practice.notFelt';

type Writing = Extract<PressureAt, { at: 'feel' | 'typing' | 'reading' }>;

/** Whether one of the bedside's screens of the numbers is up. */
function isWriting(measuring: PressureAt): measuring is Writing {
  return measuring.at === 'feel' || measuring.at === 'typing' || measuring.at === 'reading';
}
