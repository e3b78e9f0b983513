import { SIGN_FIGURES as F, PROBE_SITES } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { ChoiceField, NumberField, SelectField, type SignFields, TextField } from './signFields.js';
import type { OxygenTarget } from './typedSign.js';

type OxygenProps = { readonly fields: SignFields; readonly target: OxygenTarget };

/** A saturation with what must be kept beside it. How oxygen is given is asked for only on oxygen. */
export function OxygenFields({ fields, target }: OxygenProps) {
  const { words } = useApp();
  return (
    <>
      <NumberField fields={fields} field="percent" label={words.sentence('signs.percent')} />
      <ChoiceField
        fields={fields}
        field="breathes"
        label={words.sentence('signs.breathes')}
        choices={(['air', 'oxygen'] as const).map((id) => ({ id, text: words.sentence(`signs.${id}`) }))}
      />
      {fields.text('breathes') === 'oxygen' ? <GivenFields fields={fields} /> : null}
      {target.prescriber === null ? null : (
        <p className="soft">
          {words.sentence('signs.scaleTwo', {
            prescriber: target.prescriber,
            low: F.scaleTwoLowPercent.value,
            high: F.scaleTwoHighPercent.value,
          })}
        </p>
      )}
      <NumberField
        fields={fields}
        field="pulsePerMinute"
        label={words.sentence('signs.pulsePerMinute')}
        hint={words.sentence('signs.pulseHint')}
      />
      <SelectField
        fields={fields}
        field="probe"
        label={words.sentence('signs.probe')}
        choices={PROBE_SITES.map((id) => ({ id, text: words.title('probe', id) }))}
      />
    </>
  );
}

function GivenFields({ fields }: { readonly fields: SignFields }) {
  const { words } = useApp();
  return (
    <>
      <TextField
        fields={fields}
        field="device"
        label={words.sentence('signs.device')}
        hint={words.sentence('signs.deviceHint')}
      />
      <div className="side-by-side">
        <NumberField
          fields={fields}
          field="litresPerMinute"
          label={words.sentence('signs.litresPerMinute')}
        />
        <NumberField fields={fields} field="oxygenPercent" label={words.sentence('signs.oxygenPercent')} />
      </div>
    </>
  );
}
