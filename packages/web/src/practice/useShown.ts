import { type Scenario, TICKS_PER_SECOND } from '@evenfall/physiology';
import { type Exercise, type Showing, type ShownStep, showing } from '@evenfall/practice';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { devicePictures, RoomEngine } from './engine.js';
import { Visit, type VisitData } from './visit.js';

/** The exercise as a visit that plays by itself, from a second of it on. */
export function visitOf(
  { scenario, seed, circumstances, instrument, actions }: Exercise,
  seconds = 0,
): VisitData {
  const tick = Math.max(0, Math.round(seconds * TICKS_PER_SECOND));
  return { scenario, seed, circumstances, instrument, actions, tick };
}

/** The steps that were begun by a second of a demonstration, the one at hand last. */
export function stepsBy({ steps }: Pick<Showing, 'steps'>, seconds: number): readonly ShownStep[] {
  return steps.filter(({ atSeconds }) => atSeconds <= seconds);
}

/** How long before a first sound it is heard again from, seconds. */
const LEAD_SECONDS = 3;

/** Just before the first sound, or the pulse that came back; null where neither did. */
export function beforeFirst({ steps }: Pick<Showing, 'steps'>): number | null {
  const first = steps.find(({ code }) => code === 'first' || code === 'back');
  return first === undefined ? null : Math.max(0, first.atSeconds - LEAD_SECONDS);
}

/** Moments at the elbow or the wrist, which are to be heard or felt as they come. */
const SENSED: ReadonlySet<ShownStep['code']> = new Set([
  'first',
  'muffled',
  'last',
  'gap',
  'gap-over',
  'back',
]);

/**
 * Where what comes next begins, seconds of the demonstration: a moment a little before it comes, where that is still ahead, so that it
 * is not missed. Null: all of it is over.
 */
export function nextStepAt({ steps }: Pick<Showing, 'steps'>, seconds: number): number | null {
  const next = steps.find(({ atSeconds }) => atSeconds > seconds + TINY);
  if (next === undefined) return null;
  const lead = onTick(next.atSeconds - LEAD_SECONDS);
  return SENSED.has(next.code) && lead > seconds + TINY ? lead : onTick(next.atSeconds);
}

/** Whether no step begins from one second of it to a later one: what is said there stays, and that something comes has to be said. */
export function isBeforeNext(shown: Pick<Showing, 'steps'>, from: number, to: number): boolean {
  return stepsBy(shown, from).length === stepsBy(shown, to).length;
}

/** The first tick at or after a second: there the step has begun. */
function onTick(seconds: number): number {
  return Math.ceil(seconds * TICKS_PER_SECOND - TINY) / TICKS_PER_SECOND;
}
const TINY = 1e-6;

/** Whether a finger feels, and a chest piece listens on the arm or at the apex, at a second of it. */
export function handsAt(
  { actions }: Pick<Exercise, 'actions'>,
  seconds: number,
): { readonly isFeeling: boolean; readonly isListening: boolean; readonly isAtApex: boolean } {
  let hands = { isFeeling: false, isListening: true, isAtApex: false };
  for (const action of actions) {
    if (action.tick > seconds * TICKS_PER_SECOND) break;
    if (action.kind === 'finger') hands = { ...hands, isFeeling: action.isOn };
    if (action.kind === 'chest-piece')
      hands = { ...hands, isListening: action.offMm !== null, isAtApex: false };
    if (action.kind === 'apex') hands = { ...hands, isListening: false, isAtApex: action.isOn };
  }
  return hands;
}

/** Its last tick and no other one, whatever a division loses; seconds. */
export function endOf({ seconds }: Pick<Exercise, 'seconds'>): number {
  return (Math.round(seconds * TICKS_PER_SECOND) + 0.5) / TICKS_PER_SECOND;
}

/** A demonstration that plays by itself to its end: stopped, gone on with, and sought to any second of it. */
export function useShown(scenario: Scenario, seed: number) {
  const shown = useMemo(() => showing(scenario, seed), [scenario, seed]);
  const { exercise } = shown;
  const engine = useMemo(
    () => new RoomEngine(new Visit(visitOf(exercise)), devicePictures, endOf(exercise)),
    [exercise],
  );
  const [isPlaying, setPlaying] = useState(false);
  const [isOver, setOver] = useState(false);
  const over = useRef(false);
  const setEnd = useCallback((is: boolean) => {
    over.current = is;
    setOver(is);
  }, []);
  const play = useCallback(() => {
    if (over.current) {
      setEnd(false);
      engine.visit = new Visit(visitOf(exercise));
    }
    engine.start();
    setPlaying(true);
  }, [engine, exercise, setEnd]);
  const stop = useCallback(() => {
    engine.stop();
    setPlaying(false);
  }, [engine]);
  const seek = useCallback(
    (seconds: number) => {
      const to = Math.max(0, Math.min(exercise.seconds, seconds));
      const was = engine.isRunning;
      engine.stop();
      setEnd(false);
      engine.visit = new Visit(visitOf(exercise, to));
      engine.shown();
      // At its end it stays.
      if (was && !over.current) engine.start();
    },
    [engine, exercise, setEnd],
  );
  useEffect(() => {
    const lastTick = Math.round(exercise.seconds * TICKS_PER_SECOND);
    const end = engine.subscribe(({ now }) => {
      if (now.tick < lastTick || over.current) return;
      setEnd(true);
      engine.stop();
      setPlaying(false);
    });
    const onHidden = () => {
      if (document.visibilityState === 'hidden') stop();
    };
    document.addEventListener('visibilitychange', onHidden);
    return () => {
      end();
      document.removeEventListener('visibilitychange', onHidden);
      engine.stop();
      setPlaying(false);
    };
  }, [engine, exercise, stop, setEnd]);
  return { shown, exercise, engine, isPlaying, isOver, play, stop, seek };
}

/** The instant at hand as it goes on: drawn anew only where what is made of it changes. */
export function useAt<Made>(
  engine: RoomEngine,
  make: (seconds: number) => Made,
  key: (made: Made) => string,
): Made {
  const [made, setMade] = useState(() => make(engine.visit.seconds));
  useEffect(() => {
    let was = '';
    return engine.subscribe(({ now }) => {
      const next = make(now.seconds);
      const nextKey = key(next);
      if (nextKey === was) return;
      was = nextKey;
      setMade(next);
    });
  }, [engine, make, key]);
  return made;
}
