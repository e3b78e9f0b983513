import {
  alertsBeside,
  EMERGENCY_FEATURES,
  type EmergencyFeature,
  type Flag,
  isLowCondition,
  type RepeatAtOnce,
} from '@evenfall/clinical';
import { askedText } from '@evenfall/words';
import { useId } from 'react';
import { useBook } from '../app/book.js';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { Flags } from '../parts/Flags.js';
import { IncidentalNote } from '../parts/IncidentalNote.js';
import type { RoundStanding } from './standing.js';
import type { Round } from './useRound.js';

type StandingProps = { readonly standing: RoundStanding };

type ActNowProps = StandingProps & {
  /** What the reading on the page asks for besides, at once: it stands in the same box, after what is said of a low pressure. */
  readonly also?: readonly Flag[];
  /** The repeat of a low pressure that is in the round already; absent or null for none. */
  readonly repeat?: RepeatAtOnce | null;
};

/** What somebody must act on now. It stays until it is signed, and then until it is closed in the chart. */
export function ActNowPanel({ standing, also = [], repeat = null }: ActNowProps) {
  const { words } = useApp();
  const isClass = useBook().book === 'class';
  const alerts = alertsBeside(standing.content.value?.actNow ?? [], repeat);
  const isUnwellSaid = alerts.some(({ condition }) => condition === 'unwell-upright');
  if (alerts.length === 0)
    return also.length === 0 ? null : (
      <div className="act-now" role="alert">
        {also.map((flag) => (
          <p key={flag.code}>{words.detail(flag)}</p>
        ))}
      </div>
    );
  const item = ({ condition, figures, confirmLocally }: (typeof alerts)[number]) => (
    <li key={condition}>
      {words.detail({ code: condition, figures })}
      {confirmLocally ? <span className="small"> {words.sentence('cautions.confirmLocally')}</span> : null}
    </li>
  );
  return (
    <section className="act-now" role="alert" aria-label={words.sentence('result.actNow')}>
      <h2>{words.sentence('result.actNow')}</h2>
      <ul className="flags">
        {alerts.filter(isOfLow).map(item)}
        {(isUnwellSaid ? also.filter(({ code }) => code !== 'symptoms-on-standing') : also).map((flag) => (
          <li key={flag.code}>{words.detail(flag)}</li>
        ))}
        {alerts.filter((alert) => !isOfLow(alert)).map(item)}
      </ul>
      <IncidentalNote />
      <p className="small">{words.sentence(isClass ? 'class.actNowSays' : 'result.actNowSays')}</p>
    </section>
  );
}

function isOfLow({ condition }: { readonly condition: string }): boolean {
  return isLowCondition(condition);
}

type AskProps = StandingProps & { readonly round: Round };

/** What stands in the field of a feature that is ticked and not kept yet. */
const TICKED = 'yes';

/** The name of the form of the features that are being ticked, in the store. */
function featuresForm(round: string): string {
  return `features ${round}`;
}

/** A severe pressure asks for the emergency features, once; what was answered can be asked again. */
export function AskPanel({ round, standing }: AskProps) {
  const { words } = useApp();
  // Kept on the device, so that a tick outlives the page it was made on.
  const form = useForm(featuresForm(round.draft.round));
  const ticked = EMERGENCY_FEATURES.filter((one) => form.text(one) !== '');
  const ask = standing.content.value?.ask;
  // A learner is asked for nothing about their body that the alert does not need: what is found is told in private.
  const isClass = useBook().book === 'class';
  const { features } = round.draft;
  const isAsked = (ask?.features.length ?? 0) > 0;
  const tick = (feature: EmergencyFeature, isTicked: boolean) => {
    // From now on the round is one that something was said in, so that its ticks find it again.
    round.change((draft) => draft);
    form.set(feature, isTicked ? TICKED : '');
  };
  const answer = (features: readonly EmergencyFeature[]) => {
    round.change((draft) => ({ ...draft, features }));
    form.done();
  };
  return (
    <>
      {isAsked ? (
        <section className="act-now" role="alert" aria-label={words.sentence('result.ask')}>
          <h2>{words.sentence('result.ask')}</h2>
          <Flags flags={ask?.why ?? []} />
          <p>{words.sentence('result.askSays')}</p>
          {EMERGENCY_FEATURES.map((feature) => (
            <label key={feature} className="tick">
              <input
                type="checkbox"
                checked={ticked.includes(feature)}
                onChange={(event) => tick(feature, event.target.checked)}
              />
              <span>{words.title('feature', feature)}</span>
            </label>
          ))}
          <div className="buttons">
            {ticked.length === 0 ? (
              <button type="button" className="button" onClick={() => answer([])}>
                {words.sentence('result.noneOfThese')}
              </button>
            ) : (
              <button type="button" className="button button-first" onClick={() => answer(ticked)}>
                {words.sentence('result.someOfThese')}
              </button>
            )}
          </div>
        </section>
      ) : null}
      {features === null ? null : (
        <p className="small">
          {askedText(features, words)}{' '}
          <button
            type="button"
            className="button button-quiet"
            onClick={() => round.change((draft) => ({ ...draft, features: null }))}
          >
            {words.sentence('result.askAgain')}
          </button>
        </p>
      )}
      {round.draft.isPregnant === true ? (
        <p className="small">{words.sentence('result.saidPregnant')}</p>
      ) : null}
      {ask?.pregnancy === true && !isClass ? <AskPregnancy round={round} /> : null}
    </>
  );
}

/** Pregnancy changes what a severe pressure is, so it is asked for where it could be. */
function AskPregnancy({ round }: { readonly round: Round }) {
  const { words } = useApp();
  const say = (isPregnant: boolean) => round.change((draft) => ({ ...draft, isPregnant }));
  const question = useId();
  return (
    // biome-ignore lint/a11y/useSemanticElements: a fieldset would be drawn as one; this is a question with two buttons
    <div className="notice" role="group" aria-labelledby={question}>
      <p id={question}>{words.sentence('result.askPregnancy')}</p>
      <div className="buttons">
        <button type="button" className="button" onClick={() => say(false)}>
          {words.sentence('result.notPregnant')}
        </button>
        <button type="button" className="button" onClick={() => say(true)}>
          {words.sentence('result.isPregnant')}
        </button>
      </div>
    </div>
  );
}
