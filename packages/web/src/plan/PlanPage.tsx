import { parsePlanProtocol } from '@evenfall/practice';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Field } from '../parts/Field.js';
import { SimulatedPage } from '../parts/SimulatedPage.js';
import { PlanFieldsShown } from './PlanFieldsShown.js';
import { PlanResults } from './PlanResults.js';
import { ALL_FIELDS, BEGINNINGS, differences, fieldsOf, planJson } from './planFields.js';
import { usePlan } from './usePlan.js';

const SIZES = ['1000', '10000', '100000'] as const;
const MOST_SEED = 4_294_967_295;

/** Two ways of measuring tried on the same simulated people, beside the page. */
export function PlanPage() {
  const { words } = useApp();
  const [first, second] = [
    useForm('plan first', fieldsOf(BEGINNINGS.first)),
    useForm('plan second', fieldsOf(BEGINNINGS.second)),
  ];
  const { standing, run, cancel } = usePlan();
  const [people, setPeople] = useState<string>(SIZES[1]);
  const [seed, setSeed] = useState('1');
  const [isAsked, setAsked] = useState(false);
  /** What was asked when the study was begun: fields may be changed under its results. */
  const [begun, setBegun] = useState('');
  const [protocol, against] = [
    parsePlanProtocol(planJson(first.text)),
    parsePlanProtocol(planJson(second.text)),
  ];
  const seedNumber = /^\d{1,10}$/.test(seed.trim()) ? Number(seed) : null;
  const isSeed = seedNumber !== null && seedNumber <= MOST_SEED;
  const now = JSON.stringify([planJson(first.text), planJson(second.text), people, seed.trim()]);
  const start = () => {
    setAsked(true);
    if (!protocol.ok || !against.ok || !isSeed) return;
    setBegun(now);
    run({ protocol: protocol.value, against: against.value, people: Number(people), seed: seedNumber });
  };
  const apart = differences(first.text, second.text, words);
  const isWrong = isAsked && !(protocol.ok && against.ok && isSeed);
  const isRunning = standing.is === 'running';
  return (
    <SimulatedPage
      title={words.sentence('plan.title')}
      back={{ href: '/practice', text: words.sentence('practice.title') }}
    >
      <p>{words.sentence('plan.lead')}</p>
      <form
        className="debrief plan"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          // One button for both, so that the keys stay where they are.
          if (isRunning) cancel();
          else start();
        }}
      >
        <PlanFieldsShown
          ways={[
            { way: 'first', form: first, refusals: isAsked && !protocol.ok ? protocol.refusals : [] },
            { way: 'second', form: second, refusals: isAsked && !against.ok ? against.refusals : [] },
          ]}
        />
        <button
          type="button"
          className="button button-quiet not-printed"
          disabled={apart.length === 0}
          onClick={() => {
            for (const { path } of ALL_FIELDS) second.set(path, first.text(path));
          }}
        >
          {words.sentence('plan.copyFirst')}
        </button>
        <div className="plan-study not-printed">
          <Field label={words.sentence('plan.people')} hint={words.sentence('plan.peopleHint')}>
            {(control) => (
              <select {...control} value={people} onChange={({ target }) => setPeople(target.value)}>
                {SIZES.map((size) => (
                  <option key={size} value={size}>
                    {words.say.number(Number(size))}
                  </option>
                ))}
              </select>
            )}
          </Field>
          <Field
            label={words.sentence('plan.seed')}
            hint={words.sentence('plan.seedHint')}
            wrong={isAsked && !isSeed ? words.sentence('plan.seedWrong') : null}
          >
            {(control) => (
              <input
                {...control}
                inputMode="numeric"
                autoComplete="off"
                value={seed}
                onInput={({ currentTarget }) => setSeed(currentTarget.value)}
              />
            )}
          </Field>
        </div>
        <section>
          <h2>{words.sentence('plan.differ')}</h2>
          {apart.length === 0 ? (
            <p>{words.sentence('plan.same')}</p>
          ) : (
            <ul className="plan-differ">
              {apart.map((text) => (
                <li key={text}>{text}</li>
              ))}
            </ul>
          )}
        </section>
        <div className="buttons not-printed">
          <button type="submit" className={isRunning ? 'button' : 'button button-first'}>
            {words.sentence(isRunning ? 'plan.cancel' : 'plan.run')}
          </button>
          {isRunning ? (
            <label className="plan-progress">
              <span className="small soft">
                {words.sentence('plan.running', { percent: Math.floor(100 * standing.done) })}
              </span>
              <progress max={1} value={standing.done} />
            </label>
          ) : null}
        </div>
        <p role="status">
          {isWrong && !isRunning
            ? words.sentence('plan.wrong')
            : standing.is === 'cancelled' || standing.is === 'failed'
              ? words.sentence(`plan.${standing.is}`)
              : null}
        </p>
        {standing.is === 'done' ? <PlanResults result={standing.result} isOld={begun !== now} /> : null}
        <p className="small soft">{words.sentence('plan.limits')}</p>
      </form>
    </SimulatedPage>
  );
}
