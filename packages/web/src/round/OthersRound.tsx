import { useApp, useKept } from '../app/context.js';
import { stampText } from '../app/times.js';
import { AskedFirst } from '../parts/AskedFirst.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { useMeasuring } from '../signIn/useAccess.js';
import type { RoundDraft } from './draft.js';
import { knownLearners } from './learning.js';
import { discardRound } from './rounds.js';
import { claimedBy } from './whose.js';

/**
 * A round that somebody else began and did not sign: nothing of it is shown, gone on with or signed under another name. They go on
 * with it themselves, or it is given up; or whoever measures says that the name was wrong all along.
 */
export function OthersRound({ draft }: { readonly draft: RoundDraft }) {
  const app = useApp();
  const { words, store } = app;
  const agents = useKept(({ known }) => known.agents.value);
  const agent = useMeasuring();
  const nameOf = (one: string | null) =>
    agents?.find(({ id }) => id === one)?.name ?? words.sentence('people.somebodyElse');
  const claim = (by: string) =>
    store.change((state) => {
      const { drafts } = state.kept;
      if (drafts[draft.person] !== draft) return state;
      return {
        ...state,
        kept: {
          ...state.kept,
          drafts: { ...drafts, [draft.person]: claimedBy(draft, by, knownLearners(state)) },
        },
      };
    });
  return (
    <section className="form">
      <p className="notice">
        {words.sentence('people.othersRound', {
          name: nameOf(draft.by),
          text: stampText(draft.begunAt, words),
        })}
      </p>
      <p>{words.sentence('people.othersRoundWays', { text: nameOf(draft.by) })}</p>
      <WhoMeasures />
      <div className="buttons">
        {agent === null ? null : (
          <AskedFirst
            does={words.sentence('people.claim', { text: nameOf(agent) })}
            asks={words.sentence('people.claimSure', { name: nameOf(agent), text: nameOf(draft.by) })}
            now={words.sentence('people.claimNow')}
            onSure={() => claim(agent)}
          />
        )}
        <AskedFirst
          does={words.sentence('people.giveUpRound')}
          asks={words.sentence('people.giveUpRoundSure', { text: nameOf(draft.by) })}
          now={words.sentence('people.giveUpRoundNow')}
          onSure={() => discardRound(app, draft.person)}
        />
      </div>
    </section>
  );
}
