import type { Amends, Gauge } from '@evenfall/record';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Choices } from '../parts/Choices.js';
import { Refused } from '../parts/Refused.js';
import { GaugeFields } from './GaugeFields.js';
import { blank, gaugeFields, isSameGauge, readGauge } from './readGauge.js';
import { TextField } from './TextField.js';
import { useEquipmentEntry } from './useEquipmentEntry.js';

type Why = 'slip' | 'changed';

/** Puts right what is said of a gauge, or says that it moved or got another label; what stood before stays readable. */
export function CorrectGauge({ gauge }: { readonly gauge: Gauge }) {
  const { words } = useApp();
  // By what stands now: after another device put it right, the form begins anew.
  const form = useForm(`gauge-right ${gauge.newest}`, gaugeFields(gauge.named));
  const { send, refused } = useEquipmentEntry(form);
  const [wrong, setWrong] = useState<'name' | 'same' | 'why' | null>(null);
  const why: Why = form.text('why') === 'changed' ? 'changed' : 'slip';
  const set = (field: string) => (text: string) => {
    setWrong(null);
    form.set(field, text);
  };
  const keep = async () => {
    const content = readGauge(form.text);
    if (content === null) return setWrong('name');
    if (isSameGauge(content, gauge.named)) return setWrong('same');
    const text = blank(form.text('whyText'));
    if (why === 'changed' && text === null) return setWrong('why');
    const amends: Amends = {
      entry: gauge.newest,
      reason: why === 'slip' ? 'typing-slip' : 'other',
      text: why === 'slip' ? null : text,
    };
    await send({ kind: 'equipment', content, amends });
  };
  return (
    <form
      className="form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void keep();
      }}
    >
      <GaugeFields text={form.text} set={set} isAsked={wrong === 'name'} />
      <Choices<Why>
        legend={words.sentence('equipment.rightWhy')}
        choices={[
          { id: 'slip', text: words.sentence('equipment.rightSlip') },
          { id: 'changed', text: words.sentence('equipment.rightChanged') },
        ]}
        chosen={why}
        onChoose={set('why')}
      />
      {why === 'changed' ? (
        <TextField
          label={words.sentence('equipment.rightText')}
          value={form.text('whyText')}
          onChange={set('whyText')}
          wrong={wrong === 'why' ? words.sentence('equipment.rightTextMissing') : null}
        />
      ) : null}
      {wrong === 'same' ? (
        <p className="field-wrong" role="alert">
          {words.sentence('equipment.rightSame')}
        </p>
      ) : null}
      <Refused text={refused} />
      <button type="submit" className="button">
        {words.sentence('equipment.rightKeep')}
      </button>
    </form>
  );
}
