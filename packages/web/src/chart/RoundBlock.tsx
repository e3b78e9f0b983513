import { REPEAT_SCATTER_MMHG } from '@evenfall/clinical';
import {
  type Agent,
  type AmendedEntry,
  type ChartRound,
  type DueRecheck,
  flagsStanding,
  notesStanding,
  notReliedOn,
  type StoredEntry,
} from '@evenfall/record';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { stampParts } from '../app/times.js';
import { chartedText, isVoidCharted, signOfCharted } from '../parts/charted.js';
import { flagsInCommon } from '../parts/flagsInCommon.js';
import { SharedFlags } from '../parts/SharedFlags.js';
import { notDoneText } from '../round/NotDoneForm.js';
import { contentOfEntry } from './contentOfEntry.js';
import { RoundCameTo } from './RoundCameTo.js';
import { RoundDuties } from './RoundDuties.js';
import { RoundOutcome } from './RoundOutcome.js';
import { useRulesOf } from './useRulesOf.js';
import { ValueBlock } from './ValueBlock.js';
import { whoText } from './who.js';

type RoundBlockProps = {
  readonly round: ChartRound;
  readonly person: string;
  /** When the person was born, `YYYY-MM-DD`; null where nobody knows. */
  readonly birthDate: string | null;
  readonly agents: readonly Agent[];
  /** When the pressure of this round is to be taken again. */
  readonly rechecks?: readonly DueRecheck[];
  /** Whether its open acts-now stand first on the page, with what closes them. */
  readonly isOpenAbove?: boolean;
  /** The rounds of the chart that it stands in. */
  readonly others: readonly ChartRound[];
};

/** One signed round: when, by whom, its values, and what was not done. */
export function RoundBlock({
  round,
  person,
  birthDate,
  agents,
  others,
  rechecks = [],
  isOpenAbove = false,
}: RoundBlockProps) {
  const { words } = useApp();
  const notes = notesStanding(round, useRulesOf(), birthDate);
  const signing = round.signed?.current.at(-1) ?? round.signed?.original;
  const { ownOf, shared } = flagsInCommon(
    round.values.flatMap(({ original, current }) =>
      current.flatMap((entry) => {
        const given = contentOfEntry(entry);
        if (given === null || isVoidCharted(given)) return [];
        const sign = signText(signOfCharted(given), words);
        const flags = flagsStanding(entry, round, notes);
        return [{ id: entry.id, claimOf: original.id, sign, name: chartedText(given, words), flags }];
      }),
    ),
    words.detail,
  );
  const first = signing ?? round.values[0]?.original;
  if (first === undefined) return null;
  return (
    <article className="round-block" aria-labelledby={`round-${round.id}`}>
      <header className="round-head">
        <h3 id={`round-${round.id}`}>
          <time dateTime={first.measuredAt.at}>
            {words.sentence(
              signing === undefined ? 'chart.measuredThen' : 'chart.signedThen',
              stampParts(first.measuredAt, words),
            )}
          </time>
        </h3>
        <p className="soft small">
          {signing === undefined ? words.sentence('chart.unsigned') : whoText(signing, agents, words)}
          {notReliedOn(round) !== null ? (
            <strong> · {words.sentence('chart.notAgreed')}</strong>
          ) : round.isPreliminary ? (
            <strong> · {words.sentence('chart.preliminary')}</strong>
          ) : null}
        </p>
        {round.isInError ? (
          <p>
            <strong>{words.sentence('chart.enteredInError')}</strong>
          </p>
        ) : null}
        {signing === undefined || round.unsigned.length === 0 ? null : (
          <p className="small">
            <strong>{words.sentence('chart.someUnsigned', { values: round.unsigned.length })}</strong>
          </p>
        )}
        {round.signedAgain.map(({ original }) => (
          <p key={original.id} className="soft small">
            {words.sentence('chart.signedAgain', { who: whoText(original, agents, words) })}
          </p>
        ))}
      </header>
      <RoundDuties
        round={round}
        person={person}
        agents={agents}
        rechecks={rechecks}
        isOpenAbove={isOpenAbove}
      />
      <RoundCameTo round={round} birthDate={birthDate} />
      {voidLast(round.values).map((value) => (
        <ValueBlock
          key={value.original.id}
          value={value}
          round={round}
          person={person}
          agents={agents}
          isUnsigned={round.unsigned.includes(value.original.id)}
          flagsOf={({ id }) => ownOf(id)}
        />
      ))}
      <SharedFlags shared={shared} />
      <Scatter round={round} />
      <NotDoneLines signing={signing} />
      <RoundOutcome round={round} person={person} agents={agents} others={others} />
    </article>
  );
}

/** How much the same person varies from minute to minute, beside the ranges of the readings: said once for the round. */
function Scatter({ round }: { readonly round: ChartRound }) {
  const { words } = useApp();
  const hasRange = round.values.some(({ current }) =>
    current.some(
      (entry) =>
        entry.kind === 'run' && entry.content.override === null && entry.content.value.systolicRange !== null,
    ),
  );
  if (!hasRange) return null;
  return (
    <p className="small soft round-scatter">{words.sentence('run.scatter', { mmHg: REPEAT_SCATTER_MMHG })}</p>
  );
}

/** What gives a number comes before what was broken off; otherwise in the order of the work. */
function voidLast(values: readonly AmendedEntry[]): readonly AmendedEntry[] {
  const isVoid = ({ original }: AmendedEntry) => {
    const given = contentOfEntry(original);
    return given !== null && isVoidCharted(given);
  };
  return [...values.filter((value) => !isVoid(value)), ...values.filter(isVoid)];
}

function NotDoneLines({ signing }: { readonly signing: StoredEntry | undefined }) {
  const { words } = useApp();
  if (signing?.kind !== 'round') return null;
  return signing.content.signs.map((one) =>
    'notDone' in one ? (
      <p key={one.sign} className="not-done-line">
        {words.sentence('chart.notDone', {
          sign: signText(one.sign, words),
          reason: notDoneText(one.notDone, words),
        })}
      </p>
    ) : null,
  );
}
