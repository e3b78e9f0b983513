import { useState } from 'react';
import { useApp, useKept } from '../app/context.js';
import { BOOK } from '../server/load.js';

/** The whole chart as a file: for another system, or as a table; who it is goes along only where that is ticked. */
export function AsFile({
  person,
  isKnown,
  isEmpty,
}: {
  readonly person: string;
  readonly isKnown: boolean;
  /** Nothing is charted that a table has a row for. */
  readonly isEmpty: boolean;
}) {
  const { words } = useApp();
  const isInvented = useKept(({ known }) => known.about.value?.site.invented ?? false);
  const [isWithIdentity, setWithIdentity] = useState(false);
  const identity = isWithIdentity && isKnown ? 'with' : 'without';
  const href = (as: string) => `/api/books/${BOOK}/persons/${person}/export?as=${as}&identity=${identity}`;
  return (
    <>
      {isKnown ? (
        <div>
          <label className="tick">
            <input
              type="checkbox"
              checked={isWithIdentity}
              aria-describedby="identity-hint"
              onChange={(event) => setWithIdentity(event.target.checked)}
            />
            {words.sentence('handover.withIdentity')}
          </label>
          <p className="field-hint" id="identity-hint">
            {words.sentence('handover.withIdentityHint')}
          </p>
        </div>
      ) : null}
      <div className="handover-file">
        <a className="button" href={href('fhir')} download>
          {words.sentence('handover.fhir')}
        </a>
        <p className="field-hint">{words.sentence('handover.fhirHint')}</p>
      </div>
      <div className="handover-file">
        <a className="button" href={href('csv')} download>
          {words.sentence('handover.csv')}
        </a>
        <p className="field-hint">
          {words.sentence(isEmpty ? 'handover.nothingInTable' : 'handover.csvHint')}
        </p>
      </div>
      {isInvented ? <p className="soft small">{words.sentence('handover.inventedFile')}</p> : null}
    </>
  );
}
