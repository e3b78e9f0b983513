import { BLANK, scenarioOf } from '@evenfall/physiology';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { Asking } from '../parts/Asking.js';
import { SimulatedPage } from '../parts/SimulatedPage.js';
import { useOwnScenarios } from './ownScenarios.js';
import { ScenarioEditor } from './ScenarioEditor.js';
import { copyOf, type Draft, draftOf } from './scenarioDraft.js';
import { FROM_BLANK, FROM_FILE, formFrom } from './sources.js';

/** The editor of one simulated person: of the place, or a new one that begins from nobody, from a built-in one or a file. */
export function ScenarioPage({ source }: { readonly source: string }) {
  const { words } = useApp();
  const { asked, again } = useOwnScenarios();
  const [kept, setKept] = useState<string | null>(null);
  const own = asked.value?.find(({ id }) => id === source);
  const title =
    kept === null && own === undefined
      ? words.sentence('scenarioForm.newTitle')
      : words.sentence('scenarioForm.editTitle', { name: kept ?? own?.title ?? own?.id ?? '' });
  return (
    <SimulatedPage
      title={title}
      back={{ href: '/practice/scenarios', text: words.sentence('scenarioForm.back') }}
    >
      <Asking asked={asked} again={again}>
        {(scenarios) => {
          const initial = own === undefined ? initialOf(source) : draftOf(own);
          if (initial === null) return <p className="notice">{words.sentence('scenarioForm.missing')}</p>;
          return (
            <ScenarioEditor
              form={formFrom(source)}
              initial={initial}
              taken={scenarios.map(({ id }) => id)}
              again={again}
              onKept={setKept}
            />
          );
        }}
      </Asking>
    </SimulatedPage>
  );
}

function initialOf(source: string): Draft | null {
  if (source === FROM_FILE) return {};
  if (source === FROM_BLANK) return copyOf(BLANK);
  const builtIn = scenarioOf(source);
  return builtIn === undefined ? null : copyOf(builtIn);
}
