import { useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Refused } from '../parts/Refused.js';
import { blank } from './readGauge.js';
import { TextField } from './TextField.js';
import { useEquipmentEntry } from './useEquipmentEntry.js';

/** Says that a thing is here no more; what was read with it stays. */
export function EndThing({ equipment, name }: { readonly equipment: string; readonly name: string }) {
  const { words } = useApp();
  const form = useForm(`equipment-end ${equipment}`);
  const { send, refused } = useEquipmentEntry(form);
  const [isAsking, setAsking] = useState(false);
  if (!isAsking) {
    return (
      <button type="button" className="button button-quiet" onClick={() => setAsking(true)}>
        {words.sentence('equipment.end')}
        <span className="unseen">: {name}</span>
      </button>
    );
  }
  return (
    <form
      className="form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void send({ kind: 'equipment-ended', content: { equipment, reason: blank(form.text('reason')) } });
      }}
    >
      <TextField
        label={words.sentence('equipment.endWhy')}
        value={form.text('reason')}
        onChange={(text) => form.set('reason', text)}
      />
      <Refused text={refused} />
      <div className="buttons">
        <button type="submit" className="button">
          {words.sentence('equipment.endNow')}
        </button>
        <button type="button" className="button button-quiet" onClick={() => setAsking(false)}>
          {words.sentence('app.cancel')}
        </button>
      </div>
    </form>
  );
}
