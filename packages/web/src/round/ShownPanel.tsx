import type { Words } from '@evenfall/words';
import type { ReactNode } from 'react';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { Flags } from '../parts/Flags.js';
import { faceFlags } from '../parts/faceFlags.js';
import { RemoveButton } from '../parts/RemoveButton.js';
import { type Content, EvidenceStrip, RangeLine, Rate } from '../parts/ValueFigures.js';
import { AlsoNoticed } from './AlsoNoticed.js';
import { shownContent } from './content.js';
import { withNumberReopened } from './draft.js';
import { nextHref, stepOf } from './nextHref.js';
import type { PanelProps } from './panelProps.js';
import { valueRemoved } from './slip.js';
import { standingOf } from './standing.js';
import { useCameFrom } from './useCameFrom.js';

type ShownProps = PanelProps & { readonly entry: string; readonly person: string };

/** What came out, and what to do next in the round. */
export function ShownPanel({ round, sign, entry, person }: ShownProps) {
  const { words, program } = useApp();
  const cameFrom = useCameFrom(person);
  const { missing } = standingOf(round.draft, { ...round, program });
  // A longer count has a button of its own; who does without it goes on with what is still open.
  const step = stepOf(missing.find((one) => one !== sign));
  const goesOn = step !== 'review';
  return (
    <ShownValue
      round={round}
      sign={sign}
      entry={entry}
      next={(look) => (
        <Link
          href={cameFrom?.href ?? (goesOn ? nextHref(person, step) : `/people/${person}/round`)}
          className={look}
        >
          {words.sentence(cameFrom !== null ? 'rest.back' : goesOn ? 'count.goOn' : 'count.toReview')}
        </Link>
      )}
    />
  );
}

type ValueProps = PanelProps & {
  readonly entry: string;
  /** What leads on from here, in a look: the first of what can be done, or beside a longer count. */
  readonly next: (look: string) => ReactNode;
};

/** What came out: rate, range, evidence, flags, what else was noticed, a longer count where one is due. A slip is undone here. */
export function ShownValue({ round, sign, entry, next }: ValueProps) {
  const { words, program } = useApp();
  const { draft, change, measure } = round;
  const value = draft[sign].values.find((one) => one.entry === entry);
  if (value === undefined) return null;
  const given = shownContent(draft, sign, value, { ...round, program });
  const nextSeconds = given.content.value.nextWindowSeconds;
  return (
    <div className="measure measure-shown">
      <div role="status">
        <Rate given={given} />
        <RangeLine given={given} />
      </div>
      <EvidenceStrip given={given} />
      <p className="soft small">{rangeNote(given, words)}</p>
      <Flags flags={faceFlags(given)} isAnnounced />
      <AlsoNoticed round={round} sign={sign} value={value} />
      <div className="buttons">
        {value.kind === 'count' ? (
          <button
            type="button"
            className="button button-quiet"
            onClick={() => change((was) => withNumberReopened(was, sign, { entry, from: 'value' }))}
          >
            {words.sentence('count.changeNumber')}
          </button>
        ) : null}
        <RemoveButton onRemove={() => change((was) => valueRemoved(was, sign, entry))} />
      </div>
      <div className="next-steps">
        {nextSeconds === null ? null : (
          <button
            type="button"
            className="button button-first button-large"
            onClick={() => measure(sign, { at: 'ready', way: 'count', windowSeconds: nextSeconds })}
          >
            {nextSeconds === round.inForce.countRules.fullWindowSeconds
              ? words.sentence('count.fullMinute')
              : words.sentence('count.countFor', { seconds: nextSeconds })}
          </button>
        )}
        {next(nextSeconds === null ? 'button button-first button-large' : 'button button-large')}
      </div>
    </div>
  );
}

/** Of what the range speaks, and what one miscounted beat would have changed. */
function rangeNote(given: Content, words: Words): string {
  if (given.kind === 'taps') return words.sentence('taps.rangeSays');
  const { stepPerMinute } = given.content.value;
  const says = words.sentence('count.rangeSays');
  if (stepPerMinute === null) return says;
  return `${words.sentence('count.oneMore', { perMinute: stepPerMinute })} ${says}`;
}
