import type { ReactNode } from 'react';
import { useApp } from '../app/context.js';
import { Refused } from './Refused.js';

type FormProps = {
  /** What it is for, where nothing above it says so. */
  readonly label?: string;
  /** What the button that sends is called. */
  readonly text: string;
  readonly onSend: () => Promise<void>;
  readonly refused: string | null;
  readonly onClose: () => void;
  readonly children: ReactNode;
};

/** A form that opened in its place: its fields, why it was refused, the button that sends it, and the way back. */
export function FormInPlace({ label, text, onSend, refused, onClose, children }: FormProps) {
  const { words } = useApp();
  return (
    <form
      className="form"
      noValidate
      aria-label={label}
      onSubmit={(event) => {
        event.preventDefault();
        void onSend();
      }}
    >
      {children}
      <Refused text={refused} />
      <div className="buttons">
        <button type="submit" className="button">
          {text}
        </button>
        <button type="button" className="button button-quiet" onClick={onClose}>
          {words.sentence('app.cancel')}
        </button>
      </div>
    </form>
  );
}
