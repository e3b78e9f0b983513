import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { Flags } from '../parts/Flags.js';
import { Folded } from '../parts/Folded.js';
import { RemoveButton } from '../parts/RemoveButton.js';
import type { DraftMeasure } from '../round/draft.js';
import { signContentOf } from '../round/entries.js';
import type { Reopened } from '../round/measuring.js';
import { measureRemoved } from '../round/slip.js';
import { valueId } from '../round/useComeBack.js';
import type { Round } from '../round/useRound.js';
import { measureText } from './measureText.js';
import { withMeasureReopened } from './signsForm.js';

type KeptProps = {
  readonly round: Round;
  readonly measure: DraftMeasure;
  readonly label?: string;
  /** Where it is put right, and from where one comes to it. */
  readonly change: { readonly href: string | null; readonly from: Reopened['from'] };
  /** Whether what can be changed of it is looked at only when asked for. */
  readonly isFolded?: boolean;
  /** What else can be done, beside taking it out. */
  readonly children?: ReactNode;
};

/** A sign that was kept and not signed yet, with what to know of it. */
export function KeptMeasure({ round, measure, label, change, isFolded = false, children }: KeptProps) {
  const { words, program, store } = useApp();
  const text = measureText(measure.sign, words);
  const { flags } = signContentOf(round.draft, measure, { ...round, program }).value;
  const reopen = () =>
    store.change((state) => ({
      ...state,
      kept: withMeasureReopened(state.kept, round.draft.round, measure, change.from, words.say),
    }));
  const changeText = (
    <>
      {words.sentence('signs.change')}
      <span className="unseen">: {text}</span>
    </>
  );
  const buttons = (
    <div className="buttons">
      {change.href === null ? (
        <button type="button" className="button button-quiet" onClick={reopen}>
          {changeText}
        </button>
      ) : (
        <Link href={change.href} className="button button-quiet" onClick={reopen}>
          {changeText}
        </Link>
      )}
      <RemoveButton onRemove={() => round.change((draft) => measureRemoved(draft, measure.entry))}>
        <span className="unseen">: {text}</span>
      </RemoveButton>
      {children}
    </div>
  );
  return (
    <div className="value-review">
      {label === undefined ? null : <p className="value-sign">{label}</p>}
      <p className="measure-kept" id={valueId(measure.entry)} tabIndex={-1}>
        {text}
      </p>
      {isFolded ? (
        <Folded summary={words.sentence('review.change')} of={label ?? text}>
          {buttons}
        </Folded>
      ) : null}
      <TypedAs measure={measure} />
      <Flags flags={flags} />
      {isFolded ? null : buttons}
    </div>
  );
}

/** The number in the unit in which it was typed, where that is another one than this device writes. */
function TypedAs({ measure: { sign, typed = null } }: Pick<KeptProps, 'measure'>) {
  const { words } = useApp();
  const { temperature, length, mass } = words.say.manner;
  const usual: Partial<Record<typeof sign.of, string>> = { temperature, height: length, weight: mass };
  if (typed === null || typed.unit === usual[sign.of]) return null;
  return (
    <p className="soft small">
      {words.sentence('signs.typedAs')} {words.say.asTyped(typed)}
    </p>
  );
}
