import {
  type Agent,
  type AmendedEntry,
  type ChartRound,
  pulseOfReading,
  type StoredEntry,
  whySaid,
} from '@evenfall/record';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useIsOver } from '../app/book.js';
import { useApp } from '../app/context.js';
import { instantText, stampText } from '../app/times.js';
import { GaugeNamed } from '../equipment/GaugeNamed.js';
import { chartedText, isRate } from '../parts/charted.js';
import { Flags } from '../parts/Flags.js';
import { VersionMention } from '../protocol/VersionMention.js';
import { contentOfEntry } from './contentOfEntry.js';
import { evidenceFacts, statisticsFacts, valueFacts } from './facts.js';
import { reasonText } from './reasonText.js';
import { runFacts, signFacts } from './runFacts.js';
import { whoText } from './who.js';

type WholeStoryProps = {
  readonly value: AmendedEntry;
  /** The round that it stands in. */
  readonly round: ChartRound;
  readonly person: string;
  readonly agents: readonly Agent[];
};

/** How a number came about: what was done, what was made of it by which rule, and what happened to it since. */
export function WholeStory({ value, round, person, agents }: WholeStoryProps) {
  const { words } = useApp();
  const isOver = useIsOver();
  const { current, original, story, standing } = value;
  const mark = standing === 'entered-in-error' || standing === 'contested' ? openMark(story) : undefined;
  return (
    <details className="whole-story">
      <summary>{words.sentence('chart.evidence')}</summary>
      <div className="story-parts">
        {(current.length === 0 ? [original] : current).map((entry) => (
          <EntryStory key={entry.id} entry={entry} round={round} isOneOfSeveral={current.length > 1} />
        ))}
        <h5>{words.sentence('chart.story')}</h5>
        <ol className="story">
          {story.map((entry) => (
            <li key={entry.id}>{storyText(entry)}</li>
          ))}
        </ol>
        {isOver || mark === undefined ? null : (
          <div className="buttons">
            <Link href={`/people/${person}/values/${mark.id}/amend`} className="button">
              {words.sentence('chart.takeBack')}
            </Link>
          </div>
        )}
        {isOver || standing === 'entered-in-error' ? null : (
          <div className="buttons">
            {current.map((entry) => (
              <Link key={entry.id} href={`/people/${person}/values/${entry.id}/amend`} className="button">
                {current.length > 1
                  ? words.sentence('chart.amendWhich', { text: rateOf(entry) })
                  : words.sentence('chart.amend')}
              </Link>
            ))}
          </div>
        )}
      </div>
    </details>
  );

  function rateOf(entry: StoredEntry): string {
    const given = contentOfEntry(entry);
    return given === null ? '' : chartedText(given, words);
  }

  function storyText(entry: StoredEntry): string {
    const figures = {
      rate: rateOf(entry),
      who: whoText(entry, agents, words),
      at: stampText({ at: entry.writtenAt }, words),
    };
    if (entry.amends === null) return words.sentence('chart.storySigned', figures);
    const reason = reasonText(entry.amends, words);
    const before = story.find(({ id }) => id === entry.amends?.entry);
    if (isRetimed(entry, before)) {
      const from = stampText(before.measuredAt, words);
      const to = stampText(entry.measuredAt, words);
      return words.sentence('chart.storyRetimed', { ...figures, reason, from, to });
    }
    const key = entry.kind === 'entered-in-error' ? 'chart.storyError' : 'chart.storyAmended';
    return words.sentence(key, { ...figures, reason });
  }
}

/** Whether an amendment says another time of measuring than what it amends. A mark of error has none of its own. */
function isRetimed(entry: StoredEntry, before: StoredEntry | undefined): before is StoredEntry {
  return (
    before !== undefined &&
    entry.kind !== 'entered-in-error' &&
    before.kind !== 'entered-in-error' &&
    entry.measuredAt.at !== before.measuredAt.at
  );
}

/** The last mark of error that nothing took back. */
function openMark(story: readonly StoredEntry[]): StoredEntry | undefined {
  const amended = new Set(story.map(({ amends }) => amends?.entry));
  return story.findLast(({ kind, id }) => kind === 'entered-in-error' && !amended.has(id));
}

type EntryStoryProps = {
  readonly entry: StoredEntry;
  readonly round: ChartRound;
  readonly isOneOfSeveral: boolean;
};

function EntryStory({ entry, round, isOneOfSeveral }: EntryStoryProps) {
  const { words } = useApp();
  const given = contentOfEntry(entry);
  if (given === null) return null;
  const { computedBy } = given.content;
  const said = whySaid(given.content.value);
  const kept: Shown[] = [
    [words.sentence('chart.measuredAt'), stampText(entry.measuredAt, words)],
    [words.sentence('chart.writtenAt'), stampText({ at: entry.writtenAt }, words)],
    [words.sentence('chart.recordedAt'), instantText(entry.recordedAt, words)],
    [
      words.sentence('chart.computedBy'),
      <>
        {computedBy.program}, {words.sentence('chart.rule', { text: computedBy.rule })},{' '}
        {computedBy.presetVersion === null ? (
          words.sentence('chart.protocolNone')
        ) : (
          <VersionMention version={computedBy.presetVersion} />
        )}
      </>,
    ],
  ];
  const statistics = given.kind === 'taps' ? statisticsFacts(given.content, words) : [];
  return (
    <>
      <h5>
        {words.sentence('chart.whatWasDone')}
        {isOneOfSeveral ? `: ${chartedText(given, words)}` : null}
      </h5>
      <Facts
        facts={[
          ...(isRate(given)
            ? [...evidenceFacts(given, words), ...valueFacts(given, words)]
            : given.kind === 'run'
              ? runFacts(given.content, words, entry.kind === 'run' ? pulseOfReading(entry, round) : null)
              : signFacts(given.content, words)),
          ...(given.kind === 'run' && given.content.evidence.gauge !== null
            ? [
                [
                  words.sentence('equipment.which'),
                  <GaugeNamed key="gauge" gauge={given.content.evidence.gauge} />,
                ] as const,
              ]
            : []),
          ...kept,
        ]}
      />
      {said.length === 0 ? null : (
        <>
          <h5>{words.sentence('chart.advice')}</h5>
          <Flags flags={said} />
        </>
      )}
      {statistics.length === 0 ? null : (
        <>
          <h5>{words.sentence('chart.statistics')}</h5>
          <Facts facts={statistics} />
        </>
      )}
    </>
  );
}

/** A fact as it is shown: its text may lead somewhere. */
type Shown = readonly [name: string, text: ReactNode];

function Facts({ facts }: { readonly facts: readonly Shown[] }) {
  return (
    <dl className="facts">
      {facts.map(([name, text]) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>{text}</dd>
        </div>
      ))}
    </dl>
  );
}
