import { DIARY_LANGUAGES, DIARY_LIMITS, diaryAsked, NOTHING_CHOSEN } from '@evenfall/record';
import { DIARY_TEXTS, languageOf } from '@evenfall/words';
import { useState } from 'react';
import { useLocation } from 'wouter';
import { useApp, useKept } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { useSendEntry } from '../app/useSendEntry.js';
import { DayField } from '../facts/DayField.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { FormInPlace } from '../parts/FormInPlace.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { localDate } from '../ports/stampAt.js';
import { loadPeople, reloadRecord } from '../server/load.js';
import { DIARY_FIELDS, type DiaryField, type DiaryTyped, type DiaryWrong, readDiary } from './diaryForm.js';

type HandProps = { readonly person: string; readonly onClose: () => void };

/** Hands a diary out: as long and as often as the place's protocol asks, unless somebody says otherwise. */
export function HandOutDiary({ person, onClose }: HandProps) {
  const app = useApp();
  const { words, clock } = app;
  const [, go] = useLocation();
  const { homeRules } = useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN;
  const tomorrow = nextDay(localDate(clock.stamp()));
  const asked = diaryAsked(homeRules, tomorrow);
  const form = useForm(`diary ${person}`, {
    days: String(asked.days),
    readings: String(asked.readingsInSitting),
    language: languageOf(words.say.locale) ?? 'en',
    from: asked.from,
  });
  const { send, refused, agent } = useSendEntry(form, person, async () => {
    await Promise.all([reloadRecord(app, person), loadPeople(app)]);
  });
  const [wrong, setWrong] = useState<DiaryWrong>({});
  const days = Number(form.text('days'));
  const isDays = Number.isInteger(days) && days >= 1 && days <= DIARY_LIMITS.days;
  const from = form.text('from');
  const text = (field: DiaryField): string => {
    const typed = form.text(field);
    if (field !== 'dueOn' || typed !== '' || from === '') return typed;
    // Until somebody gives another day, it is the day after the last one.
    return diaryAsked({ ...homeRules, daysAsked: isDays ? days : asked.days }, from).dueOn;
  };
  const set = (field: DiaryField, typed: string) => {
    setWrong(({ [field]: _mended, ...rest }) => rest);
    form.set(field, typed);
  };
  const said = (field: DiaryField): string | null => {
    const code = wrong[field];
    if (code === undefined) return null;
    const most = field === 'days' ? DIARY_LIMITS.days : DIARY_LIMITS.readingsInSitting;
    return code === 'numberWrong'
      ? words.sentence('diary.numberWrong', { least: 1, most })
      : words.sentence(`diary.${code}`);
  };
  const hand = async () => {
    const typed = Object.fromEntries(DIARY_FIELDS.map((field) => [field, text(field)])) as DiaryTyped;
    const { content, wrong: found } = readDiary(typed);
    setWrong(found);
    if (content === null) return;
    const { id } = form.entry();
    if (await send({ kind: 'diary-handed', content })) go(`/people/${person}/diary/${id}`);
  };
  const number = (field: 'days' | 'readings', label: string) => (
    <Field label={label} wrong={said(field)}>
      {(control) => (
        <input
          {...control}
          type="text"
          inputMode="numeric"
          autoComplete="off"
          value={text(field)}
          onChange={(event) => set(field, event.target.value)}
        />
      )}
    </Field>
  );
  return (
    <FormInPlace
      label={words.sentence('diary.handTitle')}
      text={words.sentence('diary.handNow')}
      onSend={hand}
      refused={refused}
      onClose={onClose}
    >
      <h3>{words.sentence('diary.handTitle')}</h3>
      <p className="small soft">{words.sentence('diary.handLead')}</p>
      {number('days', words.sentence('diary.daysAsked'))}
      {number('readings', words.sentence('diary.readingsAsked'))}
      <Choices
        legend={words.sentence('diary.language')}
        choices={DIARY_LANGUAGES.map((id) => ({ id, text: DIARY_TEXTS[id].name }))}
        chosen={DIARY_LANGUAGES.find((id) => id === text('language')) ?? null}
        onChoose={(id) => set('language', id)}
      />
      <DayField
        label={words.sentence('diary.from')}
        value={from}
        onChange={(day) => set('from', day)}
        wrong={said('from')}
      />
      <DayField
        label={words.sentence('diary.dueBack')}
        value={text('dueOn')}
        onChange={(day) => set('dueOn', day)}
        wrong={said('dueOn')}
      />
      {agent === null ? <WhoMeasures /> : null}
    </FormInPlace>
  );
}

/** The day after a local one (`YYYY-MM-DD`): a diary that is handed out today begins in the morning. */
function nextDay(day: string): string {
  const next = new Date(`${day}T12:00:00Z`);
  next.setUTCDate(next.getUTCDate() + 1);
  return next.toISOString().slice(0, 'YYYY-MM-DD'.length);
}
