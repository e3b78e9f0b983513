import type { ReactNode } from 'react';
import { useApp } from '../app/context.js';
import { Flags } from '../parts/Flags.js';
import { RemoveButton } from '../parts/RemoveButton.js';
import type { DraftMeasure } from '../round/draft.js';
import { signContentOf } from '../round/entries.js';
import { measureRemoved } from '../round/slip.js';
import type { Round } from '../round/useRound.js';
import { measureText } from './measureText.js';

type KeptProps = {
  readonly round: Round;
  readonly measure: DraftMeasure;
  readonly label?: string;
  /** What else can be done, beside taking it out. */
  readonly children?: ReactNode;
};

/** A sign that was kept and not signed yet, with what to know of it. */
export function KeptMeasure({ round, measure, label, children }: KeptProps) {
  const { words, program } = useApp();
  const text = measureText(measure.sign, words);
  const { flags } = signContentOf(round.draft, measure, { ...round, program }).value;
  return (
    <div className="value-review">
      {label === undefined ? null : <p className="value-sign">{label}</p>}
      <p className="measure-kept">{text}</p>
      <Flags flags={flags} />
      <div className="buttons">
        <RemoveButton onRemove={() => round.change((draft) => measureRemoved(draft, measure.entry))}>
          <span className="unseen">: {text}</span>
        </RemoveButton>
        {children}
      </div>
    </div>
  );
}
