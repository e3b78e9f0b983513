import { DEFLATION_FIGURES } from '@evenfall/clinical';
import type { RunPlace } from '@evenfall/record';
import { useCallback, useEffect, useId, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { AsItWas } from '../round/AsItWas.js';
import { typedText } from '../round/measuring.js';
import { useComeBack } from '../round/useComeBack.js';
import type { Round } from '../round/useRound.js';
import { clocksText } from '../second/clocksText.js';
import { Gauge } from './Gauge.js';
import { keepRun } from './keepRun.js';
import { isLainWrong, lainOf } from './lying.js';
import { MarkRow, WhatWasIt } from './MarkRow.js';
import {
  gaugeOf,
  isMoment,
  markedAs,
  markedByOf,
  nextToRead,
  type ReadingBack,
  type ReadMarks,
  readMarks,
  stepped,
  withMark,
  withWhat,
} from './marks.js';
import { markWrong } from './markWrong.js';
import { PlaceLine } from './PlaceLine.js';
import { PostureMinutes } from './PostureMinutes.js';
import { FELT_MARKS, feltHere, MARKS, type Mark, type RunField, reopenedReading } from './pressureDraft.js';
import { withPressureAt } from './pressureSteps.js';
import { pulseFor, toCome } from './pulseOfRuns.js';
import { RunInput } from './RunInput.js';
import { aroundOf } from './readRun.js';
import { uprightOf } from './upright.js';

type ReadBackProps = {
  readonly round: Round;
  readonly place: RunPlace;
  readonly measuring: ReadingBack;
  /** No cuff is on the arm. */
  readonly isBare?: boolean;
};

/** The gauge of each moment is read back: dragged, stepped or typed. Only then is the letting down judged. */
export function ReadBackPanel({ round, place, measuring, isBare = false }: ReadBackProps) {
  const { words, clock, session } = useApp();
  const stage = useRef<HTMLFormElement>(null);
  const name = useId();
  const [wrong, setWrong] = useState<ReadMarks['wrong']>(null);
  const [areMinutesAsked, setMinutesAsked] = useState(false);
  const { marks, chosen, fields, areTimesVoid, reopened } = measuring;
  const was = reopenedReading(round.draft.pressure);
  const comeBack = useComeBack(round, reopened);
  const scale = {
    stepMmHg: round.inForce.runRules.deflation.gaugeStepMmHg,
    topMmHg: DEFLATION_FIGURES.gaugeTopMmHg.value,
  };
  // Before any key, the keys go to the gauge.
  const toGauge = useCallback(
    () => stage.current?.querySelector<HTMLElement>('.gauge')?.focus({ preventScroll: true }),
    [],
  );
  useEffect(() => toGauge(), [toGauge]);

  const choose = (at: number) => withReadingBack(round, (was) => ({ ...was, chosen: at }));
  const change = (next: (was: ReadingBack) => ReadingBack) => {
    setWrong(null);
    withReadingBack(round, next);
  };
  const mark = (at: number, changed: Partial<Mark>) => change((was) => withMark(was, at, changed));
  const set = (field: RunField, text: string) =>
    change((was) => ({ ...was, fields: { ...was.fields, [field]: text } }));
  const next = nextToRead(measuring);
  const upright = uprightOf(fields.uprightMinutes, words.say);
  const areMinutesWrong =
    (place.posture === 'stand' && upright === null) || isLainWrong(place, fields.lyingMinutes, words.say);

  const keep = () => {
    const felt = pulseFor(round.draft, was ?? toCome(place), round.inForce);
    const around = aroundOf(was, felt) ?? {
      pulsePerMinute: felt,
      lostMmHg: feltHere(round.draft.pressure, place),
    };
    const read = readMarks(measuring, around, round.inForce.runRules.deflation);
    setWrong(read.wrong);
    setMinutesAsked(true);
    if (read.run === null || areMinutesWrong) return;
    keepRun(round, {
      run: read.run,
      place,
      measuredAt: measuring.measuredAt,
      inflatedAt: measuring.inflatedAt,
      keptAt: { session, atMs: clock.monotonicMs() },
      uprightMinutes: upright,
      lyingMinutes: lainOf(fields.lyingMinutes, words.say),
      markedBy: markedByOf(measuring, read.run),
      typedAs: markedAs(measuring),
      note: fields.note,
      reopened,
    });
    comeBack();
  };
  const goOn = () => {
    if (next === null || gaugeOf(marks[chosen]) === null) return keep();
    choose(next);
    toGauge();
  };
  const now = marks[chosen];
  const isRead = gaugeOf(now) !== null;
  const isNext = next !== null && isRead;
  const label = now === undefined ? '' : words.title('mark', now.what);
  const wrongTexts = wrong === null ? null : markWrong(marks, wrong, words);
  return (
    <form
      ref={stage}
      className="measure read-back"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        goOn();
      }}
    >
      {areTimesVoid ? (
        <p className="notice" role="status">
          {words.sentence('moments.void')}
        </p>
      ) : null}
      <Gauge
        label={words.sentence('moments.onGauge', { text: label })}
        mmHg={gaugeOf(now)}
        {...scale}
        others={marks.flatMap((other, at) => {
          const mmHg = gaugeOf(other);
          return at === chosen || other.what === 'slip' || mmHg === null ? [] : [{ what: other.what, mmHg }];
        })}
        onRead={(mmHg) => mark(chosen, { typed: String(mmHg) })}
        onStep={(steps) => mark(chosen, { typed: String(stepped(measuring, steps, scale)) })}
        onKey={(key) => {
          const typed = now?.typed ?? '';
          mark(chosen, { typed: key === 'Backspace' ? typed.slice(0, -1) : typedText(typed + key) });
        }}
      />
      <Steps
        text={label}
        onStep={(steps) => mark(chosen, { typed: String(stepped(measuring, steps, scale)) })}
        shown={gaugeOf(now)}
      />
      <fieldset className="marks">
        <legend className="unseen">{words.sentence('moments.which')}</legend>
        {marks.map((one, at) => (
          <MarkRow
            // biome-ignore lint/suspicious/noArrayIndexKey: a mark is its place in the run
            key={at}
            name={name}
            mark={one}
            isChosen={at === chosen}
            isTimed={!areTimesVoid}
            mayStayEmpty={!isMoment(one.what, measuring.method)}
            isWrong={wrong?.has(at) === true}
            wrong={wrongTexts?.get(at) ?? null}
            onChoose={() => choose(at)}
            onType={(typed) => mark(at, { typed })}
            onStep={(steps) => mark(at, { typed: String(stepped({ marks, chosen: at }, steps, scale)) })}
          />
        ))}
      </fieldset>
      <p className="field-wrong" role="alert" hidden={wrong?.get('run') === undefined}>
        {wrongTexts?.get('run')}
      </p>
      <PostureMinutes round={round} place={place} fields={fields} isAsked={areMinutesAsked} onChange={set} />
      <button type="submit" className={isRead ? 'button button-first button-large' : 'button button-large'}>
        {isNext
          ? words.sentence('moments.next', { text: words.title('mark', marks[next]?.what ?? 'last sound') })
          : words.sentence('pressure.keep')}
      </button>
      {was === null ? null : (
        <AsItWas
          onLeave={() => {
            round.change((draft) => withPressureAt(draft, { at: 'shown', entry: was.entry }));
            comeBack();
          }}
        />
      )}
      <details className="more">
        <summary>{words.sentence('moments.notThese')}</summary>
        <div className="form">
          {marks.map(({ what, atSeconds, isTouch }, at) =>
            atSeconds === null || isTouch === false ? null : (
              <WhatWasIt
                // biome-ignore lint/suspicious/noArrayIndexKey: a mark is its place in the run
                key={at}
                what={what}
                choices={measuring.method === 'palpation' ? FELT_MARKS : MARKS}
                atSeconds={atSeconds}
                onChange={(changed) => change((was) => withWhat(was, at, changed))}
              />
            ),
          )}
          <label className="tick">
            <input
              type="checkbox"
              checked={measuring.reinflated}
              onChange={(event) => change((was) => ({ ...was, reinflated: event.target.checked }))}
            />
            <span>{words.sentence('pressure.reinflated')}</span>
          </label>
          <RunInput
            field="note"
            text={fields.note ?? ''}
            wrong={null}
            onChange={(text) => set('note', text)}
          />
        </div>
      </details>
      <ClocksLine clocksWithinMs={measuring.clocksWithinMs} />
      <PlaceLine round={round} place={place} gauge={was?.gauge} isFixed={was !== null} isBare={isBare} />
    </form>
  );
}

/** That a second person marked, and how far the two devices' clocks agree. */
function ClocksLine({ clocksWithinMs }: { readonly clocksWithinMs: number | undefined }) {
  const { words } = useApp();
  if (clocksWithinMs === undefined) return null;
  return (
    <p className="soft small measure-says">
      {words.sentence('second.markedBy')}: {words.sentence('second.bySecond')}{' '}
      {clocksText(clocksWithinMs, words)}
    </p>
  );
}

function withReadingBack({ change }: Round, next: (was: ReadingBack) => ReadingBack): void {
  change((draft) => {
    const now = draft.pressure.measuring;
    return now.at === 'reading' ? withPressureAt(draft, next(now)) : draft;
  });
}

type StepsProps = {
  readonly text: string;
  readonly shown: number | null;
  readonly onStep: (steps: number) => void;
};

/** The number that the needle shows, large, with a step to either side for a thumb. */
function Steps({ text, shown, onStep }: StepsProps) {
  const { words } = useApp();
  return (
    <div className="gauge-steps">
      <button
        type="button"
        className="button gauge-step"
        aria-label={words.sentence('moments.lower')}
        onClick={() => onStep(-1)}
      >
        −
      </button>
      <p className="gauge-shown">
        <span className="small soft">{text}</span>
        <span className="rate-number">{shown === null ? '–' : words.say.short(shown)}</span>
      </p>
      <button
        type="button"
        className="button gauge-step"
        aria-label={words.sentence('moments.higher')}
        onClick={() => onStep(1)}
      >
        +
      </button>
    </div>
  );
}
