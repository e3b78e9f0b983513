import { useBook } from '../app/book.js';
import { useApp } from '../app/context.js';

/** In a class an alert is about somebody who came to learn: who hears of it, and how. Nothing in other books. */
export function IncidentalNote() {
  const { words } = useApp();
  if (useBook().book !== 'class') return null;
  return (
    <p>
      <strong>{words.sentence('class.incidental')}</strong>
    </p>
  );
}
