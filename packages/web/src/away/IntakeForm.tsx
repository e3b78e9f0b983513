import type { PersonRecord } from '@evenfall/api';
import { type InForce, roundFactsOf } from '@evenfall/record';
import { useApp } from '../app/context.js';
import { dayText } from '../app/times.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { localDate } from '../ports/stampAt.js';
import { entriesIn } from '../round/useRound.js';
import { Columns } from './Columns.js';
import { IntakeEnd } from './IntakeEnd.js';
import { INTAKE_WAYS } from './intakeWays.js';
import { PastedTable } from './PastedTable.js';
import { Questions } from './Questions.js';
import { SleepTimes } from './SleepTimes.js';
import { TableFile } from './TableFile.js';
import { useIntake } from './useIntake.js';
import { useSignSeries } from './useSignSeries.js';
import { WeekGrid } from './WeekGrid.js';

type FormProps = {
  readonly person: string;
  readonly record: PersonRecord;
  readonly inForce: InForce;
  /** The rules of the place were never fetched: nothing is signed by others. */
  readonly isWithoutRules?: boolean;
};

/** What came, how it came, what must be said about it, what of it is refused, and what it comes to. */
export function IntakeForm({ person, record, inForce, isWithoutRules = false }: FormProps) {
  const { words, clock } = useApp();
  const entries = entriesIn(record);
  const state = useIntake(person, inForce.homeRules, entries);
  // Here, since the end of the form is not drawn while what was signed is on its way: why it was refused is said after that.
  const signing = useSignSeries(person, state);
  const facts = roundFactsOf(record.identity, entries, localDate(clock.stamp()));
  const { form, intake, diaries } = state;
  const { of, way, read } = intake;
  const ways = INTAKE_WAYS.filter((one) => of === 'home' || one !== 'typed');
  return (
    <div className="brought">
      <section className="form" aria-label={words.sentence('away.what')}>
        <Choices
          legend={words.sentence('away.what')}
          choices={(['home', 'ambulatory'] as const).map((id) => ({
            id,
            text: words.sentence(`away.${id}`),
          }))}
          chosen={of}
          onChoose={(id) => form.set('of', id)}
        />
        <Choices
          legend={words.sentence('away.how')}
          choices={ways.map((id) => ({ id, text: words.sentence(`away.${id}`) }))}
          chosen={way}
          onChoose={(id) => form.set('way', id)}
        />
        {of === 'home' && diaries.length > 0 ? (
          <Field label={words.sentence('away.diary')}>
            {(control) => (
              <select
                {...control}
                value={form.text('diary')}
                onChange={({ target }) => form.set('diary', target.value)}
              >
                <option value="">{words.sentence('away.noDiary')}</option>
                {diaries.map(({ entry, from, days }) => (
                  <option key={entry} value={entry}>
                    {words.sentence('away.diaryFrom', { text: dayText(from, words), days })}
                  </option>
                ))}
              </select>
            )}
          </Field>
        ) : null}
      </section>
      <section aria-label={words.sentence('away.readings')}>
        <h2>{words.sentence('away.readings')}</h2>
        {way === 'typed' ? <WeekGrid state={state} facts={facts} /> : null}
        {way === 'pasted' ? <PastedTable state={state} /> : null}
        {way === 'file' ? <TableFile state={state} /> : null}
      </section>
      {of === 'ambulatory' ? <OfRecording state={state} inForce={inForce} /> : null}
      {read === null ? null : (
        <>
          <Questions state={state} />
          {way === 'typed' ? null : <Columns state={state} />}
          <IntakeEnd
            person={person}
            record={record}
            inForce={inForce}
            isWithoutRules={isWithoutRules}
            state={state}
            signing={signing}
          />
        </>
      )}
    </div>
  );
}

/** What a recorder does not say: when the person slept, and how many readings it was set to take. */
function OfRecording({
  state: { form },
  inForce: { ambulatoryRules },
}: {
  readonly state: ReturnType<typeof useIntake>;
  readonly inForce: InForce;
}) {
  const { words } = useApp();
  return (
    <section className="form" aria-label={words.sentence('away.ofRecording')}>
      <h2>{words.sentence('away.ofRecording')}</h2>
      <SleepTimes form={form} rules={ambulatoryRules} />
      <div className="away-sleep">
        <Field label={words.sentence('away.scheduled')}>
          {(control) => (
            <input
              {...control}
              type="text"
              inputMode="numeric"
              autoComplete="off"
              maxLength={4}
              value={form.text('scheduled')}
              onChange={({ target }) => form.set('scheduled', target.value)}
            />
          )}
        </Field>
      </div>
    </section>
  );
}
