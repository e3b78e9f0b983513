import { useEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { Dial } from '../parts/Dial.js';
import { isLate, isOver, isSameTouch, type Measuring, secondsRun, windowOver } from './measuring.js';
import type { PanelProps } from './panelProps.js';
import { useCue } from './useCue.js';
import { useInterrupt } from './useInterruption.js';

type RunningProps = PanelProps & { readonly measuring: Extract<Measuring, { at: 'running' }> };

/** The watch while it runs. No number changes on it, since one would disturb the counting in the head. */
export function RunningPanel({ round, sign, measuring }: RunningProps) {
  const { clock, words } = useApp();
  const interrupt = useInterrupt(round, sign);
  const breakOff = useRef(interrupt);
  breakOff.current = interrupt;
  const [secondsLeft, setSecondsLeft] = useState(measuring.start.windowSeconds);
  const { windowSeconds } = measuring.start;
  const cue = useCue();

  useEffect(() => {
    let timer = 0;
    const look = () => {
      const nowMs = clock.monotonicMs();
      if (isLate(measuring, nowMs)) return breakOff.current('other');
      if (isOver(measuring, nowMs)) {
        cue();
        return round.measure(sign, windowOver(measuring));
      }
      const run = secondsRun(measuring, nowMs);
      setSecondsLeft(Math.ceil(windowSeconds - run));
      // To the next whole second of this count, so that its end is met to the millisecond.
      const toNext = 1000 * (Math.floor(run) + 1 - run);
      timer = window.setTimeout(look, Math.min(toNext, 1000 * (windowSeconds - run)));
    };
    look();
    return () => window.clearTimeout(timer);
  }, [measuring, windowSeconds, clock, round.measure, sign, cue]);

  return (
    <div className="measure">
      <p className="measure-says">{words.sentence('count.windowIs', { seconds: windowSeconds })}</p>
      <Dial startedAtMs={measuring.startedAtMs} windowSeconds={windowSeconds} />
      <p className="unseen" role="timer">
        {words.sentence('count.secondsLeft', { seconds: secondsLeft })}
      </p>
      <button
        type="button"
        className="button button-thumb"
        onClick={(event) => {
          if (!isSameTouch(measuring, event.timeStamp)) interrupt('other');
        }}
      >
        {words.sentence('count.interrupt')}
      </button>
      <p className="soft small">{words.sentence('count.interruptHint')}</p>
    </div>
  );
}
