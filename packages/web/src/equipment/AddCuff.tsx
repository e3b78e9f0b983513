import { CUFF_SCHEMES } from '@evenfall/clinical';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { fieldIn } from '../app/typedMeasure.js';
import { Field } from '../parts/Field.js';
import { Refused } from '../parts/Refused.js';
import { type CuffWrong, readCuff } from './readCuff.js';
import { TextField } from './TextField.js';
import { useEquipmentEntry } from './useEquipmentEntry.js';

/** Names cuffs of one size in one room. */
export function AddCuff() {
  const { words } = useApp();
  const form = useForm('cuffs', { pieces: '1' });
  const { send, refused } = useEquipmentEntry(form);
  const [wrong, setWrong] = useState<CuffWrong>({});
  const [isKept, setKept] = useState(false);
  // A field for each unit, so that a number is never read in another one than it was typed in.
  const [widthField, lengthField] = (['width', 'length'] as const).map((field) =>
    fieldIn(field, 'bladderCm', words.say.manner),
  ) as [string, string];
  const unit = words.sentence(`settings.${words.say.manner.length}`);
  const set = (field: string) => (text: string) => {
    setKept(false);
    setWrong({});
    form.set(field, text);
  };
  const add = async () => {
    const { text } = form;
    const read = readCuff(
      {
        size: text('size'),
        room: text('room'),
        pieces: text('pieces'),
        width: text(widthField),
        length: text(lengthField),
        note: text('note'),
      },
      words.say.manner,
    );
    setWrong(read.wrong);
    if (read.content !== null && (await send({ kind: 'equipment', content: read.content }))) setKept(true);
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
      <TextField label={words.sentence('equipment.room')} value={form.text('room')} onChange={set('room')} />
      <Field
        label={words.sentence('equipment.size')}
        wrong={wrong.size ? words.sentence('equipment.sizeMissing') : null}
      >
        {(control) => (
          <select
            {...control}
            value={form.text('size')}
            onChange={(event) => set('size')(event.target.value)}
          >
            <option value="">{words.sentence('equipment.chooseSize')}</option>
            {CUFF_SCHEMES.map((scheme) => (
              <optgroup key={scheme.id} label={words.title('preset', scheme.id)}>
                {scheme.cuffs.map((cuff) => (
                  <option key={cuff.id} value={`${scheme.id}/${cuff.id}`}>
                    {words.title('cuff', cuff.id)},{' '}
                    {words.sentence('equipment.arms', { largest: cuff.largestArmCm })},{' '}
                    {words.sentence('equipment.bladder', cuff.bladderCm)}
                  </option>
                ))}
              </optgroup>
            ))}
          </select>
        )}
      </Field>
      <TextField
        label={words.sentence('equipment.pieces')}
        isNumber
        value={form.text('pieces')}
        onChange={set('pieces')}
        wrong={wrong.pieces ? words.sentence('equipment.piecesWrong') : null}
      />
      <TextField
        label={words.sentence('equipment.bladderWidth', { unit })}
        hint={words.sentence('equipment.bladderHint')}
        isNumber
        value={form.text(widthField)}
        onChange={set(widthField)}
        wrong={wrong.bladder ? words.sentence('equipment.bladderWrong', { width: 13, length: 30 }) : null}
      />
      <TextField
        label={words.sentence('equipment.bladderLength', { unit })}
        isNumber
        value={form.text(lengthField)}
        onChange={set(lengthField)}
      />
      <Refused text={refused} />
      <button type="submit" className="button">
        {words.sentence('equipment.keepCuff')}
      </button>
      <p role="status">{isKept ? words.sentence('equipment.kept') : null}</p>
    </form>
  );
}
