import { useApp } from '../app/context.js';
import { Refused } from './Refused.js';

type FormEndsProps = {
  readonly refused: string | null;
  /** What the button that sends is called. */
  readonly text: string;
  readonly onClose: () => void;
};

/** The end of a form that opened in its place: why it was refused, the button that sends it, and the way back. */
export function FormEnds({ refused, text, onClose }: FormEndsProps) {
  const { words } = useApp();
  return (
    <>
      <Refused text={refused} />
      <div className="buttons">
        <button type="submit" className="button">
          {text}
        </button>
        <button type="button" className="button button-quiet" onClick={onClose}>
          {words.sentence('app.cancel')}
        </button>
      </div>
    </>
  );
}
