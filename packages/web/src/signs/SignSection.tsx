import { NOT_DONE_REASONS, type Refusal, type Sign, type SignOf } from '@evenfall/clinical';
import { useEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import type { useForm } from '../app/forms.js';
import { signText } from '../app/signText.js';
import { withMeasure, withMeasureChanged, withMeasureNotDone } from '../round/draft.js';
import type { Reopened } from '../round/measuring.js';
import { NotDoneForm, notDoneText } from '../round/NotDoneForm.js';
import { useComeBack } from '../round/useComeBack.js';
import type { Round } from '../round/useRound.js';
import { FieldsOf } from './FieldsOf.js';
import { KeptMeasure } from './KeptMeasure.js';
import type { SignFields } from './signFields.js';
import { reopenedIn } from './signsForm.js';
import {
  type OxygenTarget,
  readTypedSign,
  type SignWrong,
  TYPED_FIELDS,
  typedNumberOf,
  wrongByField,
} from './typedSign.js';

type SectionProps = {
  readonly of: SignOf;
  readonly round: Round;
  readonly form: ReturnType<typeof useForm>;
  readonly target: OxygenTarget;
};

/** One sign: what was kept of it, and the fields to take it, or why it was not done. */
export function SignSection({ of, round, form, target }: SectionProps) {
  const { words } = useApp();
  const kept = round.draft.measures.filter(({ sign }) => sign.of === of);
  const notDone = round.draft.measuresNotDone[of] ?? null;
  const hasTyped = TYPED_FIELDS[of].some((field) => form.text(`${of}.${field}`) !== '');
  const [isAnother, setAnother] = useState(false);
  const [isAsking, setAsking] = useState(false);
  const top = useRef<HTMLDivElement>(null);
  const reopened = reopenedIn(form.text, of);
  const comeBack = useComeBack(round, reopened);
  const isFromReview = reopened?.from === 'review';
  useEffect(() => {
    // Come from the review, one stands before what is put right.
    if (!isFromReview) return;
    top.current?.scrollIntoView({ block: 'center' });
    top.current?.focus({ preventScroll: true });
  }, [isFromReview]);
  const isTaking = notDone === null && (kept.length === 0 || isAnother || hasTyped);
  const clear = () => {
    for (const field of [...TYPED_FIELDS[of], 'reopened', 'from']) form.set(`${of}.${field}`, '');
    setAnother(false);
    setAsking(false);
    // The button that was pressed is gone: a keyboard goes on from what it made.
    top.current?.focus({ preventScroll: true });
    comeBack();
  };
  return (
    <div className="sign-taking" ref={top} tabIndex={-1}>
      {kept.map((measure, index) => (
        <KeptMeasure
          key={measure.entry}
          round={round}
          measure={measure}
          change={{ href: null, from: 'value' }}
        >
          {isTaking || index < kept.length - 1 ? null : (
            <button type="button" className="button button-quiet" onClick={() => setAnother(true)}>
              {words.sentence('signs.another')}
              <span className="unseen">: {signText(of, words)}</span>
            </button>
          )}
        </KeptMeasure>
      ))}
      {isTaking ? (
        <TakeForm
          of={of}
          round={round}
          form={form}
          target={target}
          onKept={clear}
          reopened={reopened}
          onNotDone={kept.length === 0 && !isAsking ? () => setAsking(true) : null}
        />
      ) : null}
      {isAsking && isTaking ? (
        <NotDoneForm
          reasons={NOT_DONE_REASONS.filter((reason) => reason !== 'arm-barred')}
          onKeep={(reason) => {
            round.change((draft) => withMeasureNotDone(draft, of, reason));
            clear();
          }}
          onCancel={() => setAsking(false)}
        />
      ) : null}
      {notDone === null ? null : (
        <div className="buttons">
          <p>{words.sentence('review.notDoneIs', { text: notDoneText(notDone, words) })}</p>
          <button
            type="button"
            className="button button-quiet"
            onClick={() => round.change((draft) => withMeasureNotDone(draft, of, null))}
          >
            {words.sentence('review.notDoneUndo')}
          </button>
        </div>
      )}
    </div>
  );
}

/** What a field of the form gives, in whatever unit it is typed. */
function keyOf(field: string): string {
  return field.split('.')[0] ?? field;
}

/** Numbers that are chosen, not typed. */
const CHOSEN: ReadonlySet<string> = new Set(['/score', '/glasgow/eyes', '/glasgow/verbal', '/glasgow/motor']);

type TakeProps = SectionProps & {
  readonly reopened: Reopened | null;
  readonly onKept: () => void;
  readonly onNotDone: (() => void) | null;
};

function TakeForm({ of, round, form, target, reopened, onKept, onNotDone }: TakeProps) {
  const { words, clock } = useApp();
  const [wrong, setWrong] = useState<SignWrong>({});
  const text = (field: string) => form.text(`${of}.${field}`);
  const fields: SignFields = {
    text,
    set: (field, typed) => {
      setWrong(({ [keyOf(field)]: _mended, ...rest }) => rest);
      form.set(`${of}.${field}`, typed);
    },
    wrong: (field, label) => {
      const refusals = wrong[keyOf(field)] ?? [];
      return refusals.length === 0 ? null : refusals.map((one) => saidOf(one, label)).join(' ');
    },
  };
  /** Ids of choices are nothing to read out: that one must be chosen is enough. */
  const saidOf = (refusal: Refusal, label: string) => {
    if ((refusal.choices.length > 0 && refusal.code !== 'ambiguous') || CHOSEN.has(refusal.field))
      return words.sentence('signs.chooseOne');
    if (refusal.code === 'missing') return words.sentence('signs.typeNumber');
    return words.problem(refusal, { nameOf: () => label }).message;
  };
  const keep = (sign: Sign) => {
    const typed = typedNumberOf(of, text, words.say);
    const measuredAt = clock.stamp();
    if (reopened !== null && round.draft.measures.some(({ entry }) => entry === reopened.entry))
      round.change((draft) => withMeasureChanged(draft, reopened.entry, { sign, typed }));
    else
      round.keep((draft, { entry, sequence }) =>
        withMeasure(draft, { kind: 'sign', entry, sequence, measuredAt, sign, typed, note: null }),
      );
    onKept();
  };
  return (
    <form
      className="form"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        const parsed = readTypedSign(of, text, target, words.say);
        if (parsed.ok) keep(parsed.value);
        else setWrong(wrongByField(parsed.refusals));
      }}
    >
      <FieldsOf of={of} fields={fields} target={target} />
      <div className="buttons">
        <button type="submit" className="button button-first">
          {words.sentence('signs.keep')}
          <span className="unseen">: {signText(of, words)}</span>
        </button>
        {reopened === null ? null : (
          <button type="button" className="button button-quiet" onClick={onKept}>
            {words.sentence('review.asItWas')}
          </button>
        )}
        {onNotDone === null ? null : (
          <button type="button" className="button button-quiet" onClick={onNotDone}>
            {words.sentence('review.notDone')}
            <span className="unseen">: {signText(of, words)}</span>
          </button>
        )}
      </div>
    </form>
  );
}
