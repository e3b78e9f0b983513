import { GAUGE_TYPES, type GaugeType } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import { typeIn } from './readGauge.js';
import { TextField } from './TextField.js';

type GaugeFieldsProps = {
  readonly text: (field: string) => string;
  readonly set: (field: string) => (text: string) => void;
  /** That nothing was kept, for want of a name. */
  readonly isAsked: boolean;
};

/** What is said of a gauge: its name, what it is and where it stands. */
export function GaugeFields({ text, set, isAsked }: GaugeFieldsProps) {
  const { words } = useApp();
  return (
    <>
      <TextField
        label={words.sentence('equipment.name')}
        hint={words.sentence('equipment.nameHint')}
        value={text('name')}
        onChange={set('name')}
        wrong={isAsked && text('name').trim() === '' ? words.sentence('equipment.nameMissing') : null}
      />
      <Choices<GaugeType>
        legend={words.sentence('equipment.type')}
        isListed
        choices={GAUGE_TYPES.map((id) => ({ id, text: words.title('gaugeType', id) }))}
        chosen={typeIn(text('type'))}
        onChoose={set('type')}
      />
      <TextField label={words.sentence('equipment.room')} value={text('room')} onChange={set('room')} />
      <TextField label={words.sentence('equipment.serial')} value={text('serial')} onChange={set('serial')} />
      <TextField label={words.sentence('equipment.note')} value={text('note')} onChange={set('note')} />
    </>
  );
}
