import type { SeriesQuestion } from '@evenfall/exchange';
import { isZone } from '@evenfall/exchange';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import type { IntakeState } from './useIntake.js';

/** What must be said of a table before any of it can be used; nothing of it is guessed. */
export function Questions({ state }: { readonly state: IntakeState }) {
  const { words } = useApp();
  const questions = state.intake.read?.questions ?? [];
  const asked = questions.filter(({ of }) => of !== 'columns');
  if (asked.length === 0) return null;
  return (
    <section className="notice away-questions" aria-label={words.sentence('away.questions')}>
      <h2>{words.sentence('away.questions')}</h2>
      <p>{words.sentence('away.questionsSay')}</p>
      {asked.map((question) => (
        <Question key={question.of} question={question} state={state} />
      ))}
    </section>
  );
}

function Question({ question, state }: { readonly question: SeriesQuestion; readonly state: IntakeState }) {
  const { words } = useApp();
  const { form, intake, setColumns } = state;
  const { of, choices, problem } = question;
  const came = { text: problem.got ?? '', line: problem.line ?? 1 };
  switch (of) {
    case 'dates':
      return (
        <Choices
          legend={words.sentence('away.askDates', came)}
          choices={(['dmy', 'mdy', 'ymd'] as const)
            .filter((one) => choices.includes(one))
            .map((id) => ({ id, text: words.sentence(`away.${id}`) }))}
          chosen={null}
          onChoose={(id) => form.set('dates', id)}
        />
      );
    case 'unit':
      return (
        <Choices
          legend={words.sentence('away.askUnit', came)}
          choices={(['kPa', 'mmHg'] as const).map((id) => ({ id, text: id }))}
          chosen={null}
          onChoose={(id) => form.set('unit', id)}
        />
      );
    case 'zone':
      return <ZoneQuestion state={state} came={came} />;
    case 'swapped': {
      const columns = intake.read?.mapping.columns ?? [];
      const swapped = columns.map((role) =>
        role === 'systolic' ? 'diastolic' : role === 'diastolic' ? 'systolic' : role,
      );
      return (
        <div>
          <p>{words.sentence('away.askSwapped', came)}</p>
          <div className="buttons">
            <button type="button" className="button" onClick={() => setColumns(swapped)}>
              {words.sentence('away.swap')}
            </button>
            <button type="button" className="button" onClick={() => form.set('sure', 'yes')}>
              {words.sentence('away.asTheyStand')}
            </button>
          </div>
        </div>
      );
    }
    case 'columns':
      return null;
  }
}

type ZoneProps = {
  readonly state: IntakeState;
  readonly came: { readonly text: string; readonly line: number };
};

/** In which zone the clock stood; this device's own is offered, and taken only when somebody says so. */
function ZoneQuestion({ state: { form, zone }, came }: ZoneProps) {
  const { words } = useApp();
  const [typed, setTyped] = useState(zone);
  const [isWrong, setWrong] = useState(false);
  return (
    <form
      className="form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        if (isZone(typed.trim())) form.set('zone', typed.trim());
        else setWrong(true);
      }}
    >
      <Field
        label={words.sentence('away.askZone', came)}
        hint={words.sentence('away.zoneHint')}
        wrong={isWrong ? words.sentence('away.zoneWrong') : null}
      >
        {(control) => (
          <input
            {...control}
            type="text"
            autoComplete="off"
            list="away-zones"
            value={typed}
            onInput={({ currentTarget }) => {
              setWrong(false);
              setTyped(currentTarget.value);
            }}
          />
        )}
      </Field>
      <datalist id="away-zones">
        {Intl.supportedValuesOf('timeZone').map((one) => (
          <option key={one} value={one} />
        ))}
      </datalist>
      <button type="submit" className="button">
        {words.sentence('away.zoneIs')}
      </button>
    </form>
  );
}
