import { useApp } from '../app/context.js';
import { useStillKeys } from './useStillKeys.js';

type KeypadProps = {
  readonly onDigit: (digit: string) => void;
  readonly onRubOut: () => void;
};

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9'];

/** Large digits for one thumb. What was typed stands elsewhere; this only says which key was touched. */
export function Keypad({ onDigit, onRubOut }: KeypadProps) {
  const { words } = useApp();
  const keys = useStillKeys();
  const key = (digit: string) => (
    <button key={digit} type="button" className="key" onClick={() => onDigit(digit)}>
      {digit}
    </button>
  );
  return (
    <fieldset className="keypad" ref={keys}>
      <legend className="unseen">{words.sentence('count.keypad')}</legend>
      {DIGITS.map(key)}
      <button type="button" className="key key-word" onClick={onRubOut}>
        {words.sentence('count.rubOut')}
      </button>
      {key('0')}
      <button type="submit" className="key key-word key-done">
        {words.sentence('count.done')}
      </button>
    </fieldset>
  );
}
