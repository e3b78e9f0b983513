import { useApp } from '../app/context.js';
import { useStillKeys } from '../parts/useStillKeys.js';

type KeypadProps = {
  readonly onKey: (key: string) => void;
  readonly onRubOut: () => void;
  /** Whether the numbers are in and nothing is asked first: then the key that signs stays in sight. */
  readonly isIn: boolean;
};

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9'];

/** Large keys for one thumb: digits, the stroke, "by feel", the blank before the pulse, and the one that signs. */
export function QuickKeypad({ onKey, onRubOut, isIn }: KeypadProps) {
  const { words } = useApp();
  const keys = useStillKeys();
  const key = (text: string, shown = text, name?: string) => (
    <button
      key={text}
      type="button"
      className={shown.length > 1 ? 'key key-word' : 'key'}
      aria-label={name}
      onClick={() => onKey(text)}
    >
      {shown}
    </button>
  );
  return (
    <>
      <fieldset className="keypad quick-keypad" ref={keys}>
        <legend className="unseen">{words.sentence('quick.keypad')}</legend>
        {DIGITS.map((digit) => key(digit))}
        {key('P', words.sentence('quick.byFeel'))}
        {key('0')}
        {key('/', '/', words.sentence('quick.stroke'))}
      </fieldset>
      <div
        className={isIn ? 'keypad quick-keypad quick-foot quick-foot-in' : 'keypad quick-keypad quick-foot'}
      >
        <button type="button" className="key key-word" onClick={onRubOut}>
          {words.sentence('count.rubOut')}
        </button>
        {key(' ', words.sentence('quick.space'))}
        <button type="submit" className="key key-word key-done">
          {words.sentence('quick.sign')}
        </button>
      </div>
    </>
  );
}
