import { type Flag, inflateTo } from '@evenfall/clinical';
import type { RunPlace } from '@evenfall/record';
import { useEffect, useRef, useState } from 'react';
import { useBook } from '../app/book.js';
import { useApp, useKept } from '../app/context.js';
import { keptText } from '../app/keptText.js';
import { useEquipment } from '../equipment/useEquipment.js';
import { useProblemInSight } from '../parts/useProblemInSight.js';
import { AsItWas } from '../round/AsItWas.js';
import { useComeBack } from '../round/useComeBack.js';
import { entriesIn, type Round } from '../round/useRound.js';
import { recordKey } from '../store/known.js';
import { askedAgain } from './askedAgain.js';
import { keepRun } from './keepRun.js';
import { isLainWrong, lainOf } from './lying.js';
import { PlaceLine } from './PlaceLine.js';
import { PostureMinutes } from './PostureMinutes.js';
import { PressureKeypad } from './PressureKeypad.js';
import {
  feltHere,
  knownAt,
  type PressureAt,
  RUN_FIELDS,
  type RunField,
  reopenedReading,
} from './pressureDraft.js';
import { displayAmong, typedAs, withPressureAt } from './pressureSteps.js';
import { pulseFor, toCome } from './pulseOfRuns.js';
import { ReadAgain } from './ReadAgain.js';
import { RunInput } from './RunInput.js';
import { aroundOf, type ReadRun, readRun } from './readRun.js';
import { pressureKey } from './setKey.js';
import { isWhole, otherWayRound, typedPressure } from './typedPressure.js';
import { uprightOf } from './upright.js';

type Typing = Extract<PressureAt, { at: 'typing' }>;
type NumbersProps = {
  readonly round: Round;
  readonly place: RunPlace;
  readonly measuring: Typing;
  /** No cuff is on the arm. */
  readonly isBare?: boolean;
};

const TITLES = {
  auscultation: 'pressure.typeTitle',
  palpation: 'pressure.typeFelt',
  device: 'pressure.typeDisplay',
} as const;

/** What was heard, felt or shown, typed on a keypad that starts blank. */
export function NumbersPanel({ round, place, measuring, isBare = false }: NumbersProps) {
  const { words, clock, session, program } = useApp();
  const { book } = useBook();
  const record = useKept(({ known }) => known.records[recordKey(book, round.draft.person)]?.value);
  const whole = useRef<HTMLFormElement>(null);
  const input = useRef<HTMLInputElement>(null);
  const [wrong, setWrong] = useState<ReadRun['wrong']>(null);
  const [again, setAgain] = useState<readonly Flag[]>([]);
  const [asks, setAsks] = useState(0);
  useProblemInSight(whole, asks);
  const [areMinutesAsked, setMinutesAsked] = useState(false);
  const { method, typed, fields, reopened } = measuring;
  const was = reopenedReading(round.draft.pressure);
  const { equipment } = useEquipment();
  const display = displayAmong(equipment?.gauges ?? [], round.draft.pressure.gauge ?? null);
  const comeBack = useComeBack(round, reopened);
  useEffect(() => input.current?.focus({ preventScroll: true }), []);
  const change = (more: Partial<Typing>) => {
    setWrong(null);
    setAgain([]);
    round.change((draft) => withPressureAt(draft, { ...measuring, ...more }));
  };
  const set = (field: RunField, text: string) => change({ fields: { ...fields, [field]: text } });
  const label = words.sentence(method === 'palpation' ? 'pressure.feltBack' : 'pressure.numbers');
  const wrongText = (field: RunField | 'typed'): string | null => {
    const refused = wrong?.[field];
    if (refused === undefined) return null;
    const part = refused.field === '/diastolic' ? words.sentence('pressure.diastolic') : label;
    const nameOf = () => (field === 'typed' ? part : words.sentence(`pressure.${field}`));
    return words.problem(refused, { nameOf }).message;
  };
  // Asked and never guessed: one touch turns them round, and nothing is kept with it.
  const swapped = wrong?.typed?.code === 'not-below-systolic' ? otherWayRound(typed) : null;
  const upright = uprightOf(fields.uprightMinutes, words.say);
  const areMinutesWrong =
    (place.posture === 'stand' && upright === null) || isLainWrong(place, fields.lyingMinutes, words.say);
  const done = (isRead = false) => {
    const felt = pulseFor(round.draft, was ?? toCome(place), round.inForce);
    const around = aroundOf(was, felt) ?? {
      pulsePerMinute: felt,
      lostMmHg: method === 'device' ? null : feltHere(round.draft.pressure, place),
    };
    const read = readRun(typedAs(measuring), around, round.inForce.runRules.deflation);
    setWrong(read.wrong);
    setMinutesAsked(true);
    if (read.run === null || areMinutesWrong) return;
    const { measuredAt } = measuring;
    const typedNow = { run: read.run, place, measuredAt, entry: was?.entry ?? null };
    const entries = record == null ? [] : entriesIn(record);
    const slips = isRead ? [] : askedAgain(typedNow, round.draft, entries, { ...round, program });
    setAgain(slips);
    if (slips.length > 0) return setAsks(asks + 1);
    keepRun(round, {
      run: read.run,
      place,
      measuredAt,
      ...(method === 'device' ? { gauge: display } : {}),
      inflatedAt: measuring.inflatedAt,
      keptAt: { session, atMs: clock.monotonicMs() },
      uprightMinutes: upright,
      lyingMinutes: lainOf(fields.lyingMinutes, words.say),
      typedAs: typedAs(measuring),
      note: fields.note,
      reopened,
    });
    comeBack();
  };
  // It stays when numbers are in: a line that goes would move the keys under the thumb.
  const isPumping = method === 'auscultation' && measuring.inflatedAt !== null;
  const target = isPumping
    ? inflateTo(knownAt(round.draft.pressure, place), round.inForce.runRules.inflation).mmHg
    : null;
  const asked = RUN_FIELDS.filter((field) => isAskedOf(field, method));
  return (
    <form
      ref={whole}
      className="measure"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        done();
      }}
    >
      <PlaceLine
        round={round}
        place={place}
        gauge={was === null && method === 'device' ? display : was?.gauge}
        isFixed={was !== null}
        isBare={isBare}
      />
      {/* What is wrong takes its place: the keys stand still, and who it is stays in sight above them. */}
      {wrongText('typed') === null ? <p className="measure-says">{words.sentence(TITLES[method])}</p> : null}
      {target === null ? null : (
        <p className="measure-says">
          <strong>{words.sentence('pressure.pumpTo', { mmHg: target })}</strong>
        </p>
      )}
      <div className="typed">
        <input
          ref={input}
          className={`typed-number typed-pressure${typed.includes(' ') ? ' typed-with-pulse' : ''}`}
          aria-label={label}
          aria-invalid={wrong?.typed !== undefined}
          aria-describedby="numbers-wrong numbers-hint"
          inputMode="none"
          autoComplete="off"
          value={typed}
          onChange={(event) => change({ typed: keptText(event.target, typedPressure) })}
        />
        <span className="typed-window">{words.sentence('pressure.mmHg')}</span>
      </div>
      <div id="numbers-wrong" role="alert" hidden={wrongText('typed') === null}>
        {swapped === null ? (
          <p className="field-wrong">{wrongText('typed')}</p>
        ) : (
          <button type="button" className="button other-way" onClick={() => change({ typed: swapped })}>
            {words.sentence('pressure.otherWayRound', { text: swapped })}
          </button>
        )}
      </div>
      {again.length === 0 ? null : (
        <ReadAgain
          title={words.sentence('pressure.readAgain')}
          why={again}
          numbers={method === 'palpation' ? `${typed}/P` : (typed.trim().split(/\s+/)[0] ?? '')}
          onRead={() => done(true)}
        />
      )}
      <PostureMinutes round={round} place={place} fields={fields} isAsked={areMinutesAsked} onChange={set} />
      <PressureKeypad
        hasStroke={method !== 'palpation'}
        done={words.sentence('pressure.keep')}
        isIn={/\/\d{2}|\/0/.test(typed) || (method === 'palpation' && isWhole(typed))}
        hasPulse={method !== 'palpation'}
        onKey={(key) => change({ typed: pressureKey(typed, key) })}
        onRubOut={() => change({ typed: typed.slice(0, -1) })}
      />
      {method === 'auscultation' ? (
        <p className="soft small measure-says" id="numbers-hint">
          {words.sentence('pressure.numbersHint')}
        </p>
      ) : null}
      {was === null ? null : (
        <AsItWas
          onLeave={() => {
            round.change((draft) => withPressureAt(draft, { at: 'shown', entry: was.entry }));
            comeBack();
          }}
        />
      )}
      <details className="more" open={asked.some((field) => wrong?.[field] !== undefined) || undefined}>
        <summary>{words.sentence('pressure.more')}</summary>
        <div className="form">
          {asked.map((field) => (
            <RunInput
              key={field}
              field={field}
              text={fields[field] ?? ''}
              wrong={wrongText(field)}
              onChange={(text) => set(field, text)}
            />
          ))}
          {method === 'device' ? null : (
            <label className="tick">
              <input
                type="checkbox"
                checked={measuring.reinflated}
                onChange={(event) => change({ reinflated: event.target.checked })}
              />
              <span>{words.sentence('pressure.reinflated')}</span>
            </label>
          )}
        </div>
      </details>
    </form>
  );
}

/** Which of the further fields belong to a way of taking it. */
function isAskedOf(field: RunField, method: Typing['method']): boolean {
  if (field === 'uprightMinutes' || field === 'lyingMinutes') return false;
  if (method === 'device') return field === 'note';
  if (method === 'palpation') return field === 'note' || field === 'peak' || field === 'firstAtSeconds';
  return true;
}
