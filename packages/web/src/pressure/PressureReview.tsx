import { cuffRulesFor, cuffScheme } from '@evenfall/clinical';
import { pressureWritten } from '@evenfall/record';
import { readingTexts } from '@evenfall/words';
import { useState } from 'react';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { GaugeFlag } from '../equipment/GaugeFlag.js';
import { DeflationStrip } from '../parts/DeflationStrip.js';
import { Field } from '../parts/Field.js';
import { Flags } from '../parts/Flags.js';
import { Folded } from '../parts/Folded.js';
import { flagsInCommon } from '../parts/flagsInCommon.js';
import { RemoveButton } from '../parts/RemoveButton.js';
import { SharedFlags } from '../parts/SharedFlags.js';
import { runContentOf } from '../round/entries.js';
import { NotDoneForm, notDoneText } from '../round/NotDoneForm.js';
import { readingRemoved } from '../round/slip.js';
import { valueId } from '../round/useComeBack.js';
import type { Round } from '../round/useRound.js';
import { AskUpright } from './AskUpright.js';
import { isCuffKnown, withCuffOf } from './cuffOfReading.js';
import { notesOf } from './notesOf.js';
import { placeText } from './placeText.js';
import type { DraftRun } from './pressureDraft.js';
import { withPressureAt, withPressureNotDone, withReadingReopened } from './pressureSteps.js';
import { RangeOfReading, ReadingNumbers } from './ReadingPanel.js';

type PressureReviewProps = { readonly round: Round; readonly person: string };

/** Every reading of the round with its place and what is said of it, or why there is none. */
export function PressureReview({ round, person }: PressureReviewProps) {
  const { words, program } = useApp();
  const { pressure } = round.draft;
  const { values, notDone } = pressure;
  const [isAsking, setAsking] = useState(false);
  const notes = notesOf(round.draft, { ...round, program });
  const { ownOf, shared } = flagsInCommon(
    values.map((reading) => {
      const content = runContentOf(round.draft, reading, { ...round, program });
      return {
        id: reading.entry,
        sign: words.sentence('app.pressure'),
        name: pressureWritten(content),
        flags: [...content.value.flags, ...(notes.ofReading[reading.entry] ?? [])],
      };
    }),
    words.detail,
  );
  return (
    <section className="sign-review" aria-label={words.sentence('app.pressure')}>
      <h2>{words.sentence('app.pressure')}</h2>
      {values.map((reading) => {
        const content = runContentOf(round.draft, reading, { ...round, program });
        const { value } = content;
        return (
          <div key={reading.entry} className="value-review">
            <div className="value-line" id={valueId(reading.entry)} tabIndex={-1}>
              <ReadingNumbers value={value} round={round} />
            </div>
            <Folded summary={words.sentence('review.folded')} of={pressureWritten(content)}>
              <RangeOfReading value={value} />
              <DeflationStrip content={content} />
              {'marks' in reading.typedAs && !reading.typedAs.areTimesVoid ? (
                <p className="soft small">{words.sentence('review.momentsStand')}</p>
              ) : null}
              <div className="buttons">
                <Link
                  href={`/people/${person}/round/pressure`}
                  className="button button-quiet"
                  onClick={() =>
                    round.change((draft) =>
                      withReadingReopened(draft, { entry: reading.entry, from: 'review' }),
                    )
                  }
                >
                  {words.sentence('pressure.changeNumbers')}
                  <span className="unseen">: {pressureWritten(content)}</span>
                </Link>
                <RemoveButton
                  onRemove={() => round.change((draft) => readingRemoved(draft, reading.entry))}
                />
                {reading === values.at(-1) ? (
                  <Link
                    href={`/people/${person}/round/pressure`}
                    className="button button-quiet"
                    onClick={() => round.change((draft) => withPressureAt(draft, { at: 'ready' }))}
                  >
                    {words.sentence('review.takeAnother')}
                  </Link>
                ) : null}
              </div>
            </Folded>
            <WrongCuff round={round} reading={reading} />
            <p className="small">
              {[
                words.title('method', value.method),
                placeText(reading.place, words),
                ...(reading.place.cuff === null && reading.place.site === 'upper-arm'
                  ? [words.sentence('pressure.cuffIs', { text: words.sentence('pressure.cuffNotSaid') })]
                  : []),
                // How they felt is asked just below, with its answer.
                ...readingTexts(
                  content.evidence.run.pulsePerMinute,
                  { ...content.evidence.circumstances, unwellUpright: null },
                  words,
                ),
              ].join(' · ')}
            </p>
            <AskUpright round={round} reading={reading} />
            <GaugeFlag gauge={reading.gauge ?? null} />
            <Flags flags={ownOf(reading.entry)} />
          </div>
        );
      })}
      <SharedFlags shared={shared} />
      {values.length > 0 && notDone === null ? null : notDone === null ? (
        <div className="buttons">
          <Link href={`/people/${person}/round/pressure`} className="button">
            {words.sentence('review.take')}
          </Link>
          {isAsking ? null : (
            <button type="button" className="button button-quiet" onClick={() => setAsking(true)}>
              {words.sentence('review.notDone')}
            </button>
          )}
        </div>
      ) : (
        <div className="buttons">
          <p>{words.sentence('review.notDoneIs', { text: notDoneText(notDone, words) })}</p>
          <button
            type="button"
            className="button button-quiet"
            onClick={() => round.change((draft) => withPressureNotDone(draft, null))}
          >
            {words.sentence('review.notDoneUndo')}
          </button>
        </div>
      )}
      {isAsking && notDone === null && values.length === 0 ? (
        <NotDoneForm
          onKeep={(kept) => {
            round.change((draft) => withPressureNotDone(draft, kept));
            setAsking(false);
          }}
          onCancel={() => setAsking(false)}
        />
      ) : null}
    </section>
  );
}

/** A cuff that is none of its scheme, put right where it stands; nothing where it is one. */
function WrongCuff({ round, reading }: { readonly round: Round; readonly reading: DraftRun }) {
  const { words } = useApp();
  if (isCuffKnown(reading.place)) return null;
  const { scheme } = cuffRulesFor(round.inForce.roundRules.cuff, round.facts.ageMonths);
  return (
    <Field label={words.sentence('review.cuffUsed')} wrong={words.sentence('review.cuffWrong')}>
      {(control) => (
        <select
          {...control}
          value=""
          onChange={({ target: { value } }) =>
            round.change((draft) =>
              withCuffOf(draft, reading.entry, value === 'not-said' ? null : { scheme, id: value }),
            )
          }
        >
          <option value="">{words.sentence('quick.chooseArm')}</option>
          {cuffScheme(scheme).cuffs.map(({ id }) => (
            <option key={id} value={id}>
              {words.title('cuff', id)}
            </option>
          ))}
          <option value="not-said">{words.sentence('pressure.cuffNotSaid')}</option>
        </select>
      )}
    </Field>
  );
}
