import {
  type Flag,
  isLowCondition,
  isOtherArmOpen,
  isToLieDown,
  lieDownFlags,
  type NextStep,
  numbersText,
  postureLaidDown,
  ROUND_FIGURES,
  type RoundNotes,
  SCORE_FIGURES,
  shorthandOf,
} from '@evenfall/clinical';
import type { RunContent } from '@evenfall/record';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { DeflationStrip } from '../parts/DeflationStrip.js';
import { Flags } from '../parts/Flags.js';
import { RemoveButton } from '../parts/RemoveButton.js';
import { runContentOf } from '../round/entries.js';
import { roundFactsIn } from '../round/facts.js';
import { nextHref, stepOf } from '../round/nextHref.js';
import { ActNowPanel, AskPanel } from '../round/ResultPanels.js';
import { readingRemoved } from '../round/slip.js';
import { type RoundStanding, readingOf, readingsSoFar, standingOf } from '../round/standing.js';
import type { Round } from '../round/useRound.js';
import { AskUpright } from './AskUpright.js';
import { againSeconds, againText } from './againWait.js';
import { notesOf } from './notesOf.js';
import { PlaceLine } from './PlaceLine.js';
import { placeText } from './placeText.js';
import type { DraftRun } from './pressureDraft.js';
import {
  withNextReading,
  withPressureAt,
  withReadingReopened,
  withStandingStopped,
} from './pressureSteps.js';
import { rangeTexts } from './rangeTexts.js';
import { isNextAtOnce } from './runCircumstances.js';
import { lowBeforeStanding } from './StandingHeld.js';
import { UprightClock } from './UprightClock.js';
import { useNow } from './useNow.js';
import { WaitLine } from './WaitLine.js';
import { whyNoRange } from './whyNoRange.js';

type ReadingProps = { readonly round: Round; readonly entry: string; readonly person: string };

/** What came out, what it means at once, and what comes next. A slip is undone here. */
export function ReadingPanel({ round, entry, person }: ReadingProps) {
  const { words, program } = useApp();
  const { draft, inForce } = round;
  const reading = draft.pressure.values.find((one) => one.entry === entry);
  if (reading === undefined) return null;
  const content = runContentOf(draft, reading, { ...round, program });
  const { value } = content;
  const standing = standingOf(draft, { ...round, program });
  const notes = notesOf(draft, { ...round, program });
  const { ageMonths } = round.facts;
  const { actNow } = inForce.roundRules;
  const lieDown = lieDownFlags([readingOf(draft, reading, { ...round, program })], ageMonths, actNow);
  const isToLie =
    draft.pressure.place?.posture === 'stand' &&
    reading.place.posture === 'stand' &&
    isToLieDown(readingsSoFar(draft, { ...round, program }), ageMonths, actNow);
  const whyFall = whyNext(standing).filter(({ code }) => code === 'fall-on-standing');
  // An alert of a low pressure says itself what the repeat read.
  const isRepeatSaid =
    notes.repeat !== null &&
    standing.content.value?.actNow.some(({ condition }) => isLowCondition(condition)) === true;
  return (
    <div className="measure measure-shown">
      <div role="status">
        <ReadingNumbers value={value} round={round} />
        {content.evidence.run.pulsePerMinute === null ? null : (
          <p className="small">
            {`${words.sentence('app.pulse')} ${words.say.rate(content.evidence.run.pulsePerMinute)} ${words.sentence('app.perMinute')}`}
          </p>
        )}
      </div>
      <ActNowPanel standing={standing} also={lieDown} repeat={notes.repeat} />
      {/* A reading that was not low itself, after one that was. */}
      {isToLie && lieDown.length === 0 ? <p>{words.sentence('postures.toLieDown')}</p> : null}
      {isRepeated(round, reading, standing) && !isRepeatSaid ? (
        <p>{words.sentence('pressure.repeated')}</p>
      ) : null}
      <AskPanel round={round} standing={standing} />
      <AskUpright round={round} reading={reading} />
      {/* Of a reading on the feet the fall comes before how it was taken. */}
      <Flags flags={[...fallHere(reading, draft, standing, notes), ...whyFall]} isAnnounced />
      <Flags flags={value.flags} isAnnounced />
      <Flags flags={notes.ofReading[entry] ?? []} isAnnounced />
      {reading === draft.pressure.values.at(-1) && reading.place.posture !== 'stand' ? (
        <Flags flags={notes.arms} isAnnounced />
      ) : null}
      <Flags flags={whyNext(standing).filter((one) => !whyFall.includes(one))} isAnnounced />
      <PlaceLine round={round} place={reading.place} gauge={reading.gauge ?? null} />
      <RangeOfReading value={value} />
      <DeflationStrip content={content} />
      <div className="buttons">
        <button
          type="button"
          className="button button-quiet"
          onClick={() => round.change((was) => withReadingReopened(was, { entry, from: 'value' }))}
        >
          {words.sentence('pressure.changeNumbers')}
        </button>
        <RemoveButton onRemove={() => round.change((was) => readingRemoved(was, entry))} />
      </div>
      <Next
        round={round}
        isToLie={isToLie}
        standing={standing}
        person={person}
        gapSeconds={inForce.roundRules.readings.gapSeconds}
      />
    </div>
  );
}

/** The numbers as the trade writes them, large. */
export function ReadingNumbers({
  value,
  round,
}: {
  readonly value: RunContent['value'];
  readonly round: Round;
}) {
  const { words } = useApp();
  const { deflation } = round.inForce.runRules;
  const beside = { pulse: null, side: null, posture: null, cuff: null, site: null };
  return (
    <p className="rate rate-pressure">
      <span className="rate-number">{numbersText(shorthandOf(value, beside, deflation))}</span>
      <span className="rate-unit">{words.sentence('pressure.mmHg')}</span>
    </p>
  );
}

/** What deflation and gauge alone allow, where it is known. */
export function RangeOfReading({ value }: { readonly value: RunContent['value'] }) {
  const { words } = useApp();
  const ranges = rangeTexts(value, words);
  if (value.method === 'device') return null;
  if (ranges.length === 0) return <p className="soft small">{words.sentence(whyNoRange(value))}</p>;
  return (
    <p className="small">
      {`${ranges.join(', ')}.`} <span className="soft">{words.sentence('pressure.rangeSays')}</span>
    </p>
  );
}

/** Whether the last reading is the repeat of one that nobody waited after: the alert beside it asks for no further one. */
function isRepeated({ draft, ...under }: Round, reading: DraftRun, { nextPressure }: RoundStanding): boolean {
  const [before, last] = draft.pressure.values.slice(-2);
  if (reading !== last || before === undefined) return false;
  return (
    nextPressure?.why.some(({ code }) => code === 'again-at-once') !== true &&
    isNextAtOnce(draft, before, under)
  );
}

/** Why another reading is asked for: under the number, where the buttons at the foot do not cover it. */
function whyNext({ nextPressure, content }: RoundStanding): NextStep['why'] {
  if (nextPressure === null || !(nextPressure.step in NEXT_TEXT)) return [];
  // An alert of a low pressure says itself that it is taken again at once.
  const isSaid = content.value?.actNow.some(({ condition }) => isLowCondition(condition)) === true;
  // That somebody asked for it, they know: it was the touch before.
  return nextPressure.why.filter(({ code }) => code !== 'asked-for' && !(isSaid && code === 'again-at-once'));
}

/** Of the last reading on the feet: that a fall lasts, or that it came only now; what asks for the next one says the others. */
function fallHere(
  reading: DraftRun,
  { pressure }: Round['draft'],
  standing: RoundStanding,
  notes: RoundNotes,
): readonly Flag[] {
  if (reading !== pressure.values.at(-1) || reading.place.posture !== 'stand') return [];
  const isSaid = whyNext(standing).some(({ code }) => code === 'fall-on-standing');
  const found = standing.content.value?.standing?.flags ?? [];
  const here = found.filter(
    ({ code, figures }) =>
      !isSaid && code === 'fall-on-standing' && figures.minutes === reading.uprightMinutes,
  );
  return [...here, ...notes.standing.filter(({ code }) => code === 'fall-lasts')];
}

type NextProps = {
  /** On their feet at this reading, and to lie down now: that comes first, and nobody is told to stand again. */
  readonly isToLie: boolean;
  readonly round: Round;
  readonly standing: RoundStanding;
  readonly person: string;
  readonly gapSeconds: number;
};

/** The next reading with its wait, the other arm, another posture, or the next sign. */
function Next({ round, standing, person, gapSeconds, isToLie }: NextProps) {
  const { words, program } = useApp();
  const { nextPressure } = standing;
  const last = round.draft.pressure.values.at(-1);
  const isReading = nextPressure !== null && nextPressure.step in NEXT_TEXT;
  const { wanted } = round.draft;
  const { palpateFirst } = round.inForce.roundRules.plan;
  const want = (one: 'other-arm' | 'lying-and-standing') =>
    round.change((draft) => ({
      ...draft,
      wanted: draft.wanted.includes(one)
        ? draft.wanted.filter((other) => other !== one)
        : [...draft.wanted, one],
    }));
  // A longer count that was passed over is asked for on the review and is not gone back to from here.
  const isPassedOver = standing.next.why.some(({ code }) => code === 'longer-count');
  const step = isPassedOver ? stepOf(standing.missing[0]) : standing.next.step;
  // What must be asked or acted on comes first: then the foot hides nothing of it and calls for nothing else.
  const open = standing.content.value;
  const isOpen =
    open !== null && (open.actNow.length > 0 || open.ask.features.length > 0 || open.ask.pregnancy);
  const isLow = lowBeforeStanding(standing).length > 0;
  // Very low or unwell: what is asked of whoever measures is this, and now.
  const isAtOnce = nextPressure?.why.some(({ code }) => code === 'again-at-once') === true;
  const isHeld = !isAtOnce && (isToLie || (nextPressure?.step === 'standing' && isLow));
  // Then that alone stays under the thumb, and hides as little as it can of what is to be read.
  const isNow = isAtOnce && (open?.ask.features.length ?? 0) === 0 && open?.ask.pregnancy !== true;
  // Not once it was measured, nor to somebody on their feet, nor where it comes by itself.
  const isOtherOffered =
    last?.place.posture !== 'stand' &&
    isOtherArmOpen(
      readingsSoFar(round.draft, { ...round, program }),
      roundFactsIn(round.draft, round.facts),
      round.inForce.roundRules,
    ) &&
    (nextPressure?.step !== 'other-arm' || wanted.includes('other-arm'));
  const toReview = (look: string) => (
    <Link href={isReading ? `/people/${person}/round` : nextHref(person, step)} className={`button${look}`}>
      {words.sentence(isReading || step === 'review' ? 'count.toReview' : 'count.goOn')}
    </Link>
  );
  const stop = (look: string) => (
    <Link
      href={`/people/${person}/round`}
      className={`button${look}`}
      onClick={() =>
        round.change((draft) =>
          withStandingStopped(
            draft,
            postureLaidDown(roundFactsIn(draft, round.facts), round.inForce.roundRules),
          ),
        )
      }
    >
      {words.sentence('pressure.stopStanding')}
    </Link>
  );
  return (
    <>
      <div className="buttons buttons-middle">
        {nextPressure?.step === 'repeat' || isToLie || isNow ? null : (
          <button
            type="button"
            className="button button-quiet"
            onClick={() => round.change((draft) => withPressureAt(draft, { at: 'ready' }))}
          >
            {words.sentence('pressure.oneMore')}
          </button>
        )}
        {isOtherOffered ? (
          <button
            type="button"
            className="button button-switch"
            aria-pressed={wanted.includes('other-arm')}
            onClick={() => want('other-arm')}
          >
            {words.sentence('pressure.wantOtherArm')}
          </button>
        ) : null}
        <button
          type="button"
          className="button button-switch"
          aria-pressed={wanted.includes('lying-and-standing')}
          onClick={() => want('lying-and-standing')}
        >
          {words.sentence('pressure.wantStanding')}
        </button>
      </div>
      <p className="soft small measure-says">{words.sentence('postures.wantStandingSays', STANDING_ASKS)}</p>
      {isNow ? <div className="buttons buttons-middle">{isToLie ? stop('') : toReview('')}</div> : null}
      <div className={isOpen && !isNow ? 'next-steps next-steps-last' : 'next-steps'}>
        {isHeld ? (isToLie ? stop : toReview)(' button-first button-large') : null}
        {nextPressure?.step === 'repeat' && last !== undefined ? (
          <>
            {isAtOnce ? null : <Countdown round={round} next={nextPressure} gapSeconds={gapSeconds} />}
            <WhereAgain
              next={nextPressure}
              last={last}
              isOtherAfter={
                (isOtherOffered && wanted.includes('other-arm')) ||
                nextPressure.why.some(({ code }) => code === 'arms-repeat')
              }
            />
          </>
        ) : null}
        {nextPressure?.step === 'standing' && !isHeld ? <UprightClock round={round} /> : null}
        {isReading ? (
          <button
            type="button"
            className={
              nextPressure.step === 'standing' && isHeld
                ? 'button button-quiet'
                : (isOpen && !isAtOnce) || isHeld
                  ? 'button button-large'
                  : 'button button-first button-large'
            }
            onClick={() => round.change((draft) => withNextReading(draft, nextPressure, palpateFirst))}
          >
            {words.sentence(NEXT_TEXT[nextPressure.step as keyof typeof NEXT_TEXT])}
          </button>
        ) : null}
        {isHeld || isNow
          ? null
          : isToLie
            ? stop(' button-large')
            : toReview(isReading || isOpen ? ' button-large' : ' button-first button-large')}
      </div>
    </>
  );
}

/** What is asked for by the lying and standing test, minutes. */
const STANDING_ASKS = {
  lying: ROUND_FIGURES.lyingBeforeMinutes.value,
  first: SCORE_FIGURES.standingFirstMinutes.value,
  third: SCORE_FIGURES.standingWithinMinutes.value,
};

const NEXT_TEXT = {
  repeat: 'pressure.again',
  'other-arm': 'pressure.otherArm',
  lying: 'pressure.lying',
  standing: 'pressure.standing',
} as const;

type AgainProps = {
  readonly next: NextStep;
  readonly last: DraftRun;
  /** Whether somebody asked for the other arm, which comes after it. */
  readonly isOtherAfter: boolean;
};

/** Where the next reading is taken, where that is not plain: not where the last one was, or before the other arm. */
function WhereAgain({ next: { side, site, posture }, last: { place }, isOtherAfter }: AgainProps) {
  const { words } = useApp();
  const at = {
    ...place,
    side: side ?? place.side,
    site: site ?? place.site,
    posture: posture ?? place.posture,
  };
  const isThere = at.side === place.side && at.site === place.site && at.posture === place.posture;
  if (isThere && !isOtherAfter) return null;
  const text = placeText(isThere ? at : { ...at, cuff: null }, words);
  return (
    <p className="small">
      {words.sentence(isThere ? 'pressure.sameArmFirst' : 'pressure.againAt', { text })}
    </p>
  );
}

type CountdownProps = {
  readonly round: Round;
  readonly next: NextStep;
  readonly gapSeconds: number;
};

function Countdown({ round, next, gapSeconds }: CountdownProps) {
  const { words } = useApp();
  const seconds = againSeconds(round.draft.pressure, next, useNow(true));
  if (seconds === null) return <p className="soft small">{words.sentence('pressure.waitUnknown')}</p>;
  return (
    <WaitLine
      isOver={seconds === 0}
      text={seconds > 0 ? againText(seconds, gapSeconds, words) : words.sentence('pressure.againNow')}
    />
  );
}
