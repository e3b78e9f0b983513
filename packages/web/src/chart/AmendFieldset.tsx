import { type Count, SIDES, TEMPERATURE_SITES } from '@evenfall/clinical';
import type { StoredEntry } from '@evenfall/record';
import type { Say } from '@evenfall/words';
import { useApp, useKept } from '../app/context.js';
import type { useForm } from '../app/forms.js';
import { fieldIn, isMeasured } from '../app/typedMeasure.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { MeasureField } from '../parts/MeasureField.js';
import { notInWindow } from '../quick/setWindow.js';
import {
  type AmendFields,
  type AmendWrong,
  canCorrectCount,
  canSetByHand,
  PER_MINUTE,
  reasonsFor,
} from './amendForm.js';
import { cuffsFor } from './amendPlace.js';
import { WITH_SET } from './amendSet.js';
import { type Reading, readingOf, siteOf } from './amendSign.js';
import { FELT_UPRIGHT, isTakenStanding } from './amendUpright.js';

type AmendFieldsetProps = {
  readonly entry: StoredEntry;
  /** Whether it stands as entered in error, and the mark is what is amended. */
  readonly isMarked: boolean;
  /** Of the person on the day of the value, in whole months; null where it is not known. */
  readonly ageMonths: number | null;
  /** Over how long a pulse can have been counted, in seconds. */
  readonly windows: readonly number[];
  /** The other values that stand in its round, in figures. */
  readonly beside: readonly string[];
  /** Whether it must be said what becomes of them. */
  readonly isSetAsked: boolean;
  readonly form: ReturnType<typeof useForm>;
  readonly wrong: AmendWrong;
  readonly onMend: (field: keyof AmendFields) => void;
};

/** The field of the form in which a number is retyped: another one for each unit. */
export function readingField(entry: StoredEntry, what: string, { manner }: Say): string {
  const key = what === 'reading' ? readingOf(entry)?.key : undefined;
  return key !== undefined && isMeasured(key) ? fieldIn('n', key, manner) : 'n';
}

/** Whether a reading is a number that can be typed in more than one unit. */
function isTypedIn(reading: Reading): reading is Reading & { readonly key: 'celsius' | 'kg' | 'cm' } {
  return isMeasured(reading.key);
}

const FELT_TEXT = {
  none: 'pressure.wellUpright',
  unwell: 'pressure.unwellUpright',
  unasked: 'pressure.uprightUnasked',
} as const;

/** What was counted, of a count that was finished. */
function countIn(entry: StoredEntry): Count | null {
  if (entry.kind !== 'count') return null;
  const { count } = entry.content.evidence;
  return 'n' in count ? count : null;
}

/** What should stand, and why. */
export function AmendFieldset({
  entry,
  isMarked,
  ageMonths,
  windows,
  beside,
  isSetAsked,
  form,
  wrong,
  onMend,
}: AmendFieldsetProps) {
  const { words } = useApp();
  const what = form.text('what');
  const reason = form.text('reason');
  const reading = readingOf(entry);
  const counted = what === 'count' ? countIn(entry) : null;
  const isRate = form.text('unit') === PER_MINUTE;
  const said = (field: keyof AmendFields) => {
    const found = wrong[field];
    if (found === undefined) return null;
    if (typeof found === 'string') return words.sentence(`amend.${found}`);
    const unreached = notInWindow(found[0] ?? null);
    if (unreached !== null) return words.sentence('quick.notInWindow', unreached);
    const nameOf = () =>
      words.sentence(
        entry.kind === 'run'
          ? field === 'n'
            ? 'amend.pressureAndPulse'
            : 'app.pressure'
          : field === 'perMinute'
            ? 'amend.rate'
            : 'amend.correctedN',
      );
    return found.map((refusal) => words.problem(refusal, { nameOf }).message).join(' ');
  };
  const fieldOf = (field: keyof AmendFields) =>
    field === 'n' ? readingField(entry, what, words.say) : field;
  const set = (field: keyof AmendFields, text: string) => {
    // Another unit makes another number of the same text.
    onMend(field === 'unit' ? 'n' : field);
    form.set(fieldOf(field), text);
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
          value={form.text(fieldOf(field))}
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
            ? [
                { id: 'numbers', text: words.sentence('amend.correctedNumbers') },
                { id: 'place', text: words.sentence('amend.correctedPlace') },
              ]
            : []),
          ...(isTakenStanding(entry)
            ? [{ id: 'upright', text: words.sentence('amend.correctedUpright') }]
            : []),
          ...(reading === null ? [] : [{ id: 'reading', text: words.sentence('amend.correctedReading') }]),
          ...(siteOf(entry) === null ? [] : [{ id: 'site', text: words.sentence('amend.correctedSite') }]),
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
      {counted === null ? null : (
        <>
          <Choices
            legend={words.sentence('amend.numberIs')}
            choices={[
              { id: '', text: words.sentence('amend.countedIn', { seconds: counted.windowSeconds }) },
              { id: PER_MINUTE, text: words.sentence('amend.rate') },
            ]}
            chosen={isRate ? PER_MINUTE : ''}
            onChoose={(id) => set('unit', id)}
          />
          {text(
            'n',
            isRate
              ? words.sentence('amend.rate')
              : words.sentence('amend.countedIn', { seconds: counted.windowSeconds }),
            'numeric',
          )}
          {isRate && counted.of === 'pulse' ? (
            <Choices
              legend={words.sentence('quick.countedFor')}
              choices={windows.map((seconds) => ({
                id: String(seconds),
                text: words.sentence('quick.seconds', { seconds }),
              }))}
              chosen={form.text('windowSeconds') || String(counted.windowSeconds)}
              onChoose={(seconds) => {
                onMend('n');
                form.set('windowSeconds', seconds);
              }}
            />
          ) : null}
        </>
      )}
      {what === 'numbers' ? text('n', words.sentence('amend.numbersAndPulse'), 'text') : null}
      {what === 'place' ? (
        <PlaceFieldset entry={entry} ageMonths={ageMonths} form={form} said={said} set={set} />
      ) : null}
      {what === 'upright' ? (
        <>
          <Choices
            legend={words.sentence('pressure.askUpright')}
            choices={FELT_UPRIGHT.map((id) => ({ id, text: words.sentence(FELT_TEXT[id]) }))}
            chosen={FELT_UPRIGHT.find((id) => id === form.text('unwellUpright')) ?? null}
            onChoose={(id) => set('unwellUpright', id)}
            wrong={said('unwellUpright')}
          />
          {text('uprightMinutes', words.sentence('pressure.uprightMinutes'), 'decimal')}
        </>
      ) : null}
      {what === 'site' ? (
        <Choices
          legend={words.sentence('signs.site')}
          isListed
          choices={TEMPERATURE_SITES.map((id) => ({ id, text: words.title('temperatureSite', id) }))}
          chosen={TEMPERATURE_SITES.find((id) => id === form.text('site')) ?? null}
          onChoose={(id) => set('site', id)}
          wrong={said('site')}
        />
      ) : null}
      {what !== 'reading' || reading === null ? null : isTypedIn(reading) ? (
        <MeasureField
          of={reading.key}
          labelIn={(unit) => words.sentence(`signs.${unit}`)}
          wrong={said('n')}
          text={form.text(fieldOf('n'))}
          onText={(typed) => set('n', typed)}
          chosen={form.text('unit')}
          onChoose={(unit) => set('unit', unit)}
        />
      ) : reading.choices === null ? (
        text('n', words.sentence(reading.key === 'percent' ? 'signs.percent' : 'amend.reading'), 'decimal')
      ) : (
        <Choices
          legend={words.sentence('amend.reading')}
          isListed
          choices={reading.choices.map((id) => ({
            id,
            text: words.title(reading.key === 'level' ? 'consciousness' : 'painWord', id),
          }))}
          chosen={reading.choices.find((id) => id === form.text('n')) ?? null}
          onChoose={(id) => set('n', id)}
          wrong={said('n')}
        />
      )}
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
            {reasonsFor(entry).map((one) => (
              <option key={one} value={one}>
                {words.sentence(`amend.${one}`)}
              </option>
            ))}
          </select>
        )}
      </Field>
      {isSetAsked ? (
        <Choices
          legend={words.sentence('amend.set')}
          isListed
          choices={WITH_SET.map((id) => ({
            id,
            text: words.sentence(`amend.set-${id}`, { text: words.say.allOf(beside) }),
          }))}
          chosen={WITH_SET.find((id) => id === form.text('set')) ?? null}
          onChoose={(id) => set('set', id)}
          wrong={said('set')}
        />
      ) : null}
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

type PlaceFieldsetProps = {
  readonly entry: StoredEntry;
  readonly ageMonths: number | null;
  readonly form: ReturnType<typeof useForm>;
  readonly said: (field: keyof AmendFields) => string | null;
  readonly set: (field: keyof AmendFields, text: string) => void;
};

/** The arm and the cuff that it really was. */
function PlaceFieldset({ entry, ageMonths, form, said, set }: PlaceFieldsetProps) {
  const { words } = useApp();
  const inForce = useKept(({ known }) => known.inForce.value);
  return (
    <>
      <Choices
        legend={words.sentence('pressure.arm')}
        choices={SIDES.map((id) => ({ id, text: words.sentence(`pressure.${id}`) }))}
        chosen={SIDES.find((id) => id === form.text('side')) ?? null}
        onChoose={(id) => set('side', id)}
        wrong={said('side')}
      />
      <Field label={words.sentence('pressure.cuff')}>
        {(control) => (
          <select
            {...control}
            value={form.text('cuff')}
            onChange={(event) => set('cuff', event.target.value)}
          >
            <option value="">{words.sentence('pressure.cuffNotSaid')}</option>
            {inForce === null
              ? null
              : cuffsFor(entry, inForce, ageMonths).map((id) => (
                  <option key={id} value={id}>
                    {words.title('cuff', id)}
                  </option>
                ))}
          </select>
        )}
      </Field>
    </>
  );
}
