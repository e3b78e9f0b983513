import type { Marking, MarkingState } from '@evenfall/api';
import { useCallback, useEffect, useMemo, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import type { SecondTouch } from '../pressure/pressureDraft.js';
import type { ClockOffset } from './clockOffset.js';
import { measureClock } from './measureClock.js';

const AGAIN_MS = 1000;
/** The device that marks says every second and a half that it is there; silent for longer than this it is not heard. */
const SILENT_SECONDS = 4;

/** How a second person on another device comes to mark, as the device of whoever measures sees it. */
export type Second =
  | { readonly is: 'off' | 'opening' | 'unreachable' | 'over' | 'refused' }
  | {
      readonly is: 'open';
      readonly marking: Marking;
      readonly isJoined: boolean;
      /** Why nothing new may come just now; null while all is well. */
      readonly silent: 'unheard' | 'cutOff' | null;
      /** By this device's clock. */
      readonly touches: readonly SecondTouch[];
    };

/** Brings a touch of another device to this one's clock: both are brought to that of the place. */
export function broughtHere(
  { id, atMs, offsetMs, withinMs }: MarkingState['marks'][number],
  own: ClockOffset,
): SecondTouch {
  return { id, atMs: atMs + offsetMs - own.offsetMs, withinMs: withinMs + own.withinMs };
}

type Wanted = {
  /** Somebody is waited for, or marks. */
  readonly isAsked: boolean;
  /** Whoever joined stays for the next run. */
  readonly mayStay: boolean;
  /** When the cuff of the run under way went up, by this device's clock; null for none. */
  readonly runAtMs: number | null;
};

/**
 * Opens a code while a second person is wanted, and listens for what they mark; closes it when they are not wanted any more,
 * so that nothing of it stays anywhere but in the run.
 */
export function useSecond({ isAsked, mayStay, runAtMs }: Wanted): {
  readonly second: Second;
  readonly anew: () => void;
} {
  const { server, clock, ids } = useApp();
  const [turn, setTurn] = useState(0);
  const [found, setFound] = useState<Exclude<Second, { is: 'open' }>['is']>('off');
  const [marking, setMarking] = useState<Marking | null>(null);
  const [state, setState] = useState<MarkingState | null>(null);
  const [own, setOwn] = useState<ClockOffset | null>(null);
  const [isCutOff, setCutOff] = useState(false);

  const isWanted = isAsked || (mayStay && (state?.isJoined ?? false));
  const opened = useRef<string | null>(null);

  // biome-ignore lint/correctness/useExhaustiveDependencies: each turn asks for a new code
  useEffect(() => {
    if (!isWanted) return;
    const id = ids();
    let isOver = false;
    const pause = () => new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
    const measure = async () => {
      const measured = await measureClock(server, clock);
      if (measured !== null && !isOver) setOwn(measured);
      return measured !== null;
    };
    const listen = async () => {
      setFound('opening');
      for (let isOpen = false; !isOpen; ) {
        const answer = await server.call('openMarking', { body: { id } });
        if (isOver) return;
        if (answer.ok) {
          opened.current = id;
          setMarking(answer.value);
          isOpen = true;
        } else if (answer.status === 403) return setFound('refused');
        else {
          setFound('unreachable');
          await pause();
        }
        if (isOver) return;
      }
      while (!(await measure())) {
        if (isOver) return;
        await pause();
      }
      for (let after = -1, isJoined = false; !isOver; ) {
        const query = { after: String(after) } as unknown as { after: number };
        const answer = await server.call('readMarking', { params: { marking: id }, query });
        if (isOver) return;
        setCutOff(!answer.ok && answer.status !== 404);
        if (answer.ok) {
          after = answer.value.turn;
          setState(answer.value);
          // The two clocks are brought together at the same time.
          if (answer.value.isJoined && !isJoined) await measure();
          isJoined = answer.value.isJoined;
        } else if (answer.status === 404) {
          setMarking(null);
          return setFound('over');
        } else await pause();
      }
    };
    void listen();
    return () => {
      isOver = true;
      opened.current = null;
      setMarking(null);
      setState(null);
      setOwn(null);
      setCutOff(false);
      setFound('off');
      void server.call('endMarking', { params: { marking: id }, body: {} });
    };
  }, [isWanted, turn, server, clock, ids]);

  // The other device is told of each run, until it was: then what is touched before it, or after, is not of it.
  const isTold = marking !== null && own !== null && (state?.isJoined ?? false);
  const begun = useRef(own);
  begun.current = own;
  useEffect(() => {
    const id = opened.current;
    const offset = begun.current;
    if (!isTold || id === null || offset === null) return;
    let isOver = false;
    const body = { runAtMs: runAtMs === null ? null : runAtMs + offset.offsetMs };
    const tell = async () => {
      while (!isOver) {
        const answer = await server.call('sayRun', { params: { marking: id }, body });
        if (answer.ok || answer.status === 404) return;
        await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
      }
    };
    void tell();
    return () => {
      isOver = true;
    };
  }, [isTold, runAtMs, server]);

  const second = useMemo((): Second => {
    if (marking === null) return { is: found };
    const heard = state?.heardSecondsAgo ?? null;
    return {
      is: 'open',
      marking,
      isJoined: state?.isJoined ?? false,
      silent: isCutOff ? 'cutOff' : heard !== null && heard > SILENT_SECONDS ? 'unheard' : null,
      touches: own === null ? [] : (state?.marks ?? []).map((mark) => broughtHere(mark, own)),
    };
  }, [found, marking, state, own, isCutOff]);
  return { second, anew: useCallback(() => setTurn((one) => one + 1), []) };
}
