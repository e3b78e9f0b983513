import { REST_SKIPPED_REASONS, type RestSkippedReason } from '@evenfall/clinical';
import { useState } from 'react';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { Field } from '../parts/Field.js';
import { PlaceLine } from '../pressure/PlaceLine.js';
import { isVoidValue } from './draft.js';
import { SIGNS_IN_ORDER } from './measuring.js';
import { leftText, RestFace } from './RestLine.js';
import { begunRest, type RestDraft, skippedRest } from './restDraft.js';
import { fromPressure } from './useCameFrom.js';
import type { Round } from './useRound.js';

type RestPanelProps = { readonly round: Round; readonly rest: RestDraft; readonly seconds: number };

/** The cuff is on and the person still rests: what can be done meanwhile, and the way past it with a reason. */
export function RestPanel({ round, rest, seconds }: RestPanelProps) {
  const { words, clock, session } = useApp();
  const { draft } = round;
  const [isSkipping, setSkipping] = useState(false);
  const [text, setText] = useState('');
  const [isTextMissing, setTextMissing] = useState(false);
  const now = () => ({ session, atMs: clock.monotonicMs() });
  const skip = (reason: RestSkippedReason) => {
    const said = text.trim();
    if (reason === 'other' && said === '') return setTextMissing(true);
    round.change((was) =>
      was.rest === null
        ? was
        : { ...was, rest: skippedRest(was.rest, now(), { reason, text: said === '' ? null : said }) },
    );
  };
  const open = SIGNS_IN_ORDER.filter(
    (sign) => draft[sign].notDone === null && draft[sign].values.every(isVoidValue),
  );
  return (
    <div className="measure rest-panel">
      {draft.pressure.place === null ? null : <PlaceLine round={round} place={draft.pressure.place} />}
      <p className="measure-says">{words.sentence('rest.says')}</p>
      <RestFace seconds={seconds} neededSeconds={rest.neededSeconds} />
      <p className="pump-to rest-left" role="status">
        {leftText(rest.neededSeconds - seconds, words)}
      </p>
      <nav className="rest-meanwhile" aria-label={words.sentence('rest.meanwhile')}>
        {open.map((sign) => (
          <Link
            key={sign}
            href={fromPressure(`/people/${draft.person}/round/${sign}`)}
            className="button button-large"
          >
            {signText(sign, words)}
          </Link>
        ))}
        <div className="buttons buttons-middle">
          <Link href={fromPressure(`/people/${draft.person}/round/signs`)} className="button button-quiet">
            {words.sentence('signs.title')}
          </Link>
          <Link href={fromPressure(`/people/${draft.person}/round/prepare`)} className="button button-quiet">
            {words.sentence('prepare.title')}
          </Link>
        </div>
      </nav>
      <div className="buttons buttons-middle">
        <button
          type="button"
          className="button button-quiet"
          onClick={() => round.change((was) => ({ ...was, rest: begunRest(rest.neededSeconds, now()) }))}
        >
          {words.sentence('rest.again')}
        </button>
        <button
          type="button"
          className="button button-quiet"
          aria-expanded={isSkipping}
          onClick={() => setSkipping(!isSkipping)}
        >
          {words.sentence('rest.skip')}
        </button>
      </div>
      {isSkipping ? (
        <fieldset className="rest-why">
          <legend>{words.sentence('rest.why')}</legend>
          {REST_SKIPPED_REASONS.map((reason) =>
            reason === 'other' ? null : (
              <button key={reason} type="button" className="button" onClick={() => skip(reason)}>
                {words.sentence(`rest.${reason}`)}
              </button>
            ),
          )}
          <Field
            label={words.sentence('rest.other')}
            wrong={isTextMissing && text.trim() === '' ? words.sentence('review.textMissing') : null}
          >
            {(control) => (
              <input
                {...control}
                type="text"
                autoComplete="off"
                maxLength={500}
                value={text}
                onChange={(event) => setText(event.target.value)}
              />
            )}
          </Field>
          <button type="button" className="button" onClick={() => skip('other')}>
            {words.sentence('rest.skipNow')}
          </button>
        </fieldset>
      ) : null}
    </div>
  );
}
