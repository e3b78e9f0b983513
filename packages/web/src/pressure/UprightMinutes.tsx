import { useApp } from '../app/context.js';
import { RunInput } from './RunInput.js';

type MinutesProps = {
  readonly text: string;
  /** The clock since standing up fills them in. */
  readonly isByClock: boolean;
  readonly isWrong: boolean;
  readonly onChange: (text: string) => void;
};

/** The minutes on the feet at a standing reading. */
export function UprightMinutes({ text, isByClock, isWrong, onChange }: MinutesProps) {
  const { words } = useApp();
  return (
    <div className="upright-minutes">
      <RunInput
        field="uprightMinutes"
        text={text}
        hint={isByClock ? words.sentence('pressure.uprightByClock') : undefined}
        wrong={isWrong ? words.sentence('pressure.uprightMissing') : null}
        onChange={onChange}
      />
    </div>
  );
}
