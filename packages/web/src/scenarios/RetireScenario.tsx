import type { Scenario } from '@evenfall/physiology';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { useSendScenario } from './useSendScenario.js';

type RetireProps = { readonly scenario: Scenario; readonly again: () => Promise<void> };

/** Takes one of the place's own off the list; it stays in the record and in the exercises that were done with it. */
export function RetireScenario({ scenario, again }: RetireProps) {
  const { words } = useApp();
  const form = useForm(`scenario retired ${scenario.id}`);
  const { send, refused } = useSendScenario(form);
  const retire = async () => {
    if (await send(scenario, true)) await again();
  };
  return (
    <>
      <button
        type="button"
        className="button button-quiet"
        title={words.sentence('scenarioForm.retireHint')}
        onClick={() => void retire()}
      >
        {words.sentence('scenarioForm.retire')}
        <span className="unseen">: {scenario.title}</span>
      </button>
      {refused === null ? null : <span role="alert">{refused}</span>}
    </>
  );
}
