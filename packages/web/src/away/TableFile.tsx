import { fileText } from '@evenfall/api/client';
import { bundleTable } from '@evenfall/exchange';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import type { IntakeState } from './useIntake.js';

/** A file of one person's readings is small; this device keeps it until it is signed. Source: decision of this project. */
const LARGEST_BYTES = 1024 * 1024;

/** A file with a table of readings, kept on this device until it is signed. */
export function TableFile({ state: { form } }: { readonly state: IntakeState }) {
  const { words } = useApp();
  const [wrong, setWrong] = useState<string | null>(null);
  const choose = async (file: File | undefined) => {
    if (file === undefined) return;
    if (file.size > LARGEST_BYTES) {
      setWrong(words.sentence('away.tooLarge', { megabytes: LARGEST_BYTES / 1024 / 1024 }));
      return;
    }
    try {
      const came = fileText(new Uint8Array(await file.arrayBuffer()));
      // Of a FHIR bundle its pressures, as a table that can be mended like any other.
      const text = bundleTable(came, form.text('of') === 'ambulatory' ? 'ambulatory' : 'home')?.text ?? came;
      setWrong(null);
      // What was said of another file does not hold for this one.
      form.done();
      form.set('of', form.text('of'));
      form.set('way', 'file');
      form.set('file', text);
      form.set('fileName', file.name);
    } catch {
      setWrong(words.sentence('bring.unreadable'));
    }
  };
  const name = form.text('fileName');
  return (
    <>
      <div className="bring-drop">
        <label htmlFor="away-file">
          {words.sentence(name === '' ? 'away.chooseFile' : 'away.otherFile')}
        </label>
        <input
          id="away-file"
          type="file"
          accept=".csv,.txt,.tsv,.json,text/csv,text/plain,application/json,application/fhir+json"
          onChange={({ target }) => void choose(target.files?.[0])}
        />
        <p className="field-hint">{words.sentence('away.fileHint')}</p>
      </div>
      {name === '' ? null : <p className="bring-name">{words.sentence('bring.fileIs', { text: name })}</p>}
      {wrong === null ? null : (
        <p className="notice" role="alert">
          {wrong}
        </p>
      )}
    </>
  );
}
