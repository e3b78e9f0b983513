import type { Unit } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { type Measured, unitNamed, unitRead } from '../app/typedMeasure.js';
import { withPoints } from '../app/withPoint.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { MeasureField } from '../parts/MeasureField.js';
import { fieldTyped, unitField } from './typedSign.js';

/** The fields of one sign: what was typed, and what is wrong with each in words. */
export type SignFields = {
  readonly text: (field: string) => string;
  readonly set: (field: string, text: string) => void;
  /** @param label what the field is called on the page */
  readonly wrong: (field: string, label: string) => string | null;
};

type One = { readonly fields: SignFields; readonly field: string; readonly label: string };

type TypedProps = One & { readonly hint?: string };

/** A number typed freely: what cannot be read is said beside it, never guessed. */
export function NumberField({ fields, field, label, hint }: TypedProps) {
  return (
    <Field label={label} hint={hint} wrong={fields.wrong(field, label)}>
      {(control) => (
        <input
          {...control}
          type="text"
          inputMode="decimal"
          autoComplete="off"
          className="short-input"
          maxLength={12}
          value={fields.text(field)}
          onChange={(event) => fields.set(field, event.target.value)}
        />
      )}
    </Field>
  );
}

type MeasureProps = Omit<TypedProps, 'field' | 'label'> & {
  readonly of: Exclude<Measured, 'bladderCm'>;
  readonly labelIn: (unit: Unit) => string;
};

/** A number that may be typed in another unit than the usual one, which stands beside it to be chosen. */
export function SignMeasureField({ fields, of, labelIn, hint }: MeasureProps) {
  const { words } = useApp();
  const field = fieldTyped(of, words.say);
  const chosen = fields.text(unitField(of));
  const text = withPoints(fields.text(field).trim(), words.say);
  const unit = unitRead({ text, chosen: unitNamed(of, chosen) }, of, words.say.manner);
  return (
    <MeasureField
      of={of}
      labelIn={labelIn}
      hint={hint}
      wrong={fields.wrong(field, labelIn(unit))}
      text={fields.text(field)}
      onText={(text) => fields.set(field, text)}
      chosen={chosen}
      onChoose={(one) => fields.set(unitField(of), one)}
    />
  );
}

export function TextField({ fields, field, label, hint }: TypedProps) {
  return (
    <Field label={label} hint={hint} wrong={fields.wrong(field, label)}>
      {(control) => (
        <input
          {...control}
          type="text"
          autoComplete="off"
          maxLength={200}
          value={fields.text(field)}
          onChange={(event) => fields.set(field, event.target.value)}
        />
      )}
    </Field>
  );
}

type Choice = { readonly id: string; readonly text: string };

type ChoiceProps = One & { readonly choices: readonly Choice[]; readonly initial?: string };

/** One of a few, large enough for a thumb; none is chosen beforehand unless it only says how to ask. */
export function ChoiceField({ fields, field, label, choices, initial }: ChoiceProps) {
  const chosen = fields.text(field) || initial;
  return (
    <Choices
      legend={label}
      choices={choices}
      chosen={chosen ?? null}
      onChoose={(id) => fields.set(field, id)}
      wrong={fields.wrong(field, label)}
    />
  );
}

/** One of several that need not be said. */
export function SelectField({ fields, field, label, choices }: ChoiceProps) {
  const { words } = useApp();
  return (
    <Field label={label} wrong={fields.wrong(field, label)}>
      {(control) => (
        <select
          {...control}
          value={fields.text(field)}
          onChange={(event) => fields.set(field, event.target.value)}
        >
          <option value="">{words.sentence('signs.notSaid')}</option>
          {choices.map(({ id, text }) => (
            <option key={id} value={id}>
              {text}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
