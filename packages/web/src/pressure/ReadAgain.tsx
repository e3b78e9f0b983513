import type { Flag } from '@evenfall/clinical';
import { useApp } from '../app/context.js';
import { Flags } from '../parts/Flags.js';

type AgainProps = {
  readonly title: string;
  readonly why: readonly Flag[];
  /** The numbers as they were typed. */
  readonly numbers: string;
  readonly onRead: () => void;
};

/** Numbers that may be a slip, low ones as well as high ones: one touch says that they were read so, or they are put right. */
export function ReadAgain({ title, why, numbers, onRead }: AgainProps) {
  const { words } = useApp();
  return (
    <section className="notice read-again" role="alert" aria-label={title}>
      <p>
        <strong>{title}</strong>
      </p>
      <Flags flags={why} />
      <div className="buttons">
        <button type="button" className="button" onClick={onRead}>
          {words.sentence('quick.readIs', { text: numbers })}
        </button>
      </div>
    </section>
  );
}
