import { useSyncExternalStore } from 'react';
import { useApp } from '../app/context.js';
import { BOOK } from '../server/load.js';

/** The sheet of a series with the list of all readings, as the server makes it: in the language and on the paper of this device. */
export function SavePdf({
  person,
  series,
  asksStiffness = false,
  beside = null,
}: {
  readonly person: string;
  readonly series: string;
  readonly asksStiffness?: boolean;
  /** Another series of the person: then one sheet with both. */
  readonly beside?: string | null;
}) {
  const { words, preferences } = useApp();
  const { paper } = useSyncExternalStore(preferences.subscribe, preferences.get);
  const { locale, manner } = words.say;
  const asked = new URLSearchParams({ paper, locale, hours: String(manner.hours) });
  if (asksStiffness) asked.set('stiffness', 'with');
  if (beside !== null) asked.set('beside', beside);
  if (manner.dates !== null) asked.set('dates', manner.dates);
  return (
    <a
      className="button"
      href={`/api/books/${BOOK}/persons/${person}/series/${series}/pdf?${asked.toString()}`}
      download
    >
      {words.sentence(beside === null ? 'away.savePdf' : 'away.besidePdf')}
    </a>
  );
}
