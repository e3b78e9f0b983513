import { useMemo, useState } from 'react';
import { useApp } from '../app/context.js';
import { deviceShelf } from './keptPractice.js';
import { hasLetterKeys, keepLetterKeys } from './letterKeys.js';

/** Turns the keys that are single letters off and on. Source: WCAG 2.2, 2.1.4. */
export function LetterKeys() {
  const { words } = useApp();
  const shelf = useMemo(deviceShelf, []);
  const [isOn, setOn] = useState(() => hasLetterKeys(shelf));
  return (
    <label className="tick small">
      <input
        type="checkbox"
        checked={isOn}
        onChange={({ target }) => {
          keepLetterKeys(shelf, target.checked);
          setOn(hasLetterKeys(shelf));
        }}
      />
      <span>{words.sentence('showing.letterKeys')}</span>
    </label>
  );
}
