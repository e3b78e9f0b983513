import type { Refusal } from '@evenfall/clinical';
import { parseScenario, SCENARIOS, type Scenario } from '@evenfall/physiology';
import { type ChangeEvent, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { withField, withoutForm } from '../app/forms.js';
import { Asking } from '../parts/Asking.js';
import { Field } from '../parts/Field.js';
import { SimulatedPage } from '../parts/SimulatedPage.js';
import { roomAt } from '../practice/roomAt.js';
import { useOwnScenarios } from './ownScenarios.js';
import { RetireScenario } from './RetireScenario.js';
import { draftOf } from './scenarioDraft.js';
import { SCENARIO_FIELDS } from './scenarioFields.js';
import { FROM_BLANK, FROM_FILE, formFrom } from './sources.js';

/** The simulated people that the place made for itself, and where a new one begins. */
export function ScenariosPage() {
  const { words } = useApp();
  const { asked, again } = useOwnScenarios();
  return (
    <SimulatedPage
      title={words.sentence('scenarioForm.title')}
      back={{ href: '/practice', text: words.sentence('practice.title') }}
    >
      <Asking asked={asked} again={again}>
        {(scenarios) =>
          scenarios.length === 0 ? (
            <p>{words.sentence('scenarioForm.none')}</p>
          ) : (
            <ul className="debrief-list">
              {scenarios.map((one) => (
                <OwnOne key={one.id} scenario={one} again={again} />
              ))}
            </ul>
          )
        }
      </Asking>
      <Begin />
      <OpenFile />
    </SimulatedPage>
  );
}

function OwnOne({ scenario, again }: { readonly scenario: Scenario; readonly again: () => Promise<void> }) {
  const { words } = useApp();
  const { id, title, systolic, diastolic } = scenario;
  return (
    <li>
      <Link href={`/practice/scenarios/${id}`}>{title ?? id}</Link>
      <span className="soft">{`${words.say.short(systolic)}/${words.say.short(diastolic)}`}</span>
      <Link
        href={roomAt(id)}
        className="button button-quiet"
        aria-label={`${words.sentence('scenarioForm.try')}: ${title ?? id}`}
      >
        {words.sentence('scenarioForm.try')}
      </Link>
      <RetireScenario scenario={scenario} again={again} />
    </li>
  );
}

/** A copy of a built-in one, or somebody without anything of note. */
function Begin() {
  const { words } = useApp();
  const [from, setFrom] = useState<string>(FROM_BLANK);
  const [, go] = useLocation();
  return (
    <form
      className="form"
      onSubmit={(event) => {
        event.preventDefault();
        go(`/practice/scenarios/${from}`);
      }}
    >
      <Field label={words.sentence('scenarioForm.begin')} hint={words.sentence('scenarioForm.beginHint')}>
        {(control) => (
          <select {...control} value={from} onChange={({ target }) => setFrom(target.value)}>
            <option value={FROM_BLANK}>{words.sentence('scenarioForm.blank')}</option>
            {SCENARIOS.map(({ id }) => (
              <option key={id} value={id}>
                {words.title('scenario', id)}
              </option>
            ))}
          </select>
        )}
      </Field>
      <button type="submit" className="button button-first">
        {words.sentence('scenarioForm.start')}
      </button>
    </form>
  );
}

type Wrong = { readonly name: string; readonly refusals: readonly Refusal[] };

/** A scenario from a file: read here, shown in the form, kept only when somebody keeps it. */
function OpenFile() {
  const { words, store } = useApp();
  const [, go] = useLocation();
  const [wrong, setWrong] = useState<Wrong | 'unreadable' | null>(null);
  const open = async ({ target }: ChangeEvent<HTMLInputElement>) => {
    const file = target.files?.[0];
    if (file === undefined) return;
    let json: unknown;
    try {
      json = JSON.parse(await file.text());
    } catch {
      setWrong('unreadable');
      return;
    }
    const read = parseScenario(json);
    if (!read.ok) {
      setWrong({ name: file.name, refusals: read.refusals });
      return;
    }
    const draft = draftOf(read.value);
    store.change((state) => ({
      ...state,
      kept: SCENARIO_FIELDS.reduce(
        (kept, { path }) => withField(kept, formFrom(FROM_FILE), path, draft[path] ?? ''),
        withoutForm(state.kept, formFrom(FROM_FILE)),
      ),
    }));
    go(`/practice/scenarios/${FROM_FILE}`);
  };
  return (
    <div className="form">
      <Field label={words.sentence('scenarioForm.openFile')} hint={words.sentence('scenarioForm.openHint')}>
        {(control) => <input {...control} type="file" accept=".json,application/json" onChange={open} />}
      </Field>
      {wrong === null ? null : (
        <div className="notice" role="alert">
          {wrong === 'unreadable' ? (
            <p>{words.sentence('scenarioForm.unreadable')}</p>
          ) : (
            <>
              <p>{words.sentence('scenarioForm.fileRefused', { name: wrong.name })}</p>
              <ul>
                {wrong.refusals.map((one) => (
                  <li key={`${one.field} ${one.code}`}>{words.problem(one).message}</li>
                ))}
              </ul>
            </>
          )}
        </div>
      )}
    </div>
  );
}
