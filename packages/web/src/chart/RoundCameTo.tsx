import { type ChartRound, isAmendedSince, notesStanding, resultsStanding, signingOf } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { ResultBlock } from '../round/ResultBlock.js';
import { useRulesOf } from './useRulesOf.js';

type CameToProps = {
  readonly round: ChartRound;
  /** As of `RoundBlock`. */
  readonly birthDate: string | null;
};

/** What a signed round came to, now and as it was signed: before its values, since it is what they are for. */
export function RoundCameTo({ round, birthDate }: CameToProps) {
  const { words } = useApp();
  const rulesOf = useRulesOf();
  const signing = signingOf(round);
  const values = resultsStanding(round, rulesOf);
  const notes = notesStanding(round, rulesOf, birthDate);
  if (round.isInError || values.length === 0) return null;
  const isRuled = rulesOf(signing?.content.protocolVersion ?? null) !== null;
  const signed = signing?.content.value ?? null;
  return (
    <div className="round-came-to">
      {isAmendedSince(round) ? (
        <p className="small standing">
          {words.sentence(isRuled ? 'chart.resultAmended' : 'chart.resultNotMade')}
        </p>
      ) : null}
      {values.length === 1 ? null : <p className="small standing">{words.sentence('chart.disputed')}</p>}
      {values.map((value) => (
        <ResultBlock key={JSON.stringify(value)} value={value} notes={notes} />
      ))}
      {signed === null || values.includes(signed) ? null : (
        <details className="as-signed">
          <summary>{words.sentence('chart.resultSigned')}</summary>
          <ResultBlock value={signed} />
        </details>
      )}
    </div>
  );
}
