import { useEffect } from 'react';
import { useApp, useKept } from '../app/context.js';
import { loadAgents } from '../server/load.js';
import { useSignedIn } from './useAccess.js';

/** Says that signed rounds of somebody else wait on this device: they are in no chart until that person signs in here. */
export function OthersWaiting() {
  const app = useApp();
  const { words } = app;
  const account = useSignedIn()?.account ?? null;
  const agents = useKept(({ known }) => known.agents.value) ?? [];
  const others = account === null ? [] : app.waitingElsewhere(account);
  const isAny = others.length > 0;
  useEffect(() => {
    if (isAny) void loadAgents(app);
  }, [app, isAny]);
  if (!isAny) return null;
  return (
    <div className="notices not-printed">
      {others.map(({ agent, rounds, isClosed }) => {
        const name = agents.find(({ id }) => id === agent)?.name ?? words.sentence('signIn.somebody');
        return (
          <p key={`${agent} ${isClosed}`} className="notice">
            {words.sentence(isClosed ? 'signIn.closedWaiting' : 'signIn.othersWaiting', { rounds, name })}
          </p>
        );
      })}
    </div>
  );
}
