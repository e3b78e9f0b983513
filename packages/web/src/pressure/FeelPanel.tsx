import { DEFLATION_FIGURES, type Method } from '@evenfall/clinical';
import type { RunPlace } from '@evenfall/record';
import { useEffect, useRef, useState } from 'react';
import { useApp } from '../app/context.js';
import { keptText } from '../app/keptText.js';
import { typedText } from '../round/measuring.js';
import type { Round } from '../round/useRound.js';
import { postureField } from './lying.js';
import { PlaceLine } from './PlaceLine.js';
import { PostureHere } from './PostureHere.js';
import { PressureKeypad } from './PressureKeypad.js';
import { blankReading, withFelt, withPressureAt } from './pressureSteps.js';
import { rhythmFelt } from './runCircumstances.js';
import { isWhole } from './typedPressure.js';

type FeelProps = {
  readonly round: Round;
  readonly place: RunPlace;
  readonly typed: string;
  /** Begins a reading by feel alone, where more than the keypad goes with it. */
  readonly onFeelOnly?: () => void;
};

/** The lowest pressure at which a pulse can sensibly be lost, mmHg. Source: decision of this project. */
const LOWEST_LOST = 30;

/** The pulse is felt while the cuff goes up: where it is lost says how far to pump for listening. */
export function FeelPanel({ round, place, typed, onFeelOnly }: FeelProps) {
  const { words, clock, session } = useApp();
  const input = useRef<HTMLInputElement>(null);
  const [wrong, setWrong] = useState<string | null>(null);
  useEffect(() => input.current?.focus({ preventScroll: true }), []);
  const isIrregular = rhythmFelt(round.draft) === 'irregular' || round.facts.round.hasIrregularRhythm;
  const type = (text: string) => {
    setWrong(null);
    round.change((draft) => withPressureAt(draft, { at: 'feel', typed: text }));
  };
  const done = () => {
    const lostMmHg = /^\d+$/.test(typed) ? Number(typed) : Number.NaN;
    const high = DEFLATION_FIGURES.gaugeTopMmHg.value;
    if (typed === '') return setWrong(words.sentence('pressure.lostMissing'));
    if (!(lostMmHg >= LOWEST_LOST && lostMmHg <= high))
      return setWrong(words.sentence('pressure.lostWrong', { low: LOWEST_LOST, high }));
    const at = { session, atMs: clock.monotonicMs() };
    round.keep((draft, { sequence }) => withFelt(draft, { sequence, place, lostMmHg, at }));
  };
  const by = (method: Method) =>
    round.change((draft) => {
      const measuredAt = clock.stamp();
      const fields = postureField(draft.pressure, { session, atMs: clock.monotonicMs() }, measuredAt);
      return withPressureAt(draft, blankReading(method, { measuredAt, inflatedAt: null, fields }));
    });
  return (
    <form
      className="measure"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        done();
      }}
    >
      <PlaceLine round={round} place={place} />
      <PostureHere round={round} place={place} />
      <p className="measure-says">{words.sentence('pressure.feelSays')}</p>
      <div className="typed">
        <input
          ref={input}
          className="typed-number"
          aria-label={words.sentence('pressure.lost')}
          aria-invalid={wrong !== null}
          aria-describedby="felt-wrong"
          inputMode="none"
          autoComplete="off"
          value={typed}
          onChange={(event) => type(keptText(event.target, typedText))}
        />
        <span className="typed-window">{words.sentence('pressure.mmHg')}</span>
      </div>
      <p className="field-wrong" id="felt-wrong" role="alert" hidden={wrong === null}>
        {wrong}
      </p>
      <PressureKeypad
        hasStroke={false}
        isIn={isWhole(typed)}
        done={words.sentence('pressure.letGo')}
        onKey={(key) => type(typedText(typed + key))}
        onRubOut={() => type(typed.slice(0, -1))}
      />
      <div className="buttons buttons-middle">
        <button
          type="button"
          className="button button-quiet"
          onClick={() => round.change((draft) => withPressureAt(draft, { at: 'ready' }))}
        >
          {words.sentence('pressure.withoutFeeling')}
        </button>
        <button type="button" className="button button-quiet" onClick={onFeelOnly ?? (() => by('palpation'))}>
          {words.sentence('pressure.feelOnly')}
        </button>
        {onFeelOnly === undefined ? (
          <button type="button" className="button button-quiet" onClick={() => by('device')}>
            {words.sentence('pressure.fromDisplay')}
          </button>
        ) : null}
      </div>
      {isIrregular && onFeelOnly === undefined ? (
        <p className="small measure-says">{words.sentence('pressure.displayIrregular')}</p>
      ) : null}
    </form>
  );
}
