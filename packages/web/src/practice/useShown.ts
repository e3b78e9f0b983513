import {
  bladderFor,
  makePerson,
  PROPER,
  type Scenario,
  SOUND_INSTRUMENT,
  TICKS_PER_SECOND,
  truth,
} from '@evenfall/physiology';
import { demonstrate, type Exercise, GOOD_OBSERVER } from '@evenfall/practice';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { RoomEngine } from './engine.js';
import { Visit, type VisitData } from './visit.js';

/** How a practised observer takes this person's pressure, as an exercise like a learner's own. */
export function shownBy(scenario: Scenario, seed: number): Exercise {
  return demonstrate(GOOD_OBSERVER, scenario, seed, PROPER, {
    ...SOUND_INSTRUMENT,
    ...(scenario.instrument ?? {}),
    bladder: bladderFor(scenario.armCm),
  });
}

/** The exercise as a visit that plays by itself, from a second of it on. */
export function visitOf(
  { scenario, seed, circumstances, instrument, actions }: Exercise,
  seconds = 0,
): VisitData {
  const tick = Math.max(0, Math.round(seconds * TICKS_PER_SECOND));
  return { scenario, seed, circumstances, instrument, actions, tick };
}

/** What is true in the middle of the reading, mmHg. */
export function truthOf({ scenario, seed, circumstances, instrument, evidence, seconds }: Exercise) {
  const at = evidence.run?.startSeconds ?? seconds / 2;
  return truth(makePerson(scenario, seed), circumstances, at, instrument);
}

/** A demonstration that plays by itself: stopped, gone on with, and sought to any second of it. */
export function useShown(scenario: Scenario, seed: number) {
  const exercise = useMemo(() => shownBy(scenario, seed), [scenario, seed]);
  const engine = useMemo(() => new RoomEngine(new Visit(visitOf(exercise))), [exercise]);
  const [isPlaying, setPlaying] = useState(false);
  const isOver = useRef(false);
  const play = useCallback(() => {
    if (isOver.current) {
      isOver.current = false;
      engine.visit = new Visit(visitOf(exercise));
    }
    engine.start();
    setPlaying(true);
  }, [engine, exercise]);
  const stop = useCallback(() => {
    engine.stop();
    setPlaying(false);
  }, [engine]);
  const seek = useCallback(
    (seconds: number) => {
      const to = Math.max(0, Math.min(exercise.seconds, seconds));
      const was = engine.isRunning;
      engine.stop();
      isOver.current = false;
      engine.visit = new Visit(visitOf(exercise, to));
      engine.shown();
      if (was) engine.start();
    },
    [engine, exercise],
  );
  useEffect(() => {
    const end = engine.subscribe(({ now }) => {
      if (now.seconds < exercise.seconds || isOver.current) return;
      isOver.current = true;
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
  }, [engine, exercise, stop]);
  return { exercise, engine, isPlaying, play, stop, seek };
}
