import { ARM_FACTS, SIDES } from '@evenfall/clinical';
import { FACT_NAMES, type FactName, PERSON_FACTS } from '@evenfall/record';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { Refused } from '../parts/Refused.js';
import { TextLine } from '../parts/TextLine.js';
import { localDate } from '../ports/stampAt.js';
import { DayField } from './DayField.js';
import { FactKindFields } from './FactKindFields.js';
import { FACT_FIELDS, type FactField, type FactFields, type FactWrong, readFact } from './factForm.js';
import { useFactEntry } from './useFactEntry.js';

/** The kinds of fact as the list offers them: of an arm, of the whole person, and what helps to measure. */
const GROUPS = [
  { label: 'facts.ofArm', names: [...ARM_FACTS, 'higher-arm'] },
  { label: 'facts.ofPerson', names: PERSON_FACTS },
  {
    label: 'facts.ofMeasuring',
    names: FACT_NAMES.filter(
      (name) =>
        name !== 'higher-arm' &&
        !ARM_FACTS.some((one) => one === name) &&
        !PERSON_FACTS.some((one) => one === name),
    ),
  },
] as const satisfies readonly { label: string; names: readonly FactName[] }[];

/** Adds a fact to a person. */
export function FactForm({ person }: { readonly person: string }) {
  const { words, clock } = useApp();
  const today = localDate(clock.stamp());
  const form = useForm(`fact ${person}`, { from: today });
  const { send, refused } = useFactEntry(person, form);
  const [wrong, setWrong] = useState<FactWrong>({});
  const [isAdded, setAdded] = useState(false);
  const set = (field: FactField, text: string) => {
    setAdded(false);
    setWrong(({ [field]: _mended, ...rest }) => rest);
    form.set(field, text);
  };
  const said = (field: FactField) => {
    const code = wrong[field];
    return code === undefined ? null : words.sentence(`facts.${code}`);
  };
  const fact = FACT_NAMES.find((name) => name === form.text('fact')) ?? null;
  const hasSide = fact === 'higher-arm' || ARM_FACTS.some((name) => name === fact);

  const add = async () => {
    const typed = Object.fromEntries(
      FACT_FIELDS.map((field) => [field, form.text(field)]),
    ) as unknown as FactFields;
    const { content, wrong: found } = readFact(typed, today);
    setWrong(found);
    if (content !== null && (await send({ kind: 'fact', content }))) setAdded(true);
  };
  return (
    <form
      className="form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void add();
      }}
    >
      <Field label={words.sentence('facts.fact')} wrong={said('fact')}>
        {(control) => (
          <select
            {...control}
            value={form.text('fact')}
            onChange={(event) => set('fact', event.target.value)}
          >
            <option value="">{words.sentence('facts.chooseFact')}</option>
            {GROUPS.map(({ label, names }) => (
              <optgroup key={label} label={words.sentence(label)}>
                {names.map((name) => (
                  <option key={name} value={name}>
                    {words.title('fact', name)}
                  </option>
                ))}
              </optgroup>
            ))}
          </select>
        )}
      </Field>
      {hasSide ? (
        <Choices
          legend={words.sentence('facts.side')}
          choices={SIDES.map((id) => ({ id, text: words.sentence(`facts.${id}`) }))}
          chosen={SIDES.find((id) => id === form.text('side')) ?? null}
          onChoose={(id) => set('side', id)}
          wrong={said('side')}
        />
      ) : null}
      {fact === null ? null : <FactKindFields fact={fact} text={form.text} set={set} said={said} />}
      <DayField
        label={words.sentence(fact === 'gave-birth' ? 'facts.fromBirth' : 'facts.from')}
        value={form.text('from')}
        onChange={(day) => set('from', day)}
        wrong={said('from')}
      />
      <DayField
        label={words.sentence('facts.until')}
        hint={words.sentence('facts.untilHint')}
        value={form.text('until')}
        onChange={(day) => set('until', day)}
        wrong={said('until')}
      />
      <TextLine
        label={words.sentence('facts.text')}
        wrong={said('text')}
        value={form.text('text')}
        onType={(text) => set('text', text)}
      />
      <Refused text={refused} />
      <button type="submit" className="button button-first button-large">
        {words.sentence('facts.add')}
      </button>
      <p role="status">{isAdded ? words.sentence('facts.added') : null}</p>
    </form>
  );
}
