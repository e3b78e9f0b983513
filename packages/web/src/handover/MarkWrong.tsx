import { AMENDMENT_REASONS, type StoredEntry } from '@evenfall/record';
import { useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { useSendEntry } from '../app/useSendEntry.js';
import { Field } from '../parts/Field.js';
import { Refused } from '../parts/Refused.js';
import { TextLine } from '../parts/TextLine.js';
import { WhoMeasures } from '../people/WhoMeasures.js';
import { reloadRecord } from '../server/load.js';

/** Marks a value from elsewhere as entered in error, with why: it stays readable. */
export function MarkWrong({ entry, person }: { readonly entry: StoredEntry; readonly person: string }) {
  const app = useApp();
  const { words } = app;
  const form = useForm(`mark ${entry.id}`);
  const [isAsked, setAsked] = useState(false);
  const { send, refused, agent } = useSendEntry(form, person, () => reloadRecord(app, person));
  const reason = AMENDMENT_REASONS.find((one) => one === form.text('reason'));
  const text = form.text('text').trim();
  const isTextMissing = reason === 'other' && text === '';

  const mark = async () => {
    setAsked(true);
    if (reason === undefined || isTextMissing) return;
    await send({
      kind: 'entered-in-error',
      measuredAt: entry.measuredAt,
      amends: { entry: entry.id, reason, text: text === '' ? null : text },
      content: { note: null },
    });
  };
  return (
    <details className="more not-printed">
      <summary>{words.sentence('handover.markWrong')}</summary>
      <form
        className="form"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          void mark();
        }}
      >
        <Field
          label={words.sentence('amend.reason')}
          wrong={isAsked && reason === undefined ? words.sentence('amend.reasonMissing') : null}
        >
          {(control) => (
            <select
              {...control}
              value={form.text('reason')}
              onChange={(event) => form.set('reason', event.target.value)}
            >
              <option value="">{words.sentence('amend.chooseReason')}</option>
              {AMENDMENT_REASONS.map((one) => (
                <option key={one} value={one}>
                  {words.sentence(`amend.${one}`)}
                </option>
              ))}
            </select>
          )}
        </Field>
        <TextLine
          label={words.sentence(reason === 'other' ? 'amend.reasonTextOther' : 'amend.reasonText')}
          wrong={isAsked && isTextMissing ? words.sentence('amend.textMissing') : null}
          value={form.text('text')}
          onType={(text) => form.set('text', text)}
        />
        {agent === null ? <WhoMeasures /> : null}
        <Refused text={refused} />
        <button type="submit" className="button">
          {words.sentence('handover.markNow')}
        </button>
      </form>
    </details>
  );
}
