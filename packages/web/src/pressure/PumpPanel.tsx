import { inflateTo, isFeltOn, isLetDownPerBeat, type Method } from '@evenfall/clinical';
import type { RunPlace } from '@evenfall/record';
import { useApp, useKept } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import { standingOf } from '../round/standing.js';
import type { Round } from '../round/useRound.js';
import { SecondCode } from '../second/SecondCode.js';
import type { useSecond } from '../second/useSecond.js';
import { againSeconds, againText } from './againWait.js';
import { postureField } from './lying.js';
import { PlaceLine } from './PlaceLine.js';
import { PostureHere } from './PostureHere.js';
import { isPostureFirst, waitSaid } from './postureWait.js';
import { type Inflated, type Instant, knownAt, restsOn } from './pressureDraft.js';
import { blankReading, secondsToWait, withPressureAt } from './pressureSteps.js';
import { feltPulse, isAskedAtOnce, rhythmFelt } from './runCircumstances.js';
import { lowBeforeStanding, StandingHeld } from './StandingHeld.js';
import { useNow } from './useNow.js';
import { WaitLine } from './WaitLine.js';

type PumpProps = {
  readonly round: Round;
  readonly place: RunPlace;
  /** A second person on another device, where one is wanted. */
  readonly other: ReturnType<typeof useSecond>;
};

/** How far to pump up, and when. Nothing sounds here, and nothing stands in the way of an early reading. */
export function PumpPanel({ round, place, other: { second, anew } }: PumpProps) {
  const { words, clock, session, store, program } = useApp();
  const hearing = useKept(({ kept }) => kept.hearing ?? 'remember');
  const isOther = hearing === 'second' && second.is === 'open' && second.isJoined;
  const { pressure } = round.draft;
  const { inflation, deflation } = round.inForce.runRules;
  const now = useNow(true);
  const standing = standingOf(round.draft, { ...round, program });
  // What was very low is taken again at once: nothing asks for a wait then, nor for minutes lying.
  const isAtOnce = isAskedAtOnce(round.draft, standing.nextPressure, round);
  const wait = isAtOnce ? 0 : secondsToWait(pressure, now, inflation);
  const held = place.posture === 'stand' ? lowBeforeStanding(standing) : [];
  // Whoever stands already is measured: then the reading comes first again, beside the warning.
  const isHeld = held.length > 0 && (pressure.upright ?? null) === null;
  // Whoever was severe rests for longer than an arm does: then that is the one wait that is said.
  const restSeconds = isAtOnce ? 0 : (againSeconds(pressure, standing.nextPressure, now) ?? 0);
  const isResting = restSeconds > (wait ?? 0) && pressure.values.at(-1)?.place.side === place.side;
  const isWaiting = isResting || (wait !== null && wait > 0);
  const known = knownAt(pressure, place);
  const { mmHg, by } = inflateTo(known, inflation);
  const isIrregular = rhythmFelt(round.draft) === 'irregular' || round.facts.round.hasIrregularRhythm;
  const isPerBeat = isLetDownPerBeat(feltPulse(round.draft, round.inForce), isIrregular, deflation);
  const instant = (): Instant => ({ session, atMs: clock.monotonicMs() });
  const moment = { isAtOnce, now, at: clock.stamp() };
  const isPostureBefore = isPostureFirst(round.draft, place, moment);
  const said = waitSaid(round.draft, place, wait, moment);
  const begin = (method: Method, inflatedAt: Inflated | null) =>
    round.change((draft) => {
      const measuredAt = clock.stamp();
      const fields = postureField(draft.pressure, inflatedAt ?? instant(), measuredAt);
      return withPressureAt(draft, blankReading(method, { measuredAt, inflatedAt, fields }));
    });
  const pump = () => {
    const inflatedAt = { ...instant(), isAtOnce };
    if (hearing === 'remember') return begin('auscultation', inflatedAt);
    const measuredAt = clock.stamp();
    const marked = isOther ? { second: { touches: [], takenOverAtMs: null } } : {};
    round.change((draft) =>
      withPressureAt(draft, {
        at: 'listening',
        session,
        measuredAt,
        inflatedAt,
        touchesMs: [],
        ...marked,
        fields: postureField(draft.pressure, inflatedAt, measuredAt),
      }),
    );
  };
  return (
    <div className="measure">
      <PlaceLine round={round} place={place} />
      {held.length > 0 ? <StandingHeld round={round} why={held} isFirst={isHeld} /> : null}
      <PostureHere
        round={round}
        place={place}
        isHeld={isHeld}
        isAtOnce={isAtOnce}
        isDueLater={isPostureBefore && said === 'arm'}
      />
      <div className="pump">
        <p className="pump-to">
          {mmHg === null
            ? words.sentence('pressure.pumpUnknown')
            : words.sentence('pressure.pumpTo', { mmHg })}
        </p>
        <p className="soft small">
          {by === 'felt' && known.lostMmHg !== null
            ? words.sentence('pressure.pumpWhy', { lost: known.lostMmHg, margin: inflation.marginMmHg })
            : words.sentence(by === 'read' ? 'pressure.pumpWhyRead' : 'pressure.pumpUnknownWhy')}
        </p>
        {mmHg !== null &&
        place.site === 'upper-arm' &&
        isFeltOn({
          ...restsOn(pressure, place),
          isLowHere: isAtOnce,
          isUpright: place.posture === 'stand',
        }) ? (
          <p>{words.sentence('pressure.pumpFeelOn', { margin: inflation.marginMmHg })}</p>
        ) : null}
        <p className="measure-says">
          {isPerBeat
            ? words.sentence('pressure.letDownPerBeat', { mmHg: deflation.fastestPerBeatMmHg })
            : words.sentence('pressure.letDown', {
                slowest: deflation.slowestMmHgPerSecond,
                fastest: deflation.fastestMmHgPerSecond,
              })}
          {hearing === 'remember' ? ` ${words.sentence('pressure.rememberTwo')}` : null}
        </p>
      </div>
      {said === 'posture' ? null : (
        <WaitLine
          isOver={!isWaiting}
          text={
            isResting
              ? againText(restSeconds, round.inForce.roundRules.readings.gapSeconds, words)
              : wait === null
                ? words.sentence('pressure.waitUnknown')
                : isWaiting
                  ? words.sentence('pressure.wait', { seconds: wait ?? 0 })
                  : words.sentence('pressure.mayPump')
          }
        />
      )}
      <Choices
        legend={words.sentence('moments.way')}
        isLegendUnseen
        choices={[
          { id: 'remember', text: words.sentence('moments.remember') },
          { id: 'mark', text: words.sentence('moments.mark') },
          { id: 'second', text: words.sentence('second.way') },
        ]}
        chosen={hearing}
        onChoose={(chosen) =>
          store.change((state) => ({ ...state, kept: { ...state.kept, hearing: chosen } }))
        }
      />
      {hearing === 'second' ? <SecondCode second={second} anew={anew} /> : null}
      <div className="next-steps one-step pump-foot">
        <button
          type="button"
          className={`button button-large${isWaiting || isPostureBefore || isHeld || (hearing === 'second' && !isOther) ? '' : ' button-first'}`}
          onClick={pump}
        >
          {words.sentence('pressure.pumpNow')}
        </button>
      </div>
      <div className="buttons buttons-middle">
        <button type="button" className="button button-quiet" onClick={() => begin('auscultation', null)}>
          {words.sentence('pressure.alreadyTaken')}
        </button>
        <button
          type="button"
          className="button button-quiet"
          onClick={() => round.change((draft) => withPressureAt(draft, { at: 'feel', typed: '' }))}
        >
          {words.sentence('pressure.feelTitle')}
        </button>
        <button type="button" className="button button-quiet" onClick={() => begin('palpation', null)}>
          {words.sentence('pressure.feelOnly')}
        </button>
        <button type="button" className="button button-quiet" onClick={() => begin('device', null)}>
          {words.sentence('pressure.fromDisplay')}
        </button>
      </div>
      {isIrregular ? (
        <p className="small measure-says">{words.sentence('pressure.displayIrregular')}</p>
      ) : null}
    </div>
  );
}
