import type { Refusal } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { Field } from '../parts/Field.js';
import { SeveralShown } from './SeveralShown.js';
import { elementOf } from './scenarioDraft.js';
import type { ScenarioField } from './scenarioFields.js';

type ShownProps = {
  readonly field: ScenarioField;
  readonly text: string;
  readonly wrong: readonly Refusal[];
  readonly set: (text: string) => void;
  readonly hint?: string | undefined;
};

/** One field of a scenario, with what is wrong with it beside it. */
export function ScenarioFieldShown({ field, text, wrong, set, hint }: ShownProps) {
  const { words } = useApp();
  const { shape, says, blank, path } = field;
  const label = words.sentence(says as 'scenarioForm.systolic');
  const said = wrong.map((one) => words.problem(one, { nameOf: () => label }).message).join(' ');
  if (shape.is === 'several')
    return <SeveralShown path={path} choices={shape.choices} text={text} wrong={wrong} set={set} />;
  if (shape.is === 'flag') {
    return (
      <label className="scenario-flag">
        <input
          type="checkbox"
          checked={text === 'yes'}
          onChange={({ target }) => set(target.checked ? 'yes' : '')}
        />
        {label}
      </label>
    );
  }
  return (
    <div className={shape.is === 'number' ? undefined : 'scenario-wide'} id={elementOf(path)}>
      <Field
        label={label}
        wrong={said === '' ? null : said}
        hint={blank === null ? hint : words.sentence(blank as 'scenarioForm.drawn')}
      >
        {(control) =>
          shape.is === 'choice' ? (
            <select {...control} value={text} onChange={({ target }) => set(target.value)}>
              {shape.isFree ? <option value="">{words.sentence('scenarioForm.none1')}</option> : null}
              {shape.choices.map((one) => (
                <option key={one.id} value={one.id}>
                  {words.sentence(one.says as 'scenarioForm.sex-f')}
                </option>
              ))}
            </select>
          ) : shape.is === 'text' ? (
            <textarea
              {...control}
              rows={3}
              value={text}
              onInput={({ currentTarget }) => set(currentTarget.value)}
            />
          ) : (
            <input
              {...control}
              inputMode={shape.is === 'number' ? 'decimal' : 'text'}
              autoComplete="off"
              value={text}
              onInput={({ currentTarget }) => set(currentTarget.value)}
            />
          )
        }
      </Field>
    </div>
  );
}
