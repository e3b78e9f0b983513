import type { ImportedFile, Problem } from '@evenfall/api';
import { fileText, LARGEST_BODY_BYTES } from '@evenfall/api/client';
import { type DragEvent, useState } from 'react';
import { useApp } from '../app/context.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { BOOK } from '../server/load.js';
import { useMeasuring } from '../signIn/useAccess.js';
import { BroughtFile } from './BroughtFile.js';
import { RefusedRows } from './RefusedRows.js';

/** A file that was chosen: its name and what is in it. */
type Chosen = { readonly name: string; readonly text: string };

type Step =
  | { readonly is: 'none' }
  | { readonly is: 'asking'; readonly chosen: Chosen }
  | { readonly is: 'asked'; readonly chosen: Chosen; readonly value: ImportedFile }
  /** Nothing was kept. `problems` of the file itself, or why it was not even looked at. */
  | {
      readonly is: 'refused';
      readonly chosen: Chosen | null;
      readonly message: string;
      readonly problems: readonly Problem[];
    };

const MEGABYTE = 1024 * 1024;

/** A file brought into the chart: asked about first, with all that is refused, and kept by a second touch. */
export function BringFile({
  person,
  onKept,
}: {
  readonly person: string;
  readonly onKept: () => Promise<void>;
}) {
  const { words, server } = useApp();
  const agent = useMeasuring();
  const [step, setStep] = useState<Step>({ is: 'none' });

  const send = async (chosen: Chosen, keep: boolean) => {
    if (agent === null) return;
    if (!keep) setStep({ is: 'asking', chosen });
    const body = { file: chosen.text, agent, keep };
    const answer = await server.call('importFile', { params: { book: BOOK, person }, body });
    if (answer.ok) {
      if (keep) await onKept();
      setStep({ is: 'asked', chosen, value: answer.value });
      return;
    }
    const problems = answer.problem?.problems ?? [];
    const isOfFile = answer.status === 422 && problems.length > 0;
    const why = answer.offline
      ? `${words.sentence('app.unreachable')} ${words.sentence('bring.notKept')}`
      : answer.status === 413
        ? tooLarge(new TextEncoder().encode(chosen.text).length)
        : words.sentence(answer.status === 403 || isOfFile ? 'bring.refusedWhole' : 'app.failed');
    setStep({ is: 'refused', chosen, message: why, problems: answer.status === 413 ? [] : problems });
  };

  const tooLarge = (bytes: number) =>
    words.sentence('bring.tooLarge', { megabytes: bytes / MEGABYTE, most: LARGEST_BODY_BYTES / MEGABYTE });

  const choose = async (file: File | undefined) => {
    if (file === undefined) return;
    if (file.size > LARGEST_BODY_BYTES) {
      setStep({ is: 'refused', chosen: null, message: tooLarge(file.size), problems: [] });
      return;
    }
    let text: string;
    try {
      text = fileText(new Uint8Array(await file.arrayBuffer()));
    } catch {
      setStep({ is: 'refused', chosen: null, message: words.sentence('bring.unreadable'), problems: [] });
      return;
    }
    await send({ name: file.name, text }, false);
  };

  if (agent === null) return <WhoMeasures />;
  const { is } = step;
  const name = step.is === 'none' ? null : (step.chosen?.name ?? null);
  const again = () => setStep({ is: 'none' });
  return (
    <>
      <p className="soft">{words.sentence('bring.hint')}</p>
      {is === 'none' ? <Choose onFile={choose} /> : null}
      {name === null ? null : <p className="bring-name">{words.sentence('bring.fileIs', { text: name })}</p>}
      <div role="status">
        {step.is === 'asking' ? (
          <p className="soft">{words.sentence('bring.reading', { text: step.chosen.name })}</p>
        ) : null}
        {step.is === 'asked' && step.value.kept ? <p>{words.sentence('bring.kept')}</p> : null}
      </div>
      {step.is === 'asked' ? (
        <BroughtFile
          value={step.value}
          person={person}
          keep={() => send(step.chosen, true)}
          another={again}
        />
      ) : null}
      {step.is === 'refused' ? (
        <>
          <p className="notice" role="alert">
            {step.message}
          </p>
          <RefusedRows problems={step.problems} />
          <div className="buttons">
            {step.chosen === null || step.problems.length > 0 ? null : (
              <button
                type="button"
                className="button"
                onClick={() => (step.chosen === null ? undefined : void send(step.chosen, false))}
              >
                {words.sentence('app.tryAgain')}
              </button>
            )}
            <button type="button" className="button" onClick={again}>
              {words.sentence('bring.another')}
            </button>
          </div>
        </>
      ) : null}
    </>
  );
}

/** A file chosen by the browser's own control, or dropped on it. */
function Choose({ onFile }: { readonly onFile: (file: File | undefined) => Promise<void> }) {
  const { words } = useApp();
  const [isOver, setOver] = useState(false);
  const over = (event: DragEvent) => {
    event.preventDefault();
    setOver(true);
  };
  return (
    // biome-ignore lint/a11y/noStaticElementInteractions: dropping is beside the native control, which does the same
    <div
      className={isOver ? 'bring-drop bring-over' : 'bring-drop'}
      onDragOver={over}
      onDragEnter={over}
      onDragLeave={() => setOver(false)}
      onDrop={(event) => {
        event.preventDefault();
        setOver(false);
        void onFile(event.dataTransfer.files[0]);
      }}
    >
      <label htmlFor="bring-file">{words.sentence('bring.choose')}</label>
      <input
        id="bring-file"
        type="file"
        accept=".json,.csv,application/fhir+json,application/json,text/csv"
        aria-describedby="bring-most"
        onChange={(event) => void onFile(event.target.files?.[0])}
      />
      <p className="field-hint" id="bring-most">
        {words.sentence('bring.drop')}.{' '}
        {words.sentence('bring.most', { megabytes: LARGEST_BODY_BYTES / MEGABYTE })}
      </p>
    </div>
  );
}
