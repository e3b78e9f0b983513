import type { DueDiary } from '@evenfall/record';
import { useState } from 'react';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { dayOfYearText } from '../app/times.js';
import { useSendEntry } from '../app/useSendEntry.js';
import { FormInPlace } from '../parts/FormInPlace.js';
import { TextLine } from '../parts/TextLine.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { localDate } from '../ports/stampAt.js';
import { loadPeople, reloadRecord } from '../server/load.js';

type DiaryProps = { readonly diary: DueDiary; readonly person: string };

/** A diary that is out: when it is due back, its page, its readings, and the way to say that it will not come. */
export function DiaryOut({ diary, person }: DiaryProps) {
  const { words, clock } = useApp();
  const [isEnding, setEnding] = useState(false);
  const today = localDate(clock.stamp());
  const isDue = diary.dueOn <= today;
  const text = dayOfYearText(diary.dueOn, words);
  const which = <span className="unseen">: {dayOfYearText(diary.from, words)}</span>;
  return (
    <li className="away-line">
      <p>
        {words.sentence('diary.out', { days: diary.days, from: dayOfYearText(diary.from, words) })},{' '}
        <span className={isDue ? 'person-mark' : undefined}>
          {diary.dueOn === today
            ? words.sentence('diary.dueToday')
            : words.sentence(isDue ? 'diary.dueSince' : 'diary.dueOn', { text })}
        </span>
      </p>
      {isEnding ? (
        <EndForm diary={diary} person={person} onClose={() => setEnding(false)} />
      ) : (
        <div className="buttons">
          <Link href={`/people/${person}/away/new?diary=${diary.entry}`} className="button">
            {words.sentence('diary.readings')}
            {which}
          </Link>
          <Link href={`/people/${person}/diary/${diary.entry}`} className="button button-quiet">
            {words.sentence('diary.print')}
            {which}
          </Link>
          <button type="button" className="button button-quiet" onClick={() => setEnding(true)}>
            {words.sentence('diary.notComing')}
            {which}
          </button>
        </div>
      )}
    </li>
  );
}

function EndForm({ diary, person, onClose }: DiaryProps & { readonly onClose: () => void }) {
  const app = useApp();
  const { words } = app;
  const form = useForm(`diary-end ${diary.entry}`);
  const { send, refused, agent } = useSendEntry(form, person, async () => {
    await Promise.all([reloadRecord(app, person), loadPeople(app)]);
  });
  const [isWrong, setWrong] = useState(false);
  const end = async () => {
    const reason = form.text('reason').trim();
    setWrong(reason === '');
    if (reason !== '' && (await send({ kind: 'diary-ended', content: { diary: diary.entry, reason } })))
      onClose();
  };
  return (
    <FormInPlace text={words.sentence('diary.endNow')} onSend={end} refused={refused} onClose={onClose}>
      <TextLine
        label={words.sentence('diary.reason')}
        wrong={isWrong ? words.sentence('diary.reasonMissing') : null}
        value={form.text('reason')}
        onType={(text) => {
          setWrong(false);
          form.set('reason', text);
        }}
      />
      {agent === null ? <WhoMeasures /> : null}
    </FormInPlace>
  );
}
