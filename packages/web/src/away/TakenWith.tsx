import { SIDES } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { LONGEST_DEVICE } from './evidence.js';
import type { IntakeState } from './useIntake.js';

/** On which arm and with what all of it was taken: said once, for the readings that do not say so themselves. */
export function TakenWith({
  state: { form },
  devices,
}: {
  readonly state: IntakeState;
  /** What the series of before name: offered, so that a device keeps its name. */
  readonly devices: readonly string[];
}) {
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
            list="away-devices"
            autoComplete="off"
            maxLength={LONGEST_DEVICE}
            value={form.text('device')}
            onInput={({ currentTarget }) => form.set('device', currentTarget.value)}
          />
        )}
      </Field>
      <datalist id="away-devices">
        {devices.map((device) => (
          <option key={device} value={device} />
        ))}
      </datalist>
    </>
  );
}
