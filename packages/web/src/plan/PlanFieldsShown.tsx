import type { Refusal } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import type { useForm } from '../app/forms.js';
import { Field } from '../parts/Field.js';
import { FAULT_FIELDS, PLAN_FIELDS, type PlanField } from './planFields.js';

type ShownProps = {
  readonly way: 'first' | 'second';
  readonly form: ReturnType<typeof useForm>;
  readonly refusals: readonly Refusal[];
};

/** The fields of one way of measuring, with what is wrong beside each. */
export function PlanFieldsShown({ way, form, refusals }: ShownProps) {
  const { words } = useApp();
  const isWrong = refusals.some(({ field }) => field.startsWith('/faults/'));
  const shown = ({ path, says, choices, blank }: PlanField) => {
    const label = words.sentence(says as 'plan.rule');
    const wrong = refusals
      .filter(({ field }) => field === `/${path}`)
      .map((one) => words.problem(one, { nameOf: () => label }).message)
      .join(' ');
    return (
      <Field key={path} label={label} wrong={wrong === '' ? null : wrong}>
        {(control) =>
          choices === null ? (
            <input
              {...control}
              inputMode="decimal"
              autoComplete="off"
              placeholder={blank === null ? undefined : words.sentence(blank as 'plan.asRule')}
              value={form.text(path)}
              onInput={({ currentTarget }) => form.set(path, currentTarget.value)}
            />
          ) : (
            <select
              {...control}
              value={form.text(path)}
              onChange={({ target }) => form.set(path, target.value)}
            >
              {choices.map((one) => (
                <option key={one.id} value={one.id}>
                  {one.says(words)}
                </option>
              ))}
            </select>
          )
        }
      </Field>
    );
  };
  return (
    <fieldset className="scenario-group">
      <legend>{words.sentence(`plan.${way}`)}</legend>
      <div className="scenario-fields">{PLAN_FIELDS.map(shown)}</div>
      <details className="more" open={isWrong || undefined}>
        <summary>{words.sentence('plan.faults')}</summary>
        <p className="small soft">{words.sentence('plan.faultsSay')}</p>
        <div className="scenario-fields">{FAULT_FIELDS.map(shown)}</div>
      </details>
    </fieldset>
  );
}
