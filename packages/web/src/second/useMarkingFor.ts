import { useCallback, useEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import type { ClockOffset } from './clockOffset.js';
import { measureClock } from './measureClock.js';
import { lastMarkUndone, marked, type OwnMarks, shelvedMarks, shelveMarks, withRun } from './ownMarks.js';

/** How often the device that marks says that it is there, ms; what is new goes at once. Source: decision of this project. */
const SAY_EVERY_MS = 1500;
const AGAIN_MS = 700;

export type WhyNot = 'wrong' | 'taken' | 'mayNot' | 'tooOften' | 'offline';
export type MarkingFor =
  | { readonly is: 'out'; readonly why: WhyNot | null; readonly ended: { readonly late: number } | null }
  | { readonly is: 'joining' }
  | {
      readonly is: 'marking';
      readonly own: OwnMarks;
      /** The newest change that arrived. */
      readonly arrived: number;
      readonly isCutOff: boolean;
      /** The run before is over, and how many touches may have come too late for it. */
      readonly ended: { readonly late: number } | null;
    };

const WHY: Readonly<Record<number, WhyNot>> = { 403: 'mayNot', 404: 'wrong', 409: 'taken', 429: 'tooOften' };

function tabShelf(): Storage | null {
  try {
    return window.sessionStorage;
  } catch {
    return null;
  }
}

/**
 * Marking for somebody else: joins by a code, brings the clocks together, keeps every touch in the tab and sends them until
 * they have arrived. The whole list goes each time, so that nothing is lost and nothing counts twice.
 */
export function useMarkingFor() {
  const { server, clock, ids } = useApp();
  const [own, setOwn] = useState<OwnMarks | null>(() => shelvedMarks(tabShelf()));
  const [isJoined, setJoined] = useState(own !== null);
  const [offset, setOffset] = useState<ClockOffset | null>(null);
  const [why, setWhy] = useState<WhyNot | null>(null);
  const [ended, setEnded] = useState<{ late: number } | null>(null);
  const [arrived, setArrived] = useState(0);
  const [isCutOff, setCutOff] = useState(false);
  const now = useRef(own);
  const wake = useRef<() => void>(() => undefined);

  const keep = useCallback((next: OwnMarks | null) => {
    if (next === now.current) return;
    now.current = next;
    shelveMarks(tabShelf(), next);
    setOwn(next);
    wake.current();
  }, []);

  const leave = useCallback(
    (late: number | null, because: WhyNot | null) => {
      setJoined(false);
      setOffset(null);
      setArrived(0);
      setCutOff(false);
      setEnded(late === null ? null : { late });
      setWhy(because);
      keep(null);
    },
    [keep],
  );

  const join = async (code: string) => {
    const next = { code, marker: ids(), version: 0, marks: [], runAtMs: null };
    setWhy(null);
    setEnded(null);
    keep(next);
    const answer = await server.call('joinMarking', { body: { code, marker: next.marker } });
    if (now.current?.marker !== next.marker) return;
    if (answer.ok) setJoined(true);
    else leave(null, WHY[answer.status] ?? 'offline');
  };

  // The clocks are brought together once it has joined, and again after the page was out of sight: a device that slept may
  // have stopped its own.
  useEffect(() => {
    if (!isJoined) return;
    let isOver = false;
    const measure = async () => {
      for (let found: ClockOffset | null = null; found === null && !isOver; ) {
        found = await measureClock(server, clock);
        if (found !== null && !isOver) setOffset(found);
        else await new Promise((resolve) => setTimeout(resolve, AGAIN_MS));
      }
    };
    const onSight = () => void (document.visibilityState === 'visible' && measure());
    void measure();
    document.addEventListener('visibilitychange', onSight);
    return () => {
      isOver = true;
      document.removeEventListener('visibilitychange', onSight);
    };
  }, [isJoined, server, clock]);

  useEffect(() => {
    if (!isJoined) return;
    let isOver = false;
    let sent = -1;
    let there: ReadonlySet<string> = new Set();
    const lateOf = () => now.current?.marks.filter(({ id }) => !there.has(id)).length ?? 0;
    const send = async () => {
      while (!isOver && now.current !== null) {
        const { marker, version, marks } = now.current;
        const answer = await server.call('keepMarks', {
          params: { marker },
          body: { version, marks: [...marks] },
        });
        if (isOver) return;
        if (answer.ok) {
          const { runAtMs } = answer.value;
          if (now.current.runAtMs !== null && runAtMs === null) setEnded({ late: lateOf() });
          else if (runAtMs !== null) setEnded(null);
          sent = version;
          there = new Set(marks.map(({ id }) => id));
          setArrived(version);
          setCutOff(false);
          keep(withRun(now.current, runAtMs));
        } else if (answer.status === 404) {
          return leave(lateOf(), null);
        } else setCutOff(true);
        const isNew = () => now.current !== null && now.current.version > sent;
        await new Promise<void>((resolve) => {
          const timer = setTimeout(resolve, answer.ok ? (isNew() ? 0 : SAY_EVERY_MS) : AGAIN_MS);
          wake.current = () => {
            if (!answer.ok) return;
            clearTimeout(timer);
            resolve();
          };
        });
      }
    };
    void send();
    return () => {
      isOver = true;
      wake.current();
    };
  }, [isJoined, server, keep, leave]);

  const touch = (atMs: number) => {
    if (now.current !== null && offset !== null) keep(marked(now.current, ids(), atMs, offset));
  };
  const undo = () => {
    if (now.current !== null) keep(lastMarkUndone(now.current));
  };
  const state: MarkingFor =
    own === null
      ? { is: 'out', why, ended }
      : isJoined && offset !== null
        ? { is: 'marking', own, arrived, isCutOff, ended }
        : { is: 'joining' };
  return { state, join, touch, undo, stop: () => leave(null, null) };
}
