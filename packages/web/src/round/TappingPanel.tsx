import { parseTaps, type TapSource, tapsEnough } from '@evenfall/clinical';
import { useEffect, useMemo, useRef } from 'react';
import { useApp } from '../app/context.js';
import { rangeText } from '../app/figuresText.js';
import { Strip } from '../parts/Strip.js';
import { tapsStrip } from '../parts/stripGeometry.js';
import { NOTHING_NOTICED, withValue } from './draft.js';
import { lastTapUndone, type Measuring, tapped, tapSeconds } from './measuring.js';
import type { PanelProps } from './panelProps.js';
import { pressed } from './pressed.js';
import { tappedSoFar } from './tappedSoFar.js';

type TappingProps = PanelProps & { readonly measuring: Extract<Measuring, { at: 'ready' | 'tapping' }> };

/** A large place to tap; the range narrows as taps come in, until enough are enough. */
export function TappingPanel({ round, sign, measuring }: TappingProps) {
  const { clock, words, session } = useApp();
  const isTapping = measuring.at === 'tapping';

  const tap = (atMs: number, source: TapSource) =>
    round.measure(
      sign,
      isTapping
        ? tapped(measuring, atMs, source)
        : { at: 'tapping', session, measuredAt: clock.stamp(), source, tapsMs: [atMs] },
    );
  useSpaceBar((atMs) => tap(atMs, 'key'));

  return (
    <>
      {isTapping ? <TapReadout round={round} sign={sign} measuring={measuring} /> : null}
      <button type="button" className="tap-area" {...pressed(tap)}>
        <span className="tap-area-says">{words.sentence('taps.area')}</span>
        <span className="small">
          {words.sentence(sign === 'pulse' ? 'taps.tapEachBeat' : 'taps.tapEach')}
        </span>
        {isTapping ? null : <span className="small">{words.sentence('taps.begin')}</span>}
      </button>
      {isTapping ? (
        <TapButtons round={round} sign={sign} measuring={measuring} />
      ) : (
        <div className="tap-buttons" aria-hidden="true" />
      )}
    </>
  );
}

/** The taps begin anew. */
const TAP_AGAIN: Measuring = { at: 'ready', way: 'taps', windowSeconds: null };

type TappingNow = { readonly measuring: Extract<Measuring, { at: 'tapping' }> };

/** What the taps so far come to, as the result would say it if they stopped here. */
function TapReadout({ round, sign, measuring }: TappingNow & PanelProps) {
  const { words, program } = useApp();
  const { draft, facts, inForce } = round;
  const seconds = useMemo(() => tapSeconds(measuring), [measuring]);
  const result = useMemo(
    () => tappedSoFar(draft, sign, { ...measuring, seconds }, { facts, inForce, program }),
    [draft, sign, measuring, seconds, facts, inForce, program],
  );
  const { more, enough, untilSeconds } = tapsEnough(result, result);
  const paused = result.why.find(({ code }) => code === 'tapping-paused');
  return (
    <div className="tap-readout">
      <p className="rate">
        <span className="rate-number">
          {result.perMinute === null ? '–' : words.say.rate(result.perMinute)}
        </span>
        <span className="rate-unit">{words.sentence('app.perMinute')}</span>
      </p>
      <p className="rate-range">
        {rangeText(result, words) ?? words.sentence('taps.soFar', { taps: seconds.length })}
      </p>
      <Strip
        strip={tapsStrip(seconds, result.repairs)}
        label={words.sentence('taps.soFar', { taps: seconds.length })}
      />
      {/* Only that it is enough is announced: a voice that counts along would be counted along with. */}
      <p role="status" className="tap-enough ticked" hidden={enough !== true}>
        {enough === true ? words.sentence('taps.enough') : null}
      </p>
      {paused === undefined ? null : (
        <div className="notice" role="alert">
          <p>{words.detail(paused)}</p>
          <button type="button" className="button" onClick={() => round.measure(sign, TAP_AGAIN)}>
            {words.sentence('taps.again')}
          </button>
        </div>
      )}
      {enough === true || paused !== undefined ? null : (
        <p className="soft">
          {untilSeconds === null
            ? words.sentence('taps.more', { taps: more })
            : words.sentence('taps.until', { taps: more, seconds: untilSeconds })}
        </p>
      )}
    </div>
  );
}

function TapButtons({ round, sign, measuring }: PanelProps & TappingNow) {
  const { words } = useApp();
  const { source, measuredAt } = measuring;
  const parsed = parseTaps({ of: sign, source, seconds: tapSeconds(measuring) });
  const canStop = parsed.ok && parsed.value.seconds.length >= 2;
  const stop = () => {
    if (!parsed.ok || !canStop) return;
    const taps = parsed.value;
    round.keep((draft, { entry, sequence }) =>
      withValue(draft, sign, { entry, sequence, measuredAt, noticed: NOTHING_NOTICED, kind: 'taps', taps }),
    );
  };
  return (
    <div className="tap-buttons">
      <button
        type="button"
        className="button button-first button-large"
        aria-disabled={!canStop}
        onClick={stop}
      >
        {words.sentence('taps.stop')}
      </button>
      <button
        type="button"
        className="button button-large"
        onClick={() => round.measure(sign, lastTapUndone(measuring))}
      >
        {words.sentence('taps.undo')}
      </button>
      {canStop || parsed.ok ? null : (
        <p className="field-wrong" role="alert">
          {parsed.refusals.map((refusal) => words.problem(refusal).message).join(' ')}
        </p>
      )}
    </div>
  );
}

/** The space bar taps wherever the focus is, unless it is on a control of its own. */
function useSpaceBar(onTap: (atMs: number) => void): void {
  const tap = useRef(onTap);
  tap.current = onTap;
  useEffect(() => {
    const onKey = (event: KeyboardEvent) => {
      if (event.key !== ' ' || event.repeat || event.defaultPrevented) return;
      if (
        event.target instanceof Element &&
        event.target.closest('button, select, a, summary, input:not([type=radio])') !== null
      )
        return;
      event.preventDefault();
      tap.current(event.timeStamp);
    };
    window.addEventListener('keydown', onKey);
    return () => window.removeEventListener('keydown', onKey);
  }, []);
}
