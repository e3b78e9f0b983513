import { type RefObject, useEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import type { PressureAt } from '../pressure/pressureDraft.js';
import { withPressureAt } from '../pressure/pressureSteps.js';
import type { Round } from '../round/useRound.js';
import type { RoomEngine } from './engine.js';
import { withReadingKept } from './exerciseOf.js';
import { feltSince } from './feltSince.js';
import type { PracticeDraft, PracticeStep } from './keptPractice.js';
import { begunReading, wasFingerOn } from './markedRun.js';
import type { Peak } from './peakAfter.js';
import { placeOf } from './placeOf.js';
import type { Change } from './usePractice.js';

/** Why nothing was written by feel. */
export type Refused = 'practice.noFinger' | 'practice.noFingerUp' | 'practice.notFelt';

type WrittenProps = {
  readonly engine: RoomEngine;
  readonly draft: PracticeDraft;
  readonly change: Change;
  readonly round: Round;
  readonly peak: RefObject<Peak>;
  readonly to: (step: PracticeStep) => void;
};

/** What is written of the run at hand: the estimate by feel, a reading by ear or by feel, on the bedside's own screens. */
export function useWritten({ engine, draft, change, round, peak, to }: WrittenProps) {
  const { clock } = useApp();
  const { step } = draft;
  const [refused, setRefused] = useState<Refused | null>(null);
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
  }, [step, isReadingIn, isToRoom, felt.length, to, change, peak]);
  return { refused, open, write, estimate };
}
