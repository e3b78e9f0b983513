import { useApp } from '../app/context.js';
import { begunRest, type RestDraft, restedBefore } from './restDraft.js';
import type { Round } from './useRound.js';

/** Whether a rest is asked for and nobody began it or said how it was; once a pressure was taken it is too late for one. */
export function isRestOpen({ draft, inForce }: Pick<Round, 'draft' | 'inForce'>): boolean {
  const { rest, pressure, exceptions } = draft;
  const isAsked = inForce.roundRules.plan.restSeconds > 0 && pressure.values.length === 0;
  return isAsked && rest === null && exceptions?.includes('rested') !== true;
}

/** The person sits down now: the rest begins, and nobody waits for it on a page. Or they had rested before. */
export function RestStart({ round, isFirst = true }: { readonly round: Round; readonly isFirst?: boolean }) {
  const { words, clock, session } = useApp();
  const { restSeconds } = round.inForce.roundRules.plan;
  const keep = (rest: RestDraft) => round.change((draft) => ({ ...draft, rest }));
  return (
    <div className="buttons rest-start">
      <button
        type="button"
        className={isFirst ? 'button button-large' : 'button'}
        onClick={() => keep(begunRest(restSeconds, { session, atMs: clock.monotonicMs() }))}
      >
        {words.sentence('rest.start', { seconds: restSeconds })}
      </button>
      <button type="button" className="button button-quiet" onClick={() => keep(restedBefore(restSeconds))}>
        {words.sentence('rest.before')}
      </button>
    </div>
  );
}
