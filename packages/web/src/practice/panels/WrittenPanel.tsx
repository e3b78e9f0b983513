import { NOTHING_CHOSEN } from '@evenfall/record';
import { useApp, useKept } from '../../app/context.js';
import { Flags } from '../../parts/Flags.js';
import { gapFlags } from '../gapFlags.js';
import type { PracticeDraft } from '../keptPractice.js';
import { readingsOf } from '../readingsOf.js';
import { StepHeading } from '../StepHeading.js';
import { nowOf } from '../visit.js';

type WrittenProps = {
  readonly draft: PracticeDraft;
  /** Whether the cuff is empty and the visit not at its end: only then is the person asked for anything. */
  readonly canArrange: boolean;
  readonly isAtEnd: boolean;
  readonly onAgain: () => void;
  readonly onOtherArm: () => void;
  readonly onPosture: (posture: 'sitting' | 'standing') => void;
  readonly onDone: () => void;
};

/** A pressure was written: it is taken again, here or elsewhere, as at the bedside, or the visit is over. */
export function WrittenPanel(props: WrittenProps) {
  const { draft, canArrange, isAtEnd, onAgain, onOtherArm, onPosture, onDone } = props;
  const { words } = useApp();
  const say = words.sentence;
  const readings = readingsOf(draft);
  const inForce = useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN;
  const { circumstances } = nowOf(draft.visit);
  const isLeft = circumstances.arm === 'left';
  const isUp = circumstances.posture === 'standing';
  return (
    <section className="practice-done" aria-label={say('practice.writtenDown')}>
      <StepHeading text={say('practice.writtenDown')} />
      <ReadingList readings={readings} />
      <Flags flags={gapFlags(draft, inForce)} isAnnounced />
      {isAtEnd ? null : <p>{say('practice.againHint')}</p>}
      <div className="written-ways">
        {isAtEnd ? null : (
          <button type="button" className="button button-first button-large" onClick={onAgain}>
            {say('practice.again')}
          </button>
        )}
        <button
          type="button"
          className={isAtEnd ? 'button button-first button-large' : 'button button-large'}
          onClick={onDone}
        >
          {say('practice.finish')}
        </button>
        {canArrange ? (
          <>
            <button type="button" className="button" onClick={onOtherArm}>
              {say(isLeft ? 'practice.againRight' : 'practice.againLeft')}
            </button>
            {draft.visit.scenario.standing === null ? null : (
              <button
                type="button"
                className="button"
                onClick={() => onPosture(isUp ? 'sitting' : 'standing')}
              >
                {say(isUp ? 'practice.againSitting' : 'practice.againStanding')}
              </button>
            )}
          </>
        ) : null}
      </div>
      {canArrange || isAtEnd ? null : <p className="small soft">{say('practice.fixedNow')}</p>}
    </section>
  );
}

/** The readings of a visit in order, each with where it was taken. */
export function ReadingList({ readings }: { readonly readings: ReturnType<typeof readingsOf> }) {
  const { words } = useApp();
  const say = words.sentence;
  return (
    <ol className="written-readings">
      {readings.map(({ text, isLeft, isStanding }, at) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: the same may be written twice, and the order stays
        <li key={at}>
          <span className="entered-large">{text}</span>{' '}
          <span className="small soft">
            {say(isLeft ? 'practice.onLeft' : 'practice.onRight')}
            {isStanding ? `, ${say('practice.onFeet')}` : ''}
          </span>
        </li>
      ))}
    </ol>
  );
}
