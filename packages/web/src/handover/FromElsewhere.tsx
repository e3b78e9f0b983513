import {
  type Agent,
  type AmendedEntry,
  type StoredEntry,
  type UnclearCorrection,
  unclearCorrections,
} from '@evenfall/record';
import { postureTexts } from '@evenfall/words';
import { useMemo } from 'react';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { stampText } from '../app/times.js';
import { reasonText } from '../chart/reasonText.js';
import { whoText } from '../chart/who.js';
import { MarkWrong } from './MarkWrong.js';
import { reportedText } from './reportedText.js';
import { saidOtherwise } from './saidOtherwise.js';

type FromElsewhereProps = {
  readonly reported: readonly AmendedEntry[];
  readonly person: string;
  readonly agents: readonly Agent[];
};

/** Values that came from another system or a table: apart from the chart, since nobody here measured them. */
export function FromElsewhere({ reported, person, agents }: FromElsewhereProps) {
  const { words } = useApp();
  const unclear = useMemo(() => unclearCorrections(reported.flatMap(({ story }) => story)), [reported]);
  if (reported.length === 0) return null;
  return (
    <section className="fact-list elsewhere" aria-labelledby="elsewhere">
      <h2 id="elsewhere">{words.sentence('handover.elsewhere')}</h2>
      <p className="soft small">{words.sentence('handover.elsewhereHint')}</p>
      <ul>
        {reported.map((value) => (
          <Row key={value.original.id} value={value} person={person} agents={agents} unclear={unclear} />
        ))}
      </ul>
    </section>
  );
}

type RowProps = {
  readonly value: AmendedEntry;
  readonly person: string;
  readonly agents: readonly Agent[];
  readonly unclear: ReadonlyMap<string, UnclearCorrection>;
};

function Row({ value, person, agents, unclear }: RowProps) {
  const { words } = useApp();
  const { current, story } = value;
  const replaced = saidOtherwise(story, current);
  const marks = story.filter(({ kind }) => kind === 'entered-in-error');
  return (
    <li className="fact-row">
      {current.map((entry) => (
        <Said key={entry.id} entry={entry} agents={agents} unclear={unclear.get(entry.id)} />
      ))}
      {replaced.map((entry) =>
        entry.kind === 'reported' ? (
          <p key={entry.id} className="soft">
            {signText(entry.content.value.of, words)} <del>{reportedText(entry.content.value, words)}</del>
            {', '}
            {stampText(entry.measuredAt, words)}
          </p>
        ) : null,
      )}
      {marks.map((mark) =>
        mark.amends === null ? null : (
          <p key={mark.id} className="soft small">
            {words.sentence('chart.storyError', {
              who: whoText(mark, agents, words),
              at: stampText({ at: mark.writtenAt }, words),
              reason: reasonText(mark.amends, words),
            })}
          </p>
        ),
      )}
      {current.map((entry) => (
        <MarkWrong key={entry.id} entry={entry} person={person} />
      ))}
    </li>
  );
}

type SaidProps = {
  readonly entry: StoredEntry;
  readonly agents: readonly Agent[];
  readonly unclear: UnclearCorrection | undefined;
};

/** One value as it was said, with all that its source says of it. */
function Said({ entry, agents, unclear }: SaidProps) {
  const { words } = useApp();
  if (entry.kind !== 'reported') return null;
  const { value, asSent, by, method, site, posture, interpretation, until, note } = entry.content;
  const who =
    by === null ? words.sentence('handover.saidByNobody') : words.sentence('handover.saidBy', { text: by });
  const sent = asSent === null ? null : words.sentence('handover.sentAs', { text: asSent });
  const mean =
    until === null ? null : words.sentence('handover.meanUntil', { text: stampText({ at: until }, words) });
  const about = [sent, site, posture, ...postureTexts(entry.content, words), method, interpretation].filter(
    (part) => part !== null,
  );
  return (
    <>
      <p>
        {signText(value.of, words)} <strong className="elsewhere-value">{reportedText(value, words)}</strong>
        {', '}
        <time dateTime={entry.measuredAt.at}>{stampText(entry.measuredAt, words)}</time>
        {mean === null ? null : `, ${mean}`}
      </p>
      {about.length === 0 ? null : <p className="small">{about.join(' · ')}</p>}
      {unclear === undefined ? null : (
        <p>
          <strong>
            {words.sentence(
              unclear.is === 'correction' ? 'handover.unclearCorrection' : 'handover.mayBeCorrected',
              { text: words.say.allOf(unclear.others.map((at) => stampText({ at }, words))) },
            )}
          </strong>
        </p>
      )}
      {note === null ? null : <p className="small note-text">{note}</p>}
      <p className="soft small">
        {who}.{' '}
        {words.sentence('handover.importedBy', {
          who: whoText(entry, agents, words),
          at: stampText({ at: entry.writtenAt }, words),
        })}
      </p>
    </>
  );
}
