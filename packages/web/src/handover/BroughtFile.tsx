import type { ImportedFile } from '@evenfall/api';
import type { StoredEntry } from '@evenfall/record';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { stampText } from '../app/times.js';
import { contentOfEntry } from '../chart/contentOfEntry.js';
import { chartedText, signOfCharted } from '../parts/charted.js';
import { RefusedRows } from './RefusedRows.js';
import { reportedText } from './reportedText.js';

type BroughtFileProps = {
  readonly value: ImportedFile;
  readonly person: string;
  readonly keep: () => Promise<void>;
  readonly another: () => void;
};

/** More lines than this are folded away. */
const SHOWN = 12;

/** What a file would add to the chart, or added, each value in a line, and what of it is refused. */
export function BroughtFile({ value, person, keep, another }: BroughtFileProps) {
  const { words } = useApp();
  const { added, already, older, byOrder, refused, passedOver, kept, unclear } = value;
  const entries = value.entries as readonly StoredEntry[];
  const lines = entries.filter(isNumber);
  const others = added - lines.length;
  const passed = Object.entries(passedOver).map(([type, count]) => `${count} ${type}`);
  const title =
    added === 0
      ? words.sentence('bring.nothingNew')
      : words.sentence(kept ? 'bring.wereAdded' : 'bring.wouldAdd', { values: added });
  return (
    <>
      <h3>{title}</h3>
      {already === 0 ? null : <p>{words.sentence('bring.already', { values: already })}</p>}
      {older === 0 ? null : <p>{words.sentence('bring.older', { values: older })}</p>}
      {byOrder === 0 ? null : (
        <p className="notice">{words.sentence('bring.byOrder', { values: byOrder })}</p>
      )}
      <Lines entries={lines.slice(0, SHOWN)} />
      {lines.length <= SHOWN ? null : (
        <details className="more">
          <summary>{words.sentence('bring.more', { values: lines.length - SHOWN })}</summary>
          <Lines entries={lines.slice(SHOWN)} />
        </details>
      )}
      {others === 0 ? null : <p className="soft">{words.sentence('bring.others', { values: others })}</p>}
      {passed.length === 0 ? null : (
        <p className="soft">{words.sentence('bring.passedOver', { text: words.say.allOf(passed) })}</p>
      )}
      {unclear.length === 0 ? null : (
        <>
          <h3>{words.sentence('bring.unclear', { values: unclear.length })}</h3>
          <p className="soft">{words.sentence('bring.unclearHint')}</p>
          <RefusedRows
            problems={unclear}
            label={words.sentence('bring.unclear', { values: unclear.length })}
          />
        </>
      )}
      {refused.length === 0 ? null : (
        <>
          <h3>{words.sentence('bring.refused', { values: refused.length })}</h3>
          <p className="soft">{words.sentence('bring.refusedHint')}</p>
          <RefusedRows problems={refused} />
        </>
      )}
      <div className="buttons">
        {added === 0 || kept ? null : (
          <button type="button" className="button button-first" onClick={() => void keep()}>
            {words.sentence('bring.keep', { values: added })}
          </button>
        )}
        {kept && added > 0 ? (
          <Link href={`/people/${person}`} className="button">
            {words.sentence('bring.seeChart')}
          </Link>
        ) : null}
        <button type="button" className="button" onClick={another}>
          {words.sentence('bring.another')}
        </button>
      </div>
    </>
  );
}

/** An entry that says a number, from elsewhere or as it was charted, or takes one back. */
function isNumber(entry: StoredEntry): boolean {
  return entry.kind === 'reported' || contentOfEntry(entry) !== null;
}

function Lines({ entries }: { readonly entries: readonly StoredEntry[] }) {
  if (entries.length === 0) return null;
  return (
    <ul className="bring-lines">
      {entries.map((entry) => (
        <Line key={entry.id} entry={entry} />
      ))}
    </ul>
  );
}

function Line({ entry }: { readonly entry: StoredEntry }) {
  const { words } = useApp();
  const at = <time dateTime={entry.measuredAt.at}>{stampText(entry.measuredAt, words)}</time>;
  if (entry.kind === 'reported') {
    const { value, by } = entry.content;
    return (
      <li>
        {signText(value.of, words)} <strong>{reportedText(value, words)}</strong>, {at}
        <span className="soft small">
          {' '}
          {by === null
            ? words.sentence('handover.saidByNobody')
            : words.sentence('handover.saidBy', { text: by })}
          {entry.amends === null ? null : `; ${words.sentence('bring.changes')}`}
        </span>
      </li>
    );
  }
  const charted = contentOfEntry(entry);
  if (charted === null) return null;
  return (
    <li>
      {signText(signOfCharted(charted), words)} <strong>{chartedText(charted, words)}</strong>, {at}
    </li>
  );
}
