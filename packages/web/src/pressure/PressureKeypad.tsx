import { useApp } from '../app/context.js';
import { useStillKeys } from '../parts/useStillKeys.js';

type KeypadProps = {
  readonly onKey: (key: string) => void;
  readonly onRubOut: () => void;
  /** By feel there is one number and no stroke. */
  readonly hasStroke: boolean;
  /** Whether a pulse can be typed after the numbers. */
  readonly hasPulse?: boolean;
  readonly done: string;
  /** Whether the numbers are in: then the key that keeps them stays in sight. */
  readonly isIn: boolean;
};

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9'];

/** Large keys for one thumb: digits, the stroke between two numbers, and the one that keeps them. */
export function PressureKeypad({ onKey, onRubOut, hasStroke, hasPulse = false, done, isIn }: KeypadProps) {
  const { words } = useApp();
  const keys = useStillKeys();
  const key = (text: string, name?: string) => (
    <button key={text} type="button" className="key" aria-label={name} onClick={() => onKey(text)}>
      {text}
    </button>
  );
  return (
    <>
      <fieldset className="keypad pressure-keypad" ref={keys}>
        <legend className="unseen">{words.sentence('pressure.keypad')}</legend>
        {DIGITS.map((digit) => key(digit))}
        <button type="button" className="key key-word" onClick={onRubOut}>
          {words.sentence('count.rubOut')}
        </button>
        {key('0')}
        {hasStroke ? key('/', words.sentence('pressure.stroke')) : <span />}
      </fieldset>
      <div className={`keypad pressure-keypad quick-foot${isIn ? ' quick-foot-in' : ''}`}>
        {hasPulse ? (
          <button type="button" className="key key-word" onClick={() => onKey(' ')}>
            {words.sentence('quick.space')}
          </button>
        ) : null}
        <button type="submit" className={`key key-word key-done key-wide${hasPulse ? ' key-rest' : ''}`}>
          {done}
        </button>
      </div>
    </>
  );
}
