import { type Count, mayBeRate, parseCount } from '@evenfall/clinical';
import { useEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { keptText } from '../app/keptText.js';
import { Keypad } from '../parts/Keypad.js';
import { AsItWas } from './AsItWas.js';
import { NOTHING_NOTICED, withNumberChanged, withValue } from './draft.js';
import { type Measuring, typedText } from './measuring.js';
import type { PanelProps } from './panelProps.js';
import { useComeBack } from './useComeBack.js';

type TypingProps = PanelProps & { readonly measuring: Extract<Measuring, { at: 'typing' }> };

/** The window is over: what was counted is typed on a keypad that starts blank. */
export function TypingPanel({ round, sign, measuring }: TypingProps) {
  const { words } = useApp();
  const input = useRef<HTMLInputElement>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  /** Whether what was typed may be the rate a minute. */
  const [isAsked, setAsked] = useState(false);
  const { start, measuredAt, typed, reopened } = measuring;
  const comeBack = useComeBack(round, reopened);
  useEffect(() => input.current?.focus({ preventScroll: true }), []);

  const type = (text: string) => {
    setWrong(null);
    setAsked(false);
    round.measure(sign, { ...measuring, typed: text });
  };
  const done = (isCounted = false) => {
    if (typed === '') return setWrong(words.sentence('count.typeFirst'));
    const parsed = parseCount({ of: sign, n: typed, ...start }, round.inForce.countRules);
    if (parsed.ok) {
      if (!isCounted && mayBeRate(parsed.value, round.inForce.countRules)) return setAsked(true);
      return keep(parsed.value);
    }
    const nameOf = () => words.sentence('count.typed');
    setWrong(parsed.refusals.map((refusal) => words.problem(refusal, { nameOf }).message).join(' '));
  };
  const keep = (count: Count) => {
    if (reopened === undefined)
      return round.keep((draft, { entry, sequence }) =>
        withValue(draft, sign, {
          entry,
          sequence,
          measuredAt,
          noticed: NOTHING_NOTICED,
          kind: 'count',
          count,
        }),
      );
    round.change((draft) => withNumberChanged(draft, sign, reopened.entry, count));
    comeBack();
  };
  return (
    <form
      className="measure"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        done();
      }}
    >
      <p className="cue" role="status">
        {words.sentence(reopened === undefined ? 'count.timeUp' : 'count.typedWas')}
      </p>
      <div className="typed">
        <input
          ref={input}
          className="typed-number"
          aria-label={words.sentence('count.typed')}
          aria-invalid={wrong !== null}
          aria-describedby="typed-wrong"
          inputMode="none"
          autoComplete="off"
          value={typed}
          onChange={(event) => type(keptText(event.target, typedText))}
        />
        <span className="typed-window">
          {words.sentence('count.seconds', { seconds: start.windowSeconds })}
        </span>
      </div>
      <p className="field-wrong" id="typed-wrong" role="alert" hidden={wrong === null}>
        {wrong}
      </p>
      {isAsked ? (
        <div className="notice" role="alert">
          <p>
            {words.sentence('count.isItCounted', {
              n: Number(typed),
              seconds: start.windowSeconds,
              perMinute: (60 * Number(typed)) / start.windowSeconds,
            })}
          </p>
          <div className="buttons">
            <button type="button" className="button" onClick={() => done(true)}>
              {words.sentence('count.wasCounted', { n: Number(typed) })}
            </button>
            <button type="button" className="button" onClick={() => type('')}>
              {words.sentence('count.wasRate')}
            </button>
          </div>
        </div>
      ) : null}
      <Keypad onDigit={(digit) => type(typedText(typed + digit))} onRubOut={() => type(typed.slice(0, -1))} />
      {reopened === undefined ? null : (
        <AsItWas
          onLeave={() => {
            round.measure(sign, { at: 'shown', entry: reopened.entry });
            comeBack();
          }}
        />
      )}
    </form>
  );
}
