import { AMENDMENT_REASONS, type StoredEntry } from '@evenfall/record';
import { useApp } from '../app/context.js';
import type { useForm } from '../app/forms.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import {
  type AmendFields,
  type AmendWrong,
  canCorrectCount,
  canSetByHand,
  numberOfSign,
} from './amendForm.js';

type AmendFieldsetProps = {
  readonly entry: StoredEntry;
  /** Whether it stands as entered in error, and the mark is what is amended. */
  readonly isMarked: boolean;
  readonly form: ReturnType<typeof useForm>;
  readonly wrong: AmendWrong;
  readonly onMend: (field: keyof AmendFields) => void;
};

/** What should stand, and why. */
export function AmendFieldset({ entry, isMarked, form, wrong, onMend }: AmendFieldsetProps) {
  const { words } = useApp();
  const what = form.text('what');
  const reason = form.text('reason');
  const said = (field: keyof AmendFields) => {
    const found = wrong[field];
    if (found === undefined) return null;
    if (typeof found === 'string') return words.sentence(`amend.${found}`);
    const nameOf = () => words.sentence(field === 'perMinute' ? 'amend.rate' : 'amend.correctedN');
    return found.map((refusal) => words.problem(refusal, { nameOf }).message).join(' ');
  };
  const set = (field: keyof AmendFields, text: string) => {
    onMend(field);
    form.set(field, text);
  };
  const text = (field: keyof AmendFields, label: string, inputMode: 'text' | 'numeric' | 'decimal') => (
    <Field label={label} wrong={said(field)}>
      {(control) => (
        <input
          {...control}
          type="text"
          inputMode={inputMode}
          autoComplete="off"
          maxLength={500}
          value={form.text(field)}
          onChange={(event) => set(field, event.target.value)}
        />
      )}
    </Field>
  );
  return (
    <>
      <Choices
        legend={words.sentence('amend.what')}
        isListed
        choices={[
          ...(isMarked ? [{ id: 'as-was', text: words.sentence('amend.asWas') }] : []),
          ...(canCorrectCount(entry) ? [{ id: 'count', text: words.sentence('amend.correctedCount') }] : []),
          ...(entry.kind === 'run'
            ? [{ id: 'numbers', text: words.sentence('amend.correctedNumbers') }]
            : []),
          ...(numberOfSign(entry) === null
            ? []
            : [{ id: 'reading', text: words.sentence('amend.correctedReading') }]),
          ...(canSetByHand(entry)
            ? [
                {
                  id: 'by-hand',
                  text: words.sentence(entry.kind === 'run' ? 'amend.pressureByHand' : 'amend.byHand'),
                },
              ]
            : []),
          { id: 'time', text: words.sentence('amend.otherTime') },
          ...(isMarked ? [] : [{ id: 'in-error', text: words.sentence('amend.enteredInError') }]),
        ]}
        chosen={what === '' ? null : what}
        onChoose={(id) => set('what', id)}
        wrong={said('what')}
      />
      {what === 'count' ? text('n', words.sentence('amend.correctedN'), 'numeric') : null}
      {what === 'numbers' ? text('n', words.sentence('amend.numbers'), 'text') : null}
      {what === 'reading' ? text('n', words.sentence('amend.reading'), 'decimal') : null}
      {what !== 'by-hand'
        ? null
        : entry.kind === 'run'
          ? text('perMinute', words.sentence('amend.numbers'), 'text')
          : text('perMinute', words.sentence('amend.rate'), 'decimal')}
      {what === 'time' ? (
        <Field label={words.sentence('amend.time')} wrong={said('time')}>
          {(control) => (
            <input
              {...control}
              type="datetime-local"
              value={form.text('time')}
              onChange={(event) => set('time', event.target.value)}
            />
          )}
        </Field>
      ) : null}
      <Field
        label={words.sentence('amend.reason')}
        wrong={said('reason')}
        hint={reason === 'wrong-person' ? words.sentence('amend.wrongPerson') : undefined}
      >
        {(control) => (
          <select {...control} value={reason} onChange={(event) => set('reason', event.target.value)}>
            <option value="">{words.sentence('amend.chooseReason')}</option>
            {AMENDMENT_REASONS.map((one) => (
              <option key={one} value={one}>
                {words.sentence(`amend.${one}`)}
              </option>
            ))}
          </select>
        )}
      </Field>
      {text(
        'text',
        words.sentence(
          what === 'by-hand'
            ? 'amend.byHandWhy'
            : reason === 'other'
              ? 'amend.reasonTextOther'
              : 'amend.reasonText',
        ),
        'text',
      )}
    </>
  );
}
