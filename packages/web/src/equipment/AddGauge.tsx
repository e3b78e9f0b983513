import { useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Refused } from '../parts/Refused.js';
import { GaugeFields } from './GaugeFields.js';
import { readGauge } from './readGauge.js';
import { useEquipmentEntry } from './useEquipmentEntry.js';

/** Names a gauge of the place. */
export function AddGauge() {
  const { words } = useApp();
  const form = useForm('gauge');
  const { send, refused } = useEquipmentEntry(form);
  const [isAsked, setAsked] = useState(false);
  const [isKept, setKept] = useState(false);
  const set = (field: string) => (text: string) => {
    setKept(false);
    form.set(field, text);
  };
  const add = async () => {
    const content = readGauge(form.text);
    setAsked(content === null);
    if (content !== null && (await send({ kind: 'equipment', content }))) setKept(true);
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
      <GaugeFields text={form.text} set={set} isAsked={isAsked} />
      <Refused text={refused} />
      <button type="submit" className="button">
        {words.sentence('equipment.keepGauge')}
      </button>
      <p role="status">{isKept ? words.sentence('equipment.kept') : null}</p>
    </form>
  );
}
