import { NOT_DONE_REASONS, type NotDoneReason } from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import { useEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import { TextLine } from '../parts/TextLine.js';
import type { NotDone } from './draft.js';

/** A reason as it is said: in its own text if there is one. */
export function notDoneText({ reason, text }: NotDone, words: Words): string {
  const said = words.sentence(`review.${reason}`);
  if (text === null) return said;
  return reason === 'other' ? text : `${said}; ${text}`;
}

type NotDoneFormProps = {
  readonly onKeep: (notDone: NotDone) => void;
  readonly onCancel: () => void;
  /** The reasons that can apply to the sign; all if absent. */
  readonly reasons?: readonly NotDoneReason[];
};

/** Asks why a sign was not done: a blank is not charted. */
export function NotDoneForm({ onKeep, onCancel, reasons = NOT_DONE_REASONS }: NotDoneFormProps) {
  const { words } = useApp();
  const [reason, setReason] = useState<NotDone['reason'] | null>(null);
  const [text, setText] = useState('');
  const [isAsked, setAsked] = useState(false);
  const form = useRef<HTMLFormElement>(null);
  useEffect(() => {
    // The reasons open below the button that asked for them: they come into view, and a keyboard goes on at the first.
    form.current?.scrollIntoView({ block: 'nearest' });
    form.current?.querySelector('input')?.focus({ preventScroll: true });
  }, []);
  const needsText = reason === 'other' && text.trim() === '';

  return (
    <form
      ref={form}
      className="form not-done"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        setAsked(true);
        if (reason !== null && !needsText) onKeep({ reason, text: text.trim() === '' ? null : text.trim() });
      }}
    >
      <Choices
        legend={words.sentence('review.notDoneWhy')}
        isListed
        choices={reasons.map((id) => ({ id, text: words.sentence(`review.${id}`) }))}
        chosen={reason}
        onChoose={setReason}
        wrong={isAsked && reason === null ? words.sentence('amend.reasonMissing') : null}
      />
      <TextLine
        label={words.sentence('review.notDoneText')}
        wrong={isAsked && needsText ? words.sentence('review.textMissing') : null}
        value={text}
        onType={setText}
      />
      <div className="buttons">
        <button type="submit" className="button">
          {words.sentence('review.notDoneKeep')}
        </button>
        <button type="button" className="button button-quiet" onClick={onCancel}>
          {words.sentence('app.cancel')}
        </button>
      </div>
    </form>
  );
}
