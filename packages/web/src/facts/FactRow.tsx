import { AMENDMENT_REASONS, type StandingFact } from '@evenfall/record';
import { useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Field } from '../parts/Field.js';
import { FormInPlace } from '../parts/FormInPlace.js';
import { TextLine } from '../parts/TextLine.js';
import { localDate } from '../ports/stampAt.js';
import { DayField } from './DayField.js';
import { readEnd, readError } from './factForm.js';
import { factText, whatText } from './factText.js';
import { useCuffRules } from './useCuffRules.js';
import { useFactEntry } from './useFactEntry.js';

type RowProps = {
  readonly fact: StandingFact;
  readonly person: string;
  readonly day: string;
  /** Who said it, and when. */
  readonly said: string;
  readonly canEnd: boolean;
};

/** A fact that stands, with the ways to end it or to say that it never was. */
export function FactRow({ fact, person, day, said, canEnd }: RowProps) {
  const { words } = useApp();
  const rules = useCuffRules();
  const [asking, setAsking] = useState<'end' | 'error' | null>(null);
  const row = useRef<HTMLLIElement>(null);
  const close = () => {
    setAsking(null);
    // The form that had the focus is gone: a keyboard goes on from the fact.
    row.current?.focus({ preventScroll: true });
  };
  const which = <span className="unseen">: {whatText(fact, day, words)}</span>;
  return (
    <li className="fact-row" ref={row} tabIndex={-1}>
      <p className="fact-what">{factText(fact, day, rules, words)}</p>
      {fact.text === null ? null : <p>{fact.text}</p>}
      <p className="soft small">{said}</p>
      {asking === null ? (
        <div className="buttons">
          {canEnd ? (
            <button type="button" className="button button-quiet" onClick={() => setAsking('end')}>
              {words.sentence('facts.end')}
              {which}
            </button>
          ) : null}
          <button type="button" className="button button-quiet" onClick={() => setAsking('error')}>
            {words.sentence('facts.error')}
            {which}
          </button>
        </div>
      ) : null}
      {asking === 'end' ? <EndForm fact={fact} person={person} onClose={close} /> : null}
      {asking === 'error' ? <ErrorForm fact={fact} person={person} onClose={close} /> : null}
    </li>
  );
}

type FormProps = Pick<RowProps, 'fact' | 'person'> & { readonly onClose: () => void };

function EndForm({ fact, person, onClose }: FormProps) {
  const { words, clock } = useApp();
  const form = useForm(`fact-end ${fact.entry}`, { until: localDate(clock.stamp()) });
  const { send, refused } = useFactEntry(person, form);
  const [isWrong, setWrong] = useState(false);
  const end = async () => {
    const until = readEnd(form.text('until'), fact);
    setWrong(until === null);
    if (until !== null && (await send({ kind: 'fact-ended', content: { fact: fact.entry, until } })))
      onClose();
  };
  return (
    <FormInPlace text={words.sentence('facts.endNow')} onSend={end} refused={refused} onClose={onClose}>
      <DayField
        label={words.sentence('facts.endOn')}
        value={form.text('until')}
        onChange={(until) => {
          setWrong(false);
          form.set('until', until);
        }}
        wrong={isWrong ? words.sentence('facts.untilWrong') : null}
      />
    </FormInPlace>
  );
}

function ErrorForm({ fact, person, onClose }: FormProps) {
  const { words } = useApp();
  const form = useForm(`fact-error ${fact.newest}`);
  const { send, refused } = useFactEntry(person, form);
  const [wrong, setWrong] = useState<'reasonMissing' | 'textMissing' | null>(null);
  const mark = async () => {
    const { amends, wrong: found } = readError(
      { reason: form.text('reason'), text: form.text('text') },
      fact.newest,
    );
    setWrong(found);
    if (amends !== null && (await send({ kind: 'entered-in-error', content: { note: null }, amends })))
      onClose();
  };
  return (
    <FormInPlace text={words.sentence('facts.errorNow')} onSend={mark} refused={refused} onClose={onClose}>
      <p>{words.sentence('facts.errorLead')}</p>
      <Field
        label={words.sentence('facts.errorReason')}
        wrong={wrong === 'reasonMissing' ? words.sentence('amend.reasonMissing') : null}
      >
        {(control) => (
          <select
            {...control}
            value={form.text('reason')}
            onChange={(event) => {
              setWrong(null);
              form.set('reason', event.target.value);
            }}
          >
            <option value="">{words.sentence('amend.chooseReason')}</option>
            {AMENDMENT_REASONS.map((reason) => (
              <option key={reason} value={reason}>
                {words.sentence(`amend.${reason}`)}
              </option>
            ))}
          </select>
        )}
      </Field>
      <TextLine
        label={words.sentence('amend.reasonText')}
        wrong={wrong === 'textMissing' ? words.sentence('amend.textMissing') : null}
        value={form.text('text')}
        onType={(text) => {
          setWrong(null);
          form.set('text', text);
        }}
      />
    </FormInPlace>
  );
}
