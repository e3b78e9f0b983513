import { SIDES } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { LONGEST_DEVICE } from './evidence.js';
import type { IntakeState } from './useIntake.js';

/** On which arm and with what all of it was taken: said once, for the readings that do not say so themselves. */
export function TakenWith({ state: { form } }: { readonly state: IntakeState }) {
  const { words } = useApp();
  return (
    <>
      <Choices
        legend={words.sentence('away.whichArm')}
        choices={[
          ...SIDES.map((id) => ({ id, text: words.sentence(`facts.${id}`) })),
          { id: 'unknown' as const, text: words.sentence('away.treated-unknown') },
        ]}
        chosen={([...SIDES, 'unknown'] as const).find((one) => one === form.text('arm')) ?? null}
        onChoose={(id) => form.set('arm', id)}
      />
      <Field label={words.sentence('away.whichDevice')} hint={words.sentence('away.whichHint')}>
        {(control) => (
          <input
            {...control}
            type="text"
            autoComplete="off"
            maxLength={LONGEST_DEVICE}
            value={form.text('device')}
            onInput={({ currentTarget }) => form.set('device', currentTarget.value)}
          />
        )}
      </Field>
    </>
  );
}
