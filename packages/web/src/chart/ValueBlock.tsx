import type { Flag } from '@evenfall/clinical';
import {
  type Agent,
  type AmendedEntry,
  type ChartRound,
  pulseOfReading,
  type StoredEntry,
} from '@evenfall/record';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { stampText } from '../app/times.js';
import { ChartedFigure, StruckFigure } from '../parts/ChartedFigure.js';
import { isVoidCharted, signOfCharted } from '../parts/charted.js';
import { Flags } from '../parts/Flags.js';
import { ArmCharted } from './ArmCharted.js';
import { contentOfEntry } from './contentOfEntry.js';
import { GaugeFailed } from './GaugeFailed.js';
import { reasonText } from './reasonText.js';
import { WholeStory } from './WholeStory.js';
import { whoText } from './who.js';

type ValueBlockProps = {
  readonly value: AmendedEntry;
  /** The round that it stands in. */
  readonly round: ChartRound;
  readonly person: string;
  readonly agents: readonly Agent[];
  /** Whether no signing of its round names it. */
  readonly isUnsigned: boolean;
  /** What must be said beside one that stands. */
  readonly flagsOf: (entry: StoredEntry) => readonly Flag[];
};

/** One charted value: what stands, what stood before it, and the whole story behind it. */
export function ValueBlock({ value, round, person, agents, isUnsigned, flagsOf }: ValueBlockProps) {
  const { words } = useApp();
  const { original, current, story, standing } = value;
  const first = contentOfEntry(original);
  if (first === null) return null;
  const replaced = story.filter((entry) => contentOfEntry(entry) !== null && !current.includes(entry));
  return (
    <div className={isVoidCharted(first) ? 'value value-void' : 'value'}>
      <h4 className="value-sign">{signText(signOfCharted(first), words)}</h4>
      {isUnsigned ? <p className="standing">{words.sentence('chart.notSigned')}</p> : null}
      {standing === 'entered-in-error' ? (
        <p className="standing">{words.sentence('chart.enteredInError')}</p>
      ) : null}
      {standing === 'contested' ? <p className="standing">{words.sentence('chart.disputed')}</p> : null}
      {current.map((entry) => (
        <Standing
          key={entry.id}
          entry={entry}
          original={original}
          round={round}
          person={person}
          agents={agents}
          flags={flagsOf(entry)}
        />
      ))}
      {replaced.map((entry) => (
        <Replaced key={entry.id} entry={entry} story={story} agents={agents} />
      ))}
      <WholeStory value={value} round={round} person={person} agents={agents} />
    </div>
  );
}

type EntryProps = { readonly entry: StoredEntry; readonly agents: readonly Agent[] };

type StandingProps = EntryProps & {
  readonly round: ChartRound;
  readonly original: StoredEntry;
  readonly person: string;
  readonly flags: readonly Flag[];
};

/** A value that stands. */
function Standing({ entry, original, round, person, agents, flags }: StandingProps) {
  const { words } = useApp();
  const given = contentOfEntry(entry);
  if (given === null) return null;
  return (
    <div className="standing-value">
      <ChartedFigure
        given={given}
        isInRound
        pulse={entry.kind === 'run' ? pulseOfReading(entry, round) : undefined}
      />
      {entry.measuredAt.at === original.measuredAt.at ? null : (
        <p className="small retimed">
          {words.sentence('chart.retimed', {
            text: stampText(entry.measuredAt, words),
            was: stampText(original.measuredAt, words),
          })}
        </p>
      )}
      {entry !== original && entry.amends !== null ? (
        <p className="small">
          {words.sentence('chart.amendedBy', {
            who: whoText(entry, agents, words),
            at: stampText({ at: entry.writtenAt }, words),
            reason: reasonText(entry.amends, words),
          })}
        </p>
      ) : null}
      {entry.kind === 'run' ? (
        <>
          <ArmCharted run={entry} person={person} />
          <GaugeFailed run={entry} />
        </>
      ) : null}
      {isVoidCharted(given) ? null : <Flags flags={flags} />}
    </div>
  );
}

/** A value that was replaced: struck through, still readable, with what replaced it. */
function Replaced({ entry, story, agents }: EntryProps & { readonly story: readonly StoredEntry[] }) {
  const { words } = useApp();
  const given = contentOfEntry(entry);
  if (given === null) return null;
  const error = story.find((one) => one.kind === 'entered-in-error' && one.amends?.entry === entry.id);
  return (
    <div className="replaced">
      <StruckFigure given={given} />
      {error?.amends == null ? null : (
        <p className="small">
          {words.sentence('chart.storyError', {
            who: whoText(error, agents, words),
            at: stampText({ at: error.writtenAt }, words),
            reason: reasonText(error.amends, words),
          })}
        </p>
      )}
    </div>
  );
}
