import { fileText } from '@evenfall/api/client';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { Refused } from '../parts/Refused.js';
import { refusedBecause } from '../server/server.js';
import type { IntakeState } from './useIntake.js';

/** A file of one person's readings is small; this device keeps it until it is signed. Source: decision of this project. */
const LARGEST_BYTES = 1024 * 1024;

/** A text that begins as JSON does: no table begins so. */
const BUNDLE = /^\s*\{/;

/** A file with a table of readings, kept on this device until it is signed. */
export function TableFile({ state: { form } }: { readonly state: IntakeState }) {
  const { words, server } = useApp();
  const [wrong, setWrong] = useState<string | null>(null);
  const choose = async (file: File | undefined) => {
    if (file === undefined) return;
    if (file.size > LARGEST_BYTES) {
      setWrong(words.sentence('away.tooLarge', { megabytes: LARGEST_BYTES / 1024 / 1024 }));
      return;
    }
    let text: string;
    try {
      text = fileText(new Uint8Array(await file.arrayBuffer()));
    } catch {
      setWrong(words.sentence('bring.unreadable'));
      return;
    }
    if (BUNDLE.test(text)) {
      // Of a FHIR bundle its pressures, as a table that can be mended like any other; the server reads it.
      const of = form.text('of') === 'ambulatory' ? 'ambulatory' : 'home';
      const answer = await server.call('seriesTable', { body: { file: text, of } });
      if (!answer.ok) {
        setWrong(
          answer.offline
            ? words.sentence('app.unreachable')
            : words.sentence('app.refusedBy', { text: refusedBecause(answer, words) }),
        );
        return;
      }
      text = answer.value.text;
    }
    setWrong(null);
    // What was said of another file does not hold for this one.
    form.done();
    form.set('of', form.text('of'));
    form.set('way', 'file');
    form.set('file', text);
    form.set('fileName', file.name);
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
      <Refused text={wrong} />
    </>
  );
}
