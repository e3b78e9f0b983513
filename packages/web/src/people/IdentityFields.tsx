import { useApp } from '../app/context.js';
import type { useForm } from '../app/forms.js';
import { Field } from '../parts/Field.js';
import { localDate } from '../ports/stampAt.js';
import type { IdentityWrong } from './identityForm.js';

type IdentityFieldsProps = {
  readonly form: ReturnType<typeof useForm>;
  readonly wrong: IdentityWrong;
  readonly onMend: (name: keyof IdentityWrong) => void;
};

/** The identifiers of a person, in native controls. */
export function IdentityFields({ form, wrong, onMend }: IdentityFieldsProps) {
  const { clock, words } = useApp();
  const field = (name: keyof IdentityWrong) => ({
    value: form.text(name),
    onChange: (event: { target: { value: string } }) => {
      onMend(name);
      form.set(name, event.target.value);
    },
  });
  const said = (name: keyof IdentityWrong) => {
    const code = wrong[name];
    return code === undefined ? null : words.sentence(`person.${code}`);
  };
  return (
    <>
      <Field label={words.sentence('person.name')} wrong={said('name')}>
        {(control) => <input {...control} type="text" autoComplete="off" {...field('name')} />}
      </Field>
      <Field label={words.sentence('person.birthDate')} wrong={said('birthDate')}>
        {(control) => (
          <input {...control} type="date" max={localDate(clock.stamp())} {...field('birthDate')} />
        )}
      </Field>
      <Field
        label={words.sentence('person.number')}
        hint={words.sentence('person.numberHint')}
        wrong={said('number')}
      >
        {(control) => <input {...control} type="text" autoComplete="off" {...field('number')} />}
      </Field>
    </>
  );
}
