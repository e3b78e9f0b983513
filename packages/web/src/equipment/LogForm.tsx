import { gaugeResult, type Refusal } from '@evenfall/clinical';
import { chartGaugeLog, type GaugeLoggedContent, type InForce } from '@evenfall/record';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { withPoint } from '../app/withPoint.js';
import { Choices } from '../parts/Choices.js';
import { Flags } from '../parts/Flags.js';
import { Refused } from '../parts/Refused.js';
import { logText } from './gaugeText.js';
import { blank } from './readGauge.js';
import { LOG_OF, type LogOf, offeredAt, pointRows, readLog } from './readGaugeLog.js';
import { TextField } from './TextField.js';
import { useEquipmentEntry } from './useEquipmentEntry.js';

type LogFormProps = { readonly gauge: string; readonly inForce: InForce };

/** Notes what was done with a gauge, and says at once what it comes to by the rules in force. */
export function LogForm({ gauge, inForce }: LogFormProps) {
  const { words, program } = useApp();
  const rows = pointRows(inForce.equipmentRules);
  const initial = Object.fromEntries(offeredAt(inForce.equipmentRules).map((at, row) => [`other${row}`, at]));
  const form = useForm(`gauge-log ${gauge}`, initial);
  const { send, refused } = useEquipmentEntry(form);
  const [wrong, setWrong] = useState<readonly Refusal[]>([]);
  const [kept, setKept] = useState<GaugeLoggedContent | null>(null);
  const of = LOG_OF.find((one) => one === form.text('of')) ?? 'zero';
  const set = (field: string) => (text: string) => {
    setKept(null);
    setWrong([]);
    form.set(field, text);
  };
  const saying = (field: string, label: string) => {
    const found = wrong.filter((one) => one.field === field);
    return found.length === 0
      ? null
      : found.map((one) => words.problem(one, { nameOf: () => label }).message).join(' ');
  };
  const field = (name: string, label: string, hint?: string) => (
    <TextField
      label={label}
      {...(hint === undefined ? {} : { hint })}
      isNumber
      value={form.text(name)}
      onChange={set(name)}
      wrong={saying(`/${name}`, label)}
    />
  );
  const keep = async () => {
    const read = readLog(of, form.text, rows);
    setWrong(read.ok ? [] : read.refusals);
    if (!read.ok) return;
    const log = read.value;
    const content = chartGaugeLog({ gauge, log, note: blank(form.text('note')) }, inForce, program);
    if (await send({ kind: 'gauge-logged', content })) setKept(content);
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
      <Choices<LogOf>
        legend={words.sentence('equipment.logOf')}
        choices={LOG_OF.map((id) => ({
          id,
          text:
            id === 'dropped' || id === 'repaired'
              ? words.title('gaugeEvent', id)
              : words.title('gaugeCheck', id),
        }))}
        chosen={of}
        onChoose={set('of')}
      />
      {of === 'zero'
        ? field('restMmHg', words.sentence('equipment.rest'), words.sentence('equipment.restHint'))
        : null}
      {of === 'leak' ? (
        <>
          <p className="soft">{words.sentence('equipment.leakHow')}</p>
          {field('fromMmHg', words.sentence('equipment.from'))}
          {field('toMmHg', words.sentence('equipment.to'))}
          {field('seconds', words.sentence('equipment.seconds'))}
        </>
      ) : null}
      {of === 'comparison' ? (
        <>
          <TextField
            label={words.sentence('equipment.reference')}
            hint={words.sentence('equipment.referenceHint')}
            value={form.text('reference')}
            onChange={set('reference')}
            wrong={saying('/reference', words.sentence('equipment.reference'))}
          />
          <Points rows={rows} text={form.text} set={set} wrong={wrong} />
        </>
      ) : null}
      {of === 'dropped' ? <p>{words.sentence('equipment.droppedSays')}</p> : null}
      {of === 'repaired' ? <p>{words.sentence('equipment.repairedSays')}</p> : null}
      <TextField label={words.sentence('equipment.note')} value={form.text('note')} onChange={set('note')} />
      <Refused text={refused} />
      <button type="submit" className="button button-first">
        {words.sentence('equipment.keepLog')}
      </button>
      <div role="status">
        {kept === null ? null : (
          <>
            <p>
              <strong>{logText(kept, words)}</strong>
            </p>
            <Flags flags={[...kept.value.flags, ...kept.value.why]} />
          </>
        )}
      </div>
    </form>
  );
}

type PointsProps = {
  readonly rows: readonly number[];
  readonly text: (field: string) => string;
  readonly set: (field: string) => (text: string) => void;
  readonly wrong: readonly Refusal[];
};

/** The pressures of a comparison: a row for each, the other gauge's and this one's, with the difference beside. */
function Points({ rows, text, set, wrong }: PointsProps) {
  const { words } = useApp();
  const label = words.sentence('equipment.points');
  const said = wrong
    .filter(({ field }) => field.startsWith('/points'))
    .map((one) => words.problem(one, { nameOf: () => label }).message);
  return (
    <fieldset className="points">
      <legend>{label}</legend>
      <div className="point-row small soft" aria-hidden="true">
        <span>{words.sentence('equipment.pointOther')}</span>
        <span>{words.sentence('equipment.pointThis')}</span>
      </div>
      {rows.map((row) => (
        <div key={row} className="point-row">
          {(['other', 'gauge'] as const).map((of) => (
            <input
              key={of}
              type="text"
              inputMode="decimal"
              autoComplete="off"
              className="short-input"
              aria-label={words.sentence(
                of === 'other' ? 'equipment.pointOtherNo' : 'equipment.pointThisNo',
                { number: row + 1 },
              )}
              value={text(`${of}${row}`)}
              onChange={({ target }) => set(`${of}${row}`)(withPoint(target.value, words.say))}
            />
          ))}
          <Difference other={text(`other${row}`)} gauge={text(`gauge${row}`)} />
        </div>
      ))}
      {said.length === 0 ? null : (
        <p className="field-wrong" role="alert">
          {said.join(' ')}
        </p>
      )}
    </fieldset>
  );
}

/** What one row says of the gauge, as soon as both were typed. */
function Difference({ other, gauge }: { readonly other: string; readonly gauge: string }) {
  const { words } = useApp();
  const typed: Readonly<Record<string, string>> = { other0: other, gauge0: gauge, reference: '-' };
  const read = readLog('comparison', (field) => typed[field] ?? '', [0]);
  if (!read.ok) return <span />;
  const { errorMmHg, errorAtMmHg } = gaugeResult(read.value);
  if (errorMmHg === null || errorAtMmHg === null) return <span />;
  const figures = { byMmHg: Math.abs(errorMmHg), atMmHg: errorAtMmHg };
  return (
    <span className="small">
      {errorMmHg === 0
        ? words.sentence('equipment.readRight')
        : words.sentence(errorMmHg > 0 ? 'equipment.readHigh' : 'equipment.readLow', figures)}
    </span>
  );
}
