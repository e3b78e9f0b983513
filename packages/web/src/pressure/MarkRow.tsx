import { useId } from 'react';
import { useApp } from '../app/context.js';
import { keptText } from '../app/keptText.js';
import { Field } from '../parts/Field.js';
import { typedText } from '../round/measuring.js';
import type { Mark, MarkOf } from './pressureDraft.js';

type MarkRowProps = {
  readonly name: string;
  readonly mark: Mark;
  readonly isChosen: boolean;
  readonly isTimed: boolean;
  /** Whether the run is whole without it. */
  readonly mayStayEmpty: boolean;
  readonly isWrong: boolean;
  /** What is wrong with it; null where nothing is, or where it is said beside another one. */
  readonly wrong: string | null;
  readonly onChoose: () => void;
  readonly onType: (typed: string) => void;
  readonly onStep: (steps: number) => void;
};

/** One moment: what it was, when, and what the gauge showed. Touching it puts the needle on it. */
export function MarkRow({
  name,
  mark,
  isChosen,
  isTimed,
  mayStayEmpty,
  isWrong,
  wrong,
  onChoose,
  onType,
  onStep,
}: MarkRowProps) {
  const { words } = useApp();
  const id = useId();
  const optional = useId();
  if (mark.what === 'slip') return null;
  const text = words.title('mark', mark.what);
  const isOptional = mayStayEmpty && mark.typed.trim() === '';
  const when =
    isTimed && mark.atSeconds !== null && mark.atSeconds >= 0
      ? words.sentence('pressure.atSeconds', { seconds: mark.atSeconds })
      : null;
  return (
    <div className={isChosen ? 'mark-row mark-row-chosen' : 'mark-row'}>
      <label className="mark-choose">
        <input type="radio" name={name} checked={isChosen} onChange={onChoose} />
        <span>
          {text}
          <span className="small soft mark-when">
            {when === null ? null : ` ${when}`}
            {isOptional ? (
              <>
                {when === null ? ' ' : ', '}
                <span id={optional}>{words.sentence('moments.mayStayEmpty')}</span>
              </>
            ) : null}
          </span>
        </span>
      </label>
      <input
        className="mark-number"
        aria-label={words.sentence('moments.gaugeOf', { text })}
        aria-invalid={isWrong}
        aria-describedby={wrong !== null ? id : isOptional ? optional : undefined}
        inputMode="numeric"
        autoComplete="off"
        value={mark.typed}
        onFocus={() => {
          if (!isChosen) onChoose();
        }}
        onKeyDown={(event) => {
          if (event.key !== 'ArrowUp' && event.key !== 'ArrowDown') return;
          event.preventDefault();
          onStep(event.key === 'ArrowUp' ? 1 : -1);
        }}
        onChange={(event) => onType(keptText(event.target, typedText))}
      />
      {wrong === null ? null : (
        <p className="field-wrong" id={id} role="alert">
          {wrong}
        </p>
      )}
    </div>
  );
}

type WhatProps = {
  readonly what: MarkOf;
  /** What it may have been. */
  readonly choices: readonly MarkOf[];
  readonly atSeconds: number;
  readonly onChange: (what: MarkOf) => void;
};

/** What a touch was of, where the order of the touches does not say it rightly. */
export function WhatWasIt({ what, choices, atSeconds, onChange }: WhatProps) {
  const { words } = useApp();
  return (
    <Field label={words.sentence('moments.whatAt', { seconds: atSeconds })}>
      {(control) => (
        <select {...control} value={what} onChange={(event) => onChange(event.target.value as MarkOf)}>
          {choices.map((one) => (
            <option key={one} value={one}>
              {words.title('mark', one)}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
