import { GAUGE_TYPES, type GaugeType } from '@evenfall/clinical';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Choices } from '../parts/Choices.js';
import { TextField } from './TextField.js';
import { useEquipmentEntry } from './useEquipmentEntry.js';

/** Names a gauge of the place. */
export function AddGauge() {
  const { words } = useApp();
  const form = useForm('gauge');
  const { send, refused } = useEquipmentEntry(form);
  const [isAsked, setAsked] = useState(false);
  const [isKept, setKept] = useState(false);
  const name = form.text('name').trim();
  const type = GAUGE_TYPES.find((one) => one === form.text('type')) ?? 'aneroid';
  const set = (field: string) => (text: string) => {
    setKept(false);
    form.set(field, text);
  };
  const add = async () => {
    setAsked(name === '');
    if (name === '') return;
    const content = {
      what: 'gauge',
      name,
      type,
      room: blank(form.text('room')),
      serial: blank(form.text('serial')),
      note: blank(form.text('note')),
    };
    if (await send({ kind: 'equipment', content })) setKept(true);
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
      <TextField
        label={words.sentence('equipment.name')}
        hint={words.sentence('equipment.nameHint')}
        value={form.text('name')}
        onChange={set('name')}
        wrong={isAsked && name === '' ? words.sentence('equipment.nameMissing') : null}
      />
      <Choices<GaugeType>
        legend={words.sentence('equipment.type')}
        isListed
        choices={GAUGE_TYPES.map((id) => ({ id, text: words.title('gaugeType', id) }))}
        chosen={type}
        onChoose={set('type')}
      />
      <TextField label={words.sentence('equipment.room')} value={form.text('room')} onChange={set('room')} />
      <TextField
        label={words.sentence('equipment.serial')}
        value={form.text('serial')}
        onChange={set('serial')}
      />
      <TextField label={words.sentence('equipment.note')} value={form.text('note')} onChange={set('note')} />
      {refused === null ? null : (
        <p className="notice" role="alert">
          {refused}
        </p>
      )}
      <button type="submit" className="button">
        {words.sentence('equipment.keepGauge')}
      </button>
      <p role="status">{isKept ? words.sentence('equipment.kept') : null}</p>
    </form>
  );
}

/** What was typed; null for nothing. */
export function blank(text: string): string | null {
  const typed = text.trim();
  return typed === '' ? null : typed;
}
