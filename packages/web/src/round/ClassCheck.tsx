import type { ClassIdentity } from '@evenfall/record';
import { useLocation } from 'wouter';
import { sessionHref } from '../app/book.js';
import { useApp } from '../app/context.js';
import { nextHref } from './nextHref.js';
import { discardRound } from './rounds.js';
import { useNextStep } from './useNextStep.js';
import type { Round } from './useRound.js';

type CheckProps = { readonly round: Round; readonly identity: ClassIdentity };

/** In a class a person says their pseudonym and agrees each time; who refuses is asked for no reason. */
export function ClassCheck({ round, identity }: CheckProps) {
  const app = useApp();
  const { words } = app;
  const [, go] = useLocation();
  const { person, session } = round.draft;
  const nextStep = useNextStep();
  return (
    <section className="identity-check">
      <p>{words.sentence('class.checkAsk')}</p>
      <dl>
        <dt>{words.sentence('class.pseudonym')}</dt>
        <dd>{identity.pseudonym}</dd>
      </dl>
      <div className="buttons-stacked">
        <button
          type="button"
          className="button button-first button-large"
          onClick={() =>
            nextStep(round.draft, round, ({ step }) => {
              round.change((draft) => ({ ...draft, isIdentityChecked: true }));
              go(nextHref(person, step), { replace: true });
            })
          }
        >
          {words.sentence('class.agrees')}
        </button>
        <button
          type="button"
          className="button button-large"
          onClick={() => {
            discardRound(app, person);
            go(sessionHref(session), { replace: true });
          }}
        >
          {words.sentence('class.refuses')}
        </button>
      </div>
      <p className="soft small">{words.sentence('class.refusing')}</p>
    </section>
  );
}
