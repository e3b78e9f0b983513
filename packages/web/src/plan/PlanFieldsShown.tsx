import type { Refusal } from '@evenfall/clinical';
import { useId } from 'react';
import { useApp } from '../app/context.js';
import type { useForm } from '../app/forms.js';
import { isAlike, PLAN_GROUPS, type PlanField, type PlanGroup } from './planFields.js';

export type Way = {
  readonly way: 'first' | 'second';
  readonly form: ReturnType<typeof useForm>;
  readonly refusals: readonly Refusal[];
};

type ShownProps = { readonly ways: readonly [Way, Way] };

/** The fields of both ways of measuring: each is named once, with the first way beside the second, and what is wrong under it. */
export function PlanFieldsShown({ ways }: ShownProps) {
  return (
    <div className="plan-groups not-printed">
      {PLAN_GROUPS.map((group) => (
        <GroupShown key={group.says} group={group} ways={ways} />
      ))}
    </div>
  );
}

/** Open where the ways differ in it, or something in it is wrong; its name says in how much they differ. */
function GroupShown({ group: { says, fields }, ways }: ShownProps & { readonly group: PlanGroup }) {
  const { words } = useApp();
  const [first, second] = ways;
  const apart = fields.filter((one) => !isAlike(one, first.form.text, second.form.text)).length;
  const isWrong = ways.some(({ refusals }) =>
    refusals.some(({ field }) => fields.some(({ path }) => field === `/${path}`)),
  );
  return (
    <details className="scenario-group" open={apart > 0 || isWrong || undefined}>
      <summary>
        {words.sentence(says as 'plan.rule')}{' '}
        {apart === 0 ? null : (
          <span className="scenario-filled">{words.sentence('plan.apartIn', { fields: apart })}</span>
        )}
      </summary>
      {says === 'plan.faults' ? <p className="small soft">{words.sentence('plan.faultsSay')}</p> : null}
      <div className="plan-fields">
        <p className="plan-heads small soft" aria-hidden="true">
          <span />
          <span>{words.sentence('plan.first')}</span>
          <span>{words.sentence('plan.second')}</span>
        </p>
        {fields.map((field) => (
          <RowShown key={field.path} field={field} ways={ways} />
        ))}
      </div>
    </details>
  );
}

function RowShown({ field, ways }: ShownProps & { readonly field: PlanField }) {
  const { words } = useApp();
  const [first, second] = ways;
  const label = words.sentence(field.says as 'plan.rule');
  const differs = !isAlike(field, first.form.text, second.form.text);
  return (
    <div
      className={`plan-row${field.choices === null ? '' : ' plan-choice'}${field.path === 'rule' ? ' plan-long' : ''}${differs ? ' plan-apart' : ''}`}
    >
      <span className="plan-name">{label}</span>
      {ways.map((one) => (
        <CellShown key={one.way} field={field} label={label} {...one} />
      ))}
    </div>
  );
}

function CellShown({
  field,
  label,
  way,
  form,
  refusals,
}: Way & { readonly field: PlanField; readonly label: string }) {
  const { words } = useApp();
  const id = useId();
  const { path, choices, blank } = field;
  const wrong = refusals
    .filter((one) => one.field === `/${path}`)
    .map((one) => words.problem(one, { nameOf: () => label }).message)
    .join(' ');
  const control = {
    'aria-label': words.sentence('plan.fieldOf', { label, way: words.sentence(`plan.${way}`) }),
    'aria-invalid': wrong === '' ? undefined : true,
    'aria-describedby': wrong === '' ? undefined : `${id}-wrong`,
    value: form.text(path),
  };
  return (
    <div className="field plan-cell">
      <span className="plan-way small soft" aria-hidden="true">
        {words.sentence(`plan.${way}`)}
      </span>
      {choices === null ? (
        <input
          {...control}
          inputMode="decimal"
          autoComplete="off"
          placeholder={blank === null ? undefined : words.sentence(blank as 'plan.asRule')}
          onInput={({ currentTarget }) => form.set(path, currentTarget.value)}
        />
      ) : (
        <select {...control} onChange={({ target }) => form.set(path, target.value)}>
          {choices.map((one) => (
            <option key={one.id} value={one.id}>
              {one.says(words)}
            </option>
          ))}
        </select>
      )}
      {wrong === '' ? null : (
        <p className="field-wrong" id={`${id}-wrong`}>
          {wrong}
        </p>
      )}
    </div>
  );
}
