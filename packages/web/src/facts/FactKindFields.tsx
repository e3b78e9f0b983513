import { CUFF_SCHEMES } from '@evenfall/clinical';
import type { FactName } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { type FactField, fieldsOf } from './factForm.js';

type KindProps = {
  readonly fact: FactName;
  readonly text: (field: string) => string;
  readonly set: (field: FactField, text: string) => void;
  readonly said: (field: FactField) => string | null;
};

/** What one kind of fact needs besides its days. The side of an arm is asked for before it. */
export function FactKindFields({ fact, text, set, said }: KindProps) {
  return fieldsOf(fact).map((field) => {
    switch (field) {
      case 'weeks':
      case 'fromMmHg':
      case 'toMmHg':
      case 'prescriber':
        return <TypedField key={field} field={field} text={text} set={set} said={said} />;
      case 'cuff':
        return <CuffField key={field} text={text} set={set} said={said} />;
      case 'sex':
        return <SexField key={field} text={text} set={set} said={said} />;
      default:
        return null;
    }
  });
}

type FieldProps = Omit<KindProps, 'fact'>;
type TypedProps = FieldProps & { readonly field: 'weeks' | 'fromMmHg' | 'toMmHg' | 'prescriber' };

function TypedField({ field, text, set, said }: TypedProps) {
  const { words } = useApp();
  const isName = field === 'prescriber';
  return (
    <Field
      label={words.sentence(`facts.${field}`)}
      hint={field === 'weeks' ? words.sentence('facts.weeksHint') : undefined}
      wrong={said(field)}
    >
      {(control) => (
        <input
          {...control}
          type="text"
          inputMode={isName ? 'text' : 'numeric'}
          autoComplete="off"
          className={isName ? undefined : 'short-input'}
          maxLength={isName ? 200 : 3}
          value={text(field)}
          onChange={(event) => set(field, event.target.value)}
        />
      )}
    </Field>
  );
}

function CuffField({ text, set, said }: FieldProps) {
  const { words } = useApp();
  return (
    <Field label={words.sentence('facts.cuff')} wrong={said('cuff')}>
      {(control) => (
        <select {...control} value={text('cuff')} onChange={(event) => set('cuff', event.target.value)}>
          <option value="">{words.sentence('facts.chooseCuff')}</option>
          {CUFF_SCHEMES.map(({ id, cuffs }) => (
            <optgroup key={id} label={words.title('preset', id)}>
              {cuffs.map((cuff) => (
                <option key={cuff.id} value={`${id}/${cuff.id}`}>
                  {words.title('cuff', cuff.id)}
                </option>
              ))}
            </optgroup>
          ))}
        </select>
      )}
    </Field>
  );
}

function SexField({ text, set, said }: FieldProps) {
  const { words } = useApp();
  return (
    <Choices
      legend={words.sentence('facts.sex')}
      choices={(['f', 'm'] as const).map((id) => ({ id, text: words.sentence(`facts.${id}`) }))}
      chosen={(['f', 'm'] as const).find((id) => id === text('sex')) ?? null}
      onChoose={(id) => set('sex', id)}
      wrong={said('sex')}
    />
  );
}
