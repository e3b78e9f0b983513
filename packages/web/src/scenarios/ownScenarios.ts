import type { Scenario } from '@evenfall/physiology';
import { useCallback } from 'react';
import { useApp } from '../app/context.js';
import { useFetched } from '../debrief/useFetched.js';

/** The simulated people that the place made for itself and still offers, by id. @param isWanted false asks for nothing */
export function useOwnScenarios(isWanted = true) {
  const { server } = useApp();
  const ask = useCallback(async () => {
    const answer = await server.call('listScenarios', {});
    if (!answer.ok) return answer;
    const scenarios = answer.value.scenarios.map(
      ({ content }) => (content as { readonly scenario: Scenario }).scenario,
    );
    return { ...answer, value: scenarios };
  }, [server]);
  return useFetched<readonly Scenario[]>(ask, isWanted);
}
