import { judge, wasLookedUp } from '@evenfall/practice';
import { type EntryFrame, NOTHING_CHOSEN } from '@evenfall/record';
import { useMemo, useState } from 'react';
import { Link } from 'wouter';
import { useApp, useKept } from '../../app/context.js';
import { TruthTable } from '../../debrief/TruthTable.js';
import { WhoMeasures } from '../../people/WhoMeasures.js';
import { signed } from '../../round/waiting.js';
import { useMeasuring } from '../../signIn/useAccess.js';
import { EXERCISE_ENTRY_SCHEMA, exerciseOf } from '../exerciseOf.js';
import type { PracticeDraft } from '../keptPractice.js';
import { readingsOf } from '../readingsOf.js';
import { StepHeading } from '../StepHeading.js';
import { scenarioLesson, scenarioTitle } from '../scenarioText.js';
import { TruthBeyond } from '../TruthBeyond.js';
import type { Change } from '../usePractice.js';
import { isHandedOver, waitingExercise } from '../waitingExercise.js';
import { personName } from '../whoComesIn.js';
import { ReadingList } from './WrittenPanel.js';

type DoneProps = {
  readonly draft: PracticeDraft;
  readonly change: Change;
  readonly onKept: () => void;
  readonly onMore: () => void;
};

type Content = ReturnType<typeof exerciseOf>;

/**
 * What was written, whether something cannot wait; then it is kept, and the truth is shown. Kept on this device at once, among
 * what waits for the server: that sends it by itself, now or when the network returns.
 */
export function DonePanel({ draft, change, onKept, onMore }: DoneProps) {
  const { words, store, sending } = useApp();
  const say = words.sentence;
  const agent = useMeasuring();
  const inForce = useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN;
  const [refused, setRefused] = useState<string | null>(null);
  const [isActMissing, setActMissing] = useState(false);
  const [isAsked, setAsked] = useState(false);
  const content = exerciseOf(draft, inForce);
  const isLookedUp = wasLookedUp(content);
  const keep = () => {
    setRefused(null);
    // Whoever wrote nothing looks the truth up: that is asked first, and is no attempt that anything is to be said of.
    if (isLookedUp && !isAsked) return setAsked(true);
    setActMissing(!isLookedUp && draft.saysActNow === null);
    if (!isLookedUp && draft.saysActNow === null) return;
    if (agent === null) return setRefused(say('practice.whoFirst'));
    const entry: EntryFrame = {
      frame: 1,
      id: draft.exercise,
      book: 'simulated',
      kind: 'exercise',
      schema: EXERCISE_ENTRY_SCHEMA,
      person: null,
      round: null,
      session: null,
      agent,
      role: 'observer',
      device: store.get().kept.device,
      sequence: draft.sequence,
      measuredAt: draft.begunAt,
      writtenAt: draft.begunAt.at,
      amends: null,
      content: content as unknown as Record<string, unknown>,
    };
    store.change((state) => ({ ...state, kept: signed(state.kept, waitingExercise(draft, entry)) }));
    onKept();
    void sending.now();
  };
  return (
    <section className="practice-done" aria-label={say('practice.entered')}>
      <StepHeading text={say('practice.entered')} />
      <Entered content={content} readings={readingsOf(draft)} />
      <fieldset className="choices" aria-describedby="act-now-missing">
        <legend>{say('practice.actNow')}</legend>
        <div className="choices-row">
          {([true, false] as const).map((says) => (
            <label key={String(says)} className="choice">
              <input
                type="radio"
                name="act-now"
                checked={draft.saysActNow === says}
                onChange={() => {
                  setActMissing(false);
                  change((was) => ({ ...was, saysActNow: says }));
                }}
              />
              {say(says ? 'practice.actNowYes' : 'practice.actNowNo')}
            </label>
          ))}
        </div>
      </fieldset>
      <p className="field-wrong" id="act-now-missing" role="alert" hidden={!isActMissing}>
        {say('practice.actNowMissing')}
      </p>
      {agent === null ? <WhoMeasures /> : null}
      {refused === null ? null : (
        <p className="notice" role="alert">
          {refused}
        </p>
      )}
      {isLookedUp && isAsked ? (
        <div className="notice give-up" role="alert">
          <p>{say('practice.lookUpSure')}</p>
          <div className="buttons">
            <button type="button" className="button button-first" onClick={onMore}>
              {say('practice.backToRoom')}
            </button>
            <button type="button" className="button" onClick={keep}>
              {say('practice.lookUpYes')}
            </button>
          </div>
        </div>
      ) : (
        <div className="buttons">
          <button type="button" className="button button-first button-large" onClick={keep}>
            {say('practice.keep')}
          </button>
          <button type="button" className="button button-quiet" onClick={onMore}>
            {say('practice.takeMore')}
          </button>
        </div>
      )}
    </section>
  );
}

type EnteredProps = { readonly content: Content; readonly readings: ReturnType<typeof readingsOf> };

/** The numbers as they were written. */
function Entered({ content: { entered }, readings }: EnteredProps) {
  const { words } = useApp();
  const say = words.sentence;
  const { apexPerMinute = null } = entered;
  const rate = (perMinute: number | null) =>
    perMinute === null ? say('practice.nothing') : say('practice.aMinute', { perMinute });
  return (
    <dl className="entered">
      <dt>{say('practice.pressure')}</dt>
      <dd>{readings.length === 0 ? say('practice.nothing') : <ReadingList readings={readings} />}</dd>
      <dt>{say('practice.pulse')}</dt>
      <dd>{rate(entered.pulsePerMinute)}</dd>
      {apexPerMinute === null ? null : (
        <>
          <dt>{say('practice.apex')}</dt>
          <dd>{rate(apexPerMinute)}</dd>
        </>
      )}
      <dt>{say('practice.breaths')}</dt>
      <dd>{rate(entered.breathsPerMinute)}</dd>
      {(entered.temperatureC ?? null) === null ? null : (
        <>
          <dt>{say('counts.title-temperature')}</dt>
          <dd>{say('counts.celsius', { celsius: entered.temperatureC ?? 0 })}</dd>
        </>
      )}
    </dl>
  );
}

/**
 * Whether the server has it yet, or it waits here; what was refused is said at the head of the page. It stands where a
 * voice says what comes.
 */
export function Kept({ exercise }: { readonly exercise: string }) {
  const { words } = useApp();
  const waits = useKept(({ kept }) => kept.waiting.find(({ round }) => round === exercise));
  if (waits !== undefined && waits.refused !== null) return null;
  return (
    <p className={waits === undefined ? 'ticked' : 'notice'}>
      {words.sentence(waits === undefined ? 'practice.keptNow' : 'practice.keptHere')}
    </p>
  );
}

/** What was true, beside what was written; the lesson; and on. */
export function TruthPanel({
  draft,
  onAgain,
}: {
  readonly draft: PracticeDraft;
  readonly onAgain: () => void;
}) {
  const { words } = useApp();
  const say = words.sentence;
  const inForce = useKept(({ known }) => known.inForce.value) ?? NOTHING_CHOSEN;
  const content = useMemo(() => exerciseOf(draft, inForce), [draft, inForce]);
  const lesson = scenarioLesson(content.scenario, words);
  // Another one would take the place of what is nowhere else on this device yet.
  const isFree = useKept((state) => isHandedOver(state, draft.exercise));
  const { truth: was } = useMemo(() => judge(content), [content]);
  // Of what was looked up no habit is told: it is taken once more.
  const isLookedUp = wasLookedUp(content);
  const debriefLink = (
    <Link
      href={`/practice/exercises/${draft.exercise}`}
      className={isLookedUp ? 'button' : 'button button-first button-large'}
    >
      {say('practice.debrief')}
    </Link>
  );
  return (
    <section className="practice-done" aria-label={say('practice.truth')}>
      <StepHeading text={say('practice.truth')} />
      {isLookedUp ? <p className="notice">{say('practice.lookedUp')}</p> : null}
      <TruthTable exercise={content} />
      <TruthBeyond scenario={content.scenario} truth={was} />
      <p>
        <strong>
          {[...new Set([personName(content.scenario), scenarioTitle(content.scenario, words)])].join(': ')}
        </strong>
      </p>
      {lesson === null ? null : (
        <p>
          <strong>{say('practice.lesson')}:</strong> {lesson}
        </p>
      )}
      <div className="buttons">
        {isLookedUp ? null : debriefLink}
        {isFree ? (
          <button
            type="button"
            className={isLookedUp ? 'button button-first button-large' : 'button'}
            onClick={onAgain}
          >
            {say('practice.once')}
          </button>
        ) : null}
        {isLookedUp ? debriefLink : null}
        <Link href="/practice" className="button">
          {say('practice.toList')}
        </Link>
      </div>
    </section>
  );
}
