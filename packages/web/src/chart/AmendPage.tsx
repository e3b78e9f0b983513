import type { InForce, StoredEntry } from '@evenfall/record';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { formIn, useBook } from '../app/book.js';
import { useApp } from '../app/context.js';
import { entryStart, formDone, useForm } from '../app/forms.js';
import { signText } from '../app/signText.js';
import { withPoint, withPoints } from '../app/withPoint.js';
import { Asking } from '../parts/Asking.js';
import { ChartedFigure } from '../parts/ChartedFigure.js';
import { type Charted, chartedText, signOfCharted } from '../parts/charted.js';
import { IdentityOf, nameIn } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { Refused } from '../parts/Refused.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { COUNT_SCHEMA, RUN_SCHEMA, SIGN_SCHEMA, WRITTEN_SCHEMA } from '../round/entries.js';
import { factsOf } from '../round/facts.js';
import { entriesIn, useInForce, useRecord } from '../round/useRound.js';
import { reloadRecord } from '../server/load.js';
import { refusedBecause } from '../server/server.js';
import { useMeasuring } from '../signIn/useAccess.js';
import { AmendFieldset, readingField } from './AmendFieldset.js';
import {
  type AmendFields,
  type AmendWrong,
  amendedContent,
  changeTyped,
  numbersOf,
  readAmendment,
} from './amendForm.js';
import { placeFieldsOf } from './amendPlace.js';
import { besideInSet, isSetAsked } from './amendSet.js';
import { siteOf } from './amendSign.js';
import { uprightFieldsOf } from './amendUpright.js';
import { contentOfEntry } from './contentOfEntry.js';

type AmendPageProps = { readonly person: string; readonly entry: string };

/** Puts a signed value right. */
export function AmendPage({ person, entry }: AmendPageProps) {
  const { words } = useApp();
  const { asked, again } = useRecord(person);
  const rules = useInForce();
  return (
    <Page
      title={words.sentence('amend.title')}
      under={
        <>
          <p className="identity-name">{nameIn(asked.value)}</p>
          <IdentityOf record={asked.value} />
        </>
      }
      back={{ href: `/people/${person}`, text: words.sentence('chart.title') }}
    >
      <Asking asked={asked} again={again} missing={words.sentence('app.noSuchPerson')}>
        {(record) => {
          const entries = entriesIn(record);
          const found = entries.find(({ id }) => id === entry);
          // A mark of error is amended by a value in its place: the one that was marked, unless it is put right.
          const value =
            found?.kind === 'entered-in-error' ? entries.find(({ id }) => id === found.amends?.entry) : found;
          return found === undefined || value === undefined || contentOfEntry(value) === null ? (
            <p className="notice">{words.sentence('amend.notHere')}</p>
          ) : (
            <Asking asked={rules.asked} again={rules.again}>
              {(inForce) => (
                <AmendForm
                  amended={found}
                  entry={value}
                  entries={entries}
                  person={person}
                  birthDate={record.identity?.birthDate ?? null}
                  ageMonths={factsOf(record, entries, value.measuredAt.at.slice(0, 10)).ageMonths}
                  inForce={inForce}
                />
              )}
            </Asking>
          );
        }}
      </Asking>
    </Page>
  );
}

/** Under which schema number what stands in the place of a value is written. */
const AMENDED_SCHEMA = {
  count: COUNT_SCHEMA,
  taps: WRITTEN_SCHEMA,
  run: RUN_SCHEMA,
  sign: SIGN_SCHEMA,
  'entered-in-error': WRITTEN_SCHEMA,
} as const;

type AmendFormProps = {
  /** What the amendment will name: the value, or the mark that it was entered in error. */
  readonly amended: StoredEntry;
  readonly entry: StoredEntry;
  /** Every entry of the person. */
  readonly entries: readonly StoredEntry[];
  readonly person: string;
  readonly birthDate: string | null;
  readonly ageMonths: number | null;
  readonly inForce: InForce;
};

function AmendForm({ amended, entry, entries, person, birthDate, ageMonths, inForce }: AmendFormProps) {
  const app = useApp();
  const { words, program, store, server, clock } = app;
  const inBook = useBook();
  const form = useForm(formIn(inBook, `amend ${amended.id}`), {
    ...placeFieldsOf(entry),
    ...uprightFieldsOf(entry, words.say),
    n: numbersOf(entry),
    site: siteOf(entry) ?? '',
  });
  const agent = useMeasuring();
  const [, go] = useLocation();
  const [wrong, setWrong] = useState<AmendWrong>({});
  const [refused, setRefused] = useState<string | null>(null);
  const given = contentOfEntry(entry);
  if (given === null) return null;

  /** A value as it is named among others: the sign and its number. */
  const besideText = (one: StoredEntry): string[] => {
    const charted = contentOfEntry(one);
    return charted === null
      ? []
      : [`${signText(signOfCharted(charted), words).toLowerCase()} ${chartedText(charted, words)}`];
  };
  const fieldsTyped = (): AmendFields => {
    return {
      what: form.text('what'),
      n: (form.text('what') === 'reading' ? withPoints : withPoint)(
        form.text(readingField(entry, form.text('what'), words.say)).trim(),
        words.say,
      ),
      unit: form.text('unit'),
      windowSeconds: form.text('windowSeconds'),
      side: form.text('side'),
      cuff: form.text('cuff'),
      unwellUpright: form.text('unwellUpright'),
      uprightMinutes: withPoint(form.text('uprightMinutes').trim(), words.say),
      site: form.text('site'),
      perMinute: withPoint(form.text('perMinute').trim(), words.say),
      time: form.text('time'),
      reason: form.text('reason'),
      set: form.text('set'),
      text: form.text('text'),
    };
  };
  const around = () => ({
    now: clock.stamp(),
    stampOf: clock.stampOf,
    birthDate,
    ageMonths,
    manner: words.say.manner,
  });
  const beside = besideInSet(entries, entry);
  const isAsked = isSetAsked({ what: form.text('what'), reason: form.text('reason') }, beside);
  const change = changeTyped(entry, fieldsTyped(), inForce, around());
  const shown = change === null ? null : amendedContent(entry, { change }, { inForce, program });
  const submit = async () => {
    const { amendment, wrong: read } = readAmendment(entry, fieldsTyped(), inForce, around());
    const isUnsaid = isAsked && form.text('set') === '';
    setWrong(isUnsaid ? { ...read, set: 'setMissing' } : read);
    setRefused(null);
    if (amendment === null || isUnsaid) return;
    if (agent === null) return setRefused(words.sentence('review.needsAgent'));
    const { kind, content } = amendedContent(entry, amendment, { inForce, program });
    const frame = {
      ...inBook,
      person,
      round: entry.round,
      agent,
      role: 'observer' as const,
      device: store.get().kept.device,
    };
    const amending = {
      ...form.entry(),
      measuredAt: amendment.change.what === 'time' ? amendment.change.measuredAt : entry.measuredAt,
      ...frame,
      kind,
      schema: AMENDED_SCHEMA[kind],
      amends: { ...amendment.amends, entry: amended.id },
      content,
    };
    const others = isAsked && form.text('set') === 'all' ? beside : [];
    const out = others.map((one) => ({
      ...entryStart(app, formIn(inBook, `amend ${one.id}`)),
      measuredAt: one.measuredAt,
      ...frame,
      kind: 'entered-in-error' as const,
      schema: AMENDED_SCHEMA['entered-in-error'],
      amends: { ...amendment.amends, entry: one.id },
      content: { note: null },
    }));
    const answer = await server.call('addEntries', { body: { entries: [amending, ...out] } });
    if (answer.ok) {
      await reloadRecord(app, person, inBook.book);
      for (const one of others) formDone(app, formIn(inBook, `amend ${one.id}`));
      form.done();
      go(`/people/${person}`, { replace: true });
    } else if (answer.offline) setRefused(words.sentence('app.unreachable'));
    else setRefused(words.sentence('app.refusedBy', { text: refusedBecause(answer, words) }));
  };
  return (
    <form
      className="form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        void submit();
      }}
    >
      <p>{words.sentence('amend.lead')}</p>
      <section className="value" aria-label={words.sentence('amend.now')}>
        <h2 className="value-sign">
          {words.sentence('amend.now')}: {signText(signOfCharted(given), words)}
        </h2>
        <ChartedFigure given={given} />
      </section>
      <AmendFieldset
        entry={entry}
        isMarked={amended !== entry}
        ageMonths={ageMonths}
        beside={beside.flatMap((one) => besideText(one))}
        isSetAsked={isAsked}
        windows={inForce.countRules.pulseWindowsSeconds}
        form={form}
        wrong={wrong}
        onMend={(field) => setWrong(({ [field]: _mended, ...rest }) => rest)}
      />
      <div role="status">
        {shown === null ? null : (
          <section className="value" aria-label={words.sentence('amend.wouldBe')}>
            <h2 className="value-sign">{words.sentence('amend.wouldBe')}</h2>
            <ChartedFigure given={shown as unknown as Charted} />
          </section>
        )}
      </div>
      <WhoMeasures />
      <Refused text={refused} />
      <button type="submit" className="button button-first button-large">
        {words.sentence('amend.sign')}
      </button>
    </form>
  );
}
