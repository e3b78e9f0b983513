import { useApp } from '../app/context.js';
import { Field } from '../parts/Field.js';
import type { IntakeState } from './useIntake.js';

/** Lines copied from a spreadsheet or a message. */
export function PastedTable({ state: { form, intake } }: { readonly state: IntakeState }) {
  const { words } = useApp();
  // Only a week at home can be typed.
  const hint = [
    words.sentence('away.pasteHint'),
    ...(intake.of === 'home' ? [words.sentence('away.pasteUntimed')] : []),
  ].join(' ');
  return (
    <Field label={words.sentence('away.paste')} hint={hint}>
      {(control) => (
        <textarea
          {...control}
          rows={10}
          spellCheck={false}
          className="away-paste"
          value={form.text('pasted')}
          onInput={({ currentTarget }) => form.set('pasted', currentTarget.value)}
        />
      )}
    </Field>
  );
}
