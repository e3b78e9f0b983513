import { type FormEvent, useEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { Field } from '../parts/Field.js';
import { Page } from '../parts/Page.js';
import { TouchArea } from '../pressure/TouchArea.js';
import { useTouches } from '../pressure/useTouches.js';
import { useWakeLock } from '../round/useWakeLock.js';
import { type MarkingFor, useMarkingFor } from './useMarkingFor.js';

/**
 * The page of a second person, who marks on this device what somebody else hears or lets hear: a place to touch, and nothing
 * of whoever is measured but the code.
 */
export function MarkPage() {
  const { words } = useApp();
  const marking = useMarkingFor();
  const { state, join } = marking;
  const first = useRef(join);
  useEffect(() => {
    // An address from the picture carries the code behind its #, which no server sees; it is good once.
    const byAddress = () => {
      const code = window.location.hash.slice(1);
      if (code === '' || code === 'main') return;
      window.history.replaceState(null, '', window.location.pathname);
      void first.current(code);
    };
    byAddress();
    window.addEventListener('hashchange', byAddress);
    return () => window.removeEventListener('hashchange', byAddress);
  }, []);
  useWakeLock(state.is !== 'out');
  return (
    <Page
      title={words.sentence('second.title')}
      back={{ href: '/', text: words.sentence('people.title') }}
      isBare={state.is === 'marking'}
    >
      {state.is === 'out' ? (
        <JoinForm state={state} onJoin={join} />
      ) : state.is === 'joining' ? (
        <p role="status">{words.sentence('second.joining')}</p>
      ) : (
        <TouchPlace state={state} touch={marking.touch} undo={marking.undo} stop={marking.stop} />
      )}
    </Page>
  );
}

type JoinProps = {
  readonly state: Extract<MarkingFor, { is: 'out' }>;
  readonly onJoin: (code: string) => Promise<void>;
};

function JoinForm({ state: { why, ended }, onJoin }: JoinProps) {
  const { words } = useApp();
  const [code, setCode] = useState('');
  const [isMissing, setMissing] = useState(false);
  const join = (event: FormEvent) => {
    event.preventDefault();
    setMissing(code.trim() === '');
    if (code.trim() !== '') void onJoin(code.trim());
  };
  const wrong = isMissing
    ? words.sentence('second.codeMissing')
    : why === null
      ? null
      : words.sentence(`second.${why}`);
  return (
    <form className="second-join" noValidate onSubmit={join}>
      {ended === null ? (
        <p>{words.sentence('second.intro')}</p>
      ) : (
        <p className="notice" role="status">
          {words.sentence('second.ended')}
          {ended.late === 0 ? null : ` ${words.sentence('second.late', { touches: ended.late })}`}
        </p>
      )}
      <Field label={words.sentence('second.typed')} wrong={wrong}>
        {(control) => (
          <input
            {...control}
            className="second-code-input"
            autoComplete="off"
            autoCapitalize="characters"
            spellCheck={false}
            maxLength={20}
            value={code}
            onChange={(event) => setCode(event.target.value)}
          />
        )}
      </Field>
      <button type="submit" className="button button-first button-large">
        {words.sentence('second.join')}
      </button>
    </form>
  );
}

type TouchProps = {
  readonly state: Extract<MarkingFor, { is: 'marking' }>;
  readonly touch: (atMs: number) => void;
  readonly undo: () => void;
  readonly stop: () => void;
};

/** A touch anywhere marks a moment, as on the device of whoever measures. Nothing sounds, nothing vibrates. */
function TouchPlace({ state: { own, arrived, isCutOff, ended }, touch, undo, stop }: TouchProps) {
  const { words } = useApp();
  useTouches(touch);
  const count = own.marks.length;
  return (
    <div className="measure">
      <p className="soft small measure-says">
        {words.sentence('second.ofCode', { text: own.code.toUpperCase() })}
      </p>
      <p className={isCutOff ? 'notice' : 'small measure-says'} role="status">
        {words.sentence('moments.soFar', { touches: count })}.{' '}
        {isCutOff
          ? words.sentence('second.notSent')
          : count > 0 && arrived === own.version
            ? words.sentence('second.isKept')
            : null}
      </p>
      {own.runAtMs !== null ? null : (
        <p className="small measure-says">
          {ended === null ? null : `${words.sentence('second.runOver')} `}
          {ended === null || ended.late === 0
            ? null
            : `${words.sentence('second.late', { touches: ended.late })} `}
          {words.sentence('second.notYet')}
        </p>
      )}
      <TouchArea count={count} touch={touch} valve="second.valve" />
      <div className="tap-buttons">
        <button type="button" className="button button-large" aria-disabled={count === 0} onClick={undo}>
          {words.sentence('moments.undo')}
        </button>
        <button type="button" className="button button-large" onClick={stop}>
          {words.sentence('second.leave')}
        </button>
      </div>
    </div>
  );
}
