import { type Protocol, protocolDiff, type Refusal } from '@evenfall/clinical';
import { useEffect, useRef } from 'react';
import { useApp } from '../app/context.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { refusedBecause } from '../server/server.js';
import { AskFirst } from './AskFirst.js';
import { chooseVersion } from './chooseVersion.js';
import { fieldRefused } from './protocolForm.js';
import { fieldMeaning, shapeOf } from './protocolText.js';
import { fieldId } from './SectionFields.js';

type PutProps = {
  /** Null while something of it is refused. */
  readonly protocol: Protocol | null;
  readonly refusals: readonly Refusal[];
  readonly inForce: Protocol | null;
  readonly isNoneOffered: boolean;
  /** Opens the section of a field and goes to it. */
  readonly goTo: (section: string, key: string) => void;
  /** What came of it, until something is changed again. */
  readonly said: string | null;
  readonly setSaid: (said: string | null) => void;
  readonly onChosen: () => void;
};

/** Puts what was chosen in force, or says what must be put right first; or goes without, once that was asked. */
export function PutInForce({
  protocol,
  refusals,
  inForce,
  isNoneOffered,
  goTo,
  said,
  setSaid,
  onChosen,
}: PutProps) {
  const app = useApp();
  const { words, server } = app;
  const wrong = useRef<HTMLDivElement>(null);
  const answer = useRef<HTMLParagraphElement>(null);
  // The page grows or shrinks above it when another version is in force: its reader is led to what came of it.
  useEffect(() => {
    if (said === null) return;
    answer.current?.scrollIntoView({ block: 'center' });
    answer.current?.focus({ preventScroll: true });
  }, [said]);
  const isNothingNew = protocol !== null && inForce !== null && isSame(inForce, protocol);
  const put = async () => {
    setSaid(null);
    if (protocol === null) return wrong.current?.focus();
    const kept = await server.call('addProtocol', { body: { content: protocol as never } });
    if (!kept.ok) {
      if (kept.offline) return setSaid(words.sentence('app.unreachable'));
      return setSaid(refusedBecause(kept, words));
    }
    const why = await chooseVersion(app, kept.value.version);
    if (why === null) onChosen();
    setSaid(why ?? words.sentence('protocol.chosen'));
  };
  return (
    <div className="form">
      <WhoMeasures />
      {refusals.length === 0 ? null : (
        <div className="notice" ref={wrong} tabIndex={-1}>
          <p className="field-wrong">{words.sentence('protocol.wrong')}</p>
          <ul>
            {refusals.map((refusal) => (
              <li key={refusal.field}>
                <Refused refusal={refusal} goTo={goTo} />
              </li>
            ))}
          </ul>
        </div>
      )}
      {said === null ? null : (
        <p className="notice" role="status" ref={answer} tabIndex={-1}>
          {said}
        </p>
      )}
      <button
        type="button"
        className={isNothingNew ? 'button button-large' : 'button button-first button-large'}
        aria-disabled={isNothingNew}
        onClick={() => (isNothingNew ? undefined : void put())}
      >
        {words.sentence('protocol.choose')}
      </button>
      {isNoneOffered ? (
        <AskFirst
          button={words.sentence('protocol.chooseNone')}
          title={words.sentence('protocol.chooseNoneTitle')}
          yes={words.sentence('protocol.chooseNoneNow')}
          no={words.sentence('protocol.keepIt')}
          onYes={async () => {
            const why = await chooseVersion(app, null);
            if (why === null) setSaid(words.sentence('protocol.chosenNone'));
            return why;
          }}
        >
          <p>{words.sentence('protocol.chooseNoneWhat')}</p>
          <p>{words.sentence('protocol.chooseNoneAlarms')}</p>
          <p>{words.sentence('protocol.chooseNoneKept')}</p>
        </AskFirst>
      ) : null}
    </div>
  );
}

function isSame(before: Protocol, after: Protocol): boolean {
  const { presets, fields } = protocolDiff(before, after);
  return presets.length + fields.length === 0;
}

/** What is wrong, in words, leading to its field. */
function Refused({ refusal, goTo }: { readonly refusal: Refusal; readonly goTo: PutProps['goTo'] }) {
  const { words } = useApp();
  const at = fieldRefused(refusal.field);
  if (at === null) return words.problem(refusal).message;
  const { section, key } = at;
  const shape = shapeOf(section, key);
  const meaning = shape === undefined ? key : fieldMeaning(`${section}/${key}`, words);
  return (
    <a
      href={`#${fieldId(section, key)}`}
      onClick={(event) => {
        event.preventDefault();
        goTo(section, key);
      }}
    >
      {words.sentence('protocol.wrongAt', {
        section: words.sentence(`protocol.${section}`),
        text: words.problem(refusal, { nameOf: () => meaning }).message,
      })}
    </a>
  );
}
