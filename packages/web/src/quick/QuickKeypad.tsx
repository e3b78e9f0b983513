import { useApp } from '../app/context.js';

type KeypadProps = { readonly onKey: (key: string) => void; readonly onRubOut: () => void };

const DIGITS = ['1', '2', '3', '4', '5', '6', '7', '8', '9'];

/** Large keys for one thumb: digits, the stroke, "by feel", the blank before the pulse, and the one that signs. */
export function QuickKeypad({ onKey, onRubOut }: KeypadProps) {
  const { words } = useApp();
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
    <fieldset className="keypad quick-keypad">
      <legend className="unseen">{words.sentence('quick.keypad')}</legend>
      {DIGITS.map((digit) => key(digit))}
      {key('P', 'P', words.sentence('quick.byFeel'))}
      {key('0')}
      {key('/', '/', words.sentence('quick.stroke'))}
      <button type="button" className="key key-word" onClick={onRubOut}>
        {words.sentence('count.rubOut')}
      </button>
      {key(' ', words.sentence('quick.space'))}
      <button type="submit" className="key key-word key-done">
        {words.sentence('quick.sign')}
      </button>
    </fieldset>
  );
}
