import { type ReactNode, useId, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { Refused } from '../parts/Refused.js';

type AskFirstProps = {
  readonly button: string;
  readonly isFirst?: boolean;
  readonly title: string;
  /** What it means, before it is done. */
  readonly children: ReactNode;
  readonly yes: string;
  readonly no: string;
  /** Does it; answers why it could not be done, in words, or null. */
  readonly onYes: () => Promise<string | null>;
};

/** Something for the whole place: said in words what it means, and done only when that was answered. */
export function AskFirst({ button, isFirst = false, title, children, yes, no, onYes }: AskFirstProps) {
  const { words } = useApp();
  const id = useId();
  const dialog = useRef<HTMLDialogElement>(null);
  const [refused, setRefused] = useState<string | null>(null);
  const [isSending, setSending] = useState(false);
  const act = async () => {
    if (isSending) return;
    setSending(true);
    setRefused(null);
    const why = await onYes();
    setSending(false);
    if (why === null) dialog.current?.close();
    else setRefused(why);
  };
  return (
    <>
      <button
        type="button"
        className={isFirst ? 'button button-first button-large' : 'button button-quiet'}
        onClick={() => dialog.current?.showModal()}
      >
        {button}
      </button>
      <dialog ref={dialog} className="dialog" aria-labelledby={id}>
        <form
          noValidate
          onSubmit={(event) => {
            event.preventDefault();
            void act();
          }}
        >
          <h2 id={id}>{title}</h2>
          {children}
          <Refused text={refused} />
          <div className="buttons">
            <button type="button" className="button button-first" onClick={() => dialog.current?.close()}>
              {no}
            </button>
            <button type="submit" className="button" aria-describedby={isSending ? `${id}-busy` : undefined}>
              {yes}
            </button>
          </div>
          {isSending ? <p id={`${id}-busy`}>{words.sentence('app.loading')}</p> : null}
        </form>
      </dialog>
    </>
  );
}
