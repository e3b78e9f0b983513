import { type ChartRound, isAmendedSince, signingOf, valueStanding } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { ResultBlock } from '../round/ResultPanels.js';
import { useRulesOf } from './useRulesOf.js';

/** What a signed round came to, now and as it was signed: before its values, since it is what they are for. */
export function RoundCameTo({ round }: { readonly round: ChartRound }) {
  const { words } = useApp();
  const rulesOf = useRulesOf();
  const signing = signingOf(round);
  const value = valueStanding(round, rulesOf);
  if (round.isInError || value === null) return null;
  const isRuled = rulesOf(signing?.content.protocolVersion ?? null) !== null;
  const signed = signing?.content.value ?? null;
  return (
    <div className="round-came-to">
      {isAmendedSince(round) ? (
        <p className="small standing">
          {words.sentence(isRuled ? 'chart.resultAmended' : 'chart.resultNotMade')}
        </p>
      ) : null}
      <ResultBlock value={value} />
      {signed === null || signed === value ? null : (
        <details className="as-signed">
          <summary>{words.sentence('chart.resultSigned')}</summary>
          <ResultBlock value={signed} />
        </details>
      )}
    </div>
  );
}
