import {
  CUFF_SITES,
  type CuffRules,
  type CuffSite,
  carriedCuff,
  cuffChoice,
  cuffRulesFor,
  cuffScheme,
  DAY_OF_ROUND,
  type Flag,
  inUnit,
  NOT_DONE_REASONS,
  POSTURES,
  type Posture,
  PREPARATION,
  PREPARATION_OF_CUFF,
  type Preparation,
  parseCuffQuestion,
  placeCheck,
  placeFactsOf,
  postureChoice,
  SIDES,
  type Side,
} from '@evenfall/clinical';
import type { RunPlace } from '@evenfall/record';
import { type RefObject, useEffect, useRef, useState } from 'react';
import { useLocation } from 'wouter';
import { useBook } from '../app/book.js';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { asTyped, fieldIn, keptOf, unitNamed, unitOf } from '../app/typedMeasure.js';
import { withPoints } from '../app/withPoint.js';
import { GaugeChoice, useGaugeAtHand, useRememberGauge } from '../equipment/GaugeChoice.js';
import { Choices } from '../parts/Choices.js';
import { Field } from '../parts/Field.js';
import { Flags } from '../parts/Flags.js';
import { MeasureField } from '../parts/MeasureField.js';
import { NotDoneHere } from '../round/NotDoneHere.js';
import { nextHref } from '../round/nextHref.js';
import { isRestOpen, RestStart } from '../round/RestStart.js';
import { standingOf } from '../round/standing.js';
import { useBelow } from '../round/useBelow.js';
import type { Round } from '../round/useRound.js';
import { isArmCarried } from './armCarried.js';
import { suggestedPlace, withGauge, withPlace, withPressureNotDone } from './pressureSteps.js';

/** Arm, posture, site and cuff, held against the facts of the day. */
export function PlacePanel({ round, person }: { readonly round: Round; readonly person: string }) {
  const { words, program } = useApp();
  const [, go] = useLocation();
  const { draft, facts, inForce } = round;
  const { roundRules: rules } = inForce;
  const suggested = suggestedPlace(draft.pressure, facts.round, rules);
  const was = draft.pressure.place;
  const cuffRules = cuffRulesFor(rules.cuff, facts.ageMonths);
  const { manner } = words.say;
  const armField = fieldIn('armCm', 'armCm', manner);
  const form = useForm(`place ${draft.round}`, {
    side: suggested.side,
    posture: suggested.posture,
    site: suggested.site,
    [armField]: was?.armCm == null ? '' : String(inUnit(was.armCm, unitOf('armCm', manner))),
    cuff: carriedCuff(was?.cuff ?? null, cuffRules)?.id ?? '',
    by: was?.override?.by ?? '',
    why: was?.override?.reason ?? '',
  });
  const [isAsked, setAsked] = useState(false);
  const isCare = useBook().book === 'care';
  const { gauges, gauge } = useGaugeAtHand();
  const remember = useRememberGauge();
  const points = useRef<HTMLFieldSetElement>(null);
  const foot = useRef<HTMLDivElement>(null);
  const below = useBelow(points, foot, '.tick');

  const ahead =
    draft.pressure.notDone === null
      ? (standingOf(draft, { ...round, program }).nextPressure?.why ?? []).filter(
          ({ code }) => code === 'both-arms-ahead',
        )
      : [];
  const side = form.text('side') as Side;
  const site = form.text('site') as CuffSite;
  const placeFacts = placeFactsOf(facts.round);
  const chosen = postureChoice(form.text('posture') as Posture, placeFacts, DAY_OF_ROUND, rules.cuff);
  const override = { by: form.text('by').trim(), reason: form.text('why').trim() };
  const hasOverride = override.by !== '' && override.reason !== '';
  const check = placeCheck(
    { site, side },
    placeFacts,
    DAY_OF_ROUND,
    hasOverride ? override : null,
    rules.cuff,
  );
  const needsOverride =
    check.allowed === 'needs-reason' || (check.allowed === 'yes' && check.because.length > 0);
  const { scheme } = cuffRules;
  const typedArm = {
    text: withPoints(form.text(armField).trim(), words.say),
    chosen: unitNamed('armCm', form.text('armUnit')),
  };
  const atHand = form.text('cuff') === '' || site !== 'upper-arm' ? null : form.text('cuff');
  const question =
    typedArm.text === ''
      ? null
      : parseCuffQuestion({ armCm: keptOf(typedArm, 'armCm', manner), atHand }, cuffRules);
  const armWrong =
    question === null || question.ok
      ? null
      : question.refusals
          .map((one) => asTyped(one, typedArm, 'armCm', manner))
          .map((one) => words.problem(one, { nameOf: () => words.sentence('pressure.armMeasured') }).message)
          .join(' ');

  const submit = () => {
    setAsked(true);
    if (check.allowed !== 'yes' || armWrong !== null) return;
    const cuff = form.text('cuff');
    const place: RunPlace = {
      site,
      side,
      posture: chosen.posture,
      cuff: cuff === '' || site !== 'upper-arm' ? null : { scheme, id: cuff },
      armCm: question?.ok ? question.value.armCm : null,
      override: needsOverride && hasOverride ? override : null,
    };
    form.done();
    const read = isCare ? (gauge?.id ?? null) : null;
    round.change((before) => withPlace(withGauge(before, read), place, rules.plan.palpateFirst));
  };
  const notDoneHere = (
    <NotDoneHere
      key="not-done"
      round={round}
      person={person}
      notDone={draft.pressure.notDone}
      reasons={NOT_DONE_REASONS}
      withReason={withPressureNotDone}
      onGoOn={() => go(nextHref(person, standingOf(draft, { ...round, program }).next.step))}
    />
  );
  // In the same place below a fragment: it is the same part, which knows that it was asked just now.
  if (draft.pressure.notDone !== null) return <>{notDoneHere}</>;
  return (
    <>
      <form
        className="form measure"
        noValidate
        onSubmit={(event) => {
          event.preventDefault();
          submit();
        }}
      >
        <Flags flags={ahead} />
        <Choices
          legend={words.sentence('pressure.arm')}
          choices={SIDES.map((id) => ({ id, text: words.sentence(`pressure.${id}`) }))}
          chosen={side}
          onChoose={(id) => form.set('side', id)}
        />
        {check.because.length === 0 ? null : (
          <div className={check.allowed === 'never' ? 'notice notice-stop' : 'notice'} role="alert">
            <p>
              <strong>{check.because.map((kind) => words.title('armFact', kind)).join(', ')}</strong>
            </p>
            <p>{words.sentence(check.allowed === 'never' ? 'pressure.never' : 'pressure.better')}</p>
          </div>
        )}
        {needsOverride ? (
          <>
            <Field
              label={words.sentence('pressure.overrideBy')}
              wrong={isAsked && !hasOverride ? words.sentence('pressure.overrideMissing') : null}
            >
              {(control) => (
                <input
                  {...control}
                  type="text"
                  autoComplete="off"
                  maxLength={200}
                  value={form.text('by')}
                  onChange={(event) => form.set('by', event.target.value)}
                />
              )}
            </Field>
            <Field label={words.sentence('pressure.overrideWhy')}>
              {(control) => (
                <input
                  {...control}
                  type="text"
                  autoComplete="off"
                  maxLength={500}
                  value={form.text('why')}
                  onChange={(event) => form.set('why', event.target.value)}
                />
              )}
            </Field>
          </>
        ) : null}
        <Choices
          legend={words.sentence('pressure.posture')}
          choices={POSTURES.map((id) => ({ id, text: words.sentence(`pressure.${id}`) }))}
          chosen={chosen.posture}
          onChoose={(id) => form.set('posture', id)}
        />
        <Flags flags={chosen.why} />
        {draft.exceptions === null ? null : (
          <CuffReady round={round} exceptions={draft.exceptions} list={points} />
        )}
        {isCare ? <GaugeChoice gauges={gauges} chosen={gauge} onChoose={remember} /> : null}
        <CuffFields
          isCarried={isArmCarried(draft.pressure, side, question?.ok ? question.value.armCm : null)}
          rules={cuffRules}
          form={form}
          site={site}
          armWrong={armWrong}
          question={question}
        />
        {isRestOpen(round) && draft.exceptions !== null ? (
          <>
            <p className="small">{words.sentence('rest.notBegun')}</p>
            <RestStart round={round} isFirst={false} />
          </>
        ) : null}
        {check.allowed === 'never' ? null : (
          <div className="next-steps one-step" ref={foot}>
            {below === 0 ? null : (
              <p className="small soft ready-below">{words.sentence('prepare.below', { points: below })}</p>
            )}
            {site === 'upper-arm' && form.text('cuff') === '' ? (
              <button type="button" className="button button-quiet no-cuff" onClick={toCuff}>
                {words.sentence('pressure.noCuffNamed')}
              </button>
            ) : null}
            <button type="submit" className="button button-first button-large">
              {words.sentence('pressure.placed')}
            </button>
          </div>
        )}
      </form>
      {draft.pressure.values.length === 0 ? notDoneHere : null}
    </>
  );
}

type ReadyProps = {
  readonly round: Round;
  readonly exceptions: readonly Preparation[];
  readonly list: RefObject<HTMLFieldSetElement | null>;
};

/** What of making ready can only be looked at with the cuff; going on says that what is not ticked was as it should be. */
function CuffReady({ round, exceptions, list }: ReadyProps) {
  const { words } = useApp();
  const tick = (one: Preparation, isTicked: boolean) =>
    round.change((was) => ({
      ...was,
      exceptions: PREPARATION.filter((other) =>
        other === one ? isTicked : was.exceptions?.includes(other) === true,
      ),
    }));
  return (
    <fieldset className="ticks ticks-two" ref={list}>
      <legend>{words.sentence('prepare.ofCuff')}</legend>
      {PREPARATION_OF_CUFF.map((one) => (
        <label key={one} className="tick">
          <input
            type="checkbox"
            checked={exceptions.includes(one)}
            onChange={(event) => tick(one, event.target.checked)}
          />
          <span>{words.sentence(`prepare.${one}`)}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** The question which cuff was used comes into sight, and takes the keys. */
function toCuff(): void {
  const field = document.querySelector<HTMLElement>('[data-asks="cuff"]');
  field?.scrollIntoView({ block: 'center' });
  field?.focus({ preventScroll: true });
}

/** What speaks against the cuff at hand comes into sight, over the foot that stays. */
function CuffWarning({ flags }: { readonly flags: readonly Flag[] }) {
  const place = useRef<HTMLDivElement>(null);
  const codes = flags.map(({ code }) => code).join(' ');
  useEffect(() => {
    if (codes !== '') place.current?.scrollIntoView({ block: 'center' });
  }, [codes]);
  return (
    <div ref={place}>
      <Flags flags={flags} />
    </div>
  );
}

type CuffFieldsProps = {
  readonly rules: CuffRules;
  /** Whether the circumference is that of the other arm. */
  readonly isCarried: boolean;
  readonly form: ReturnType<typeof useForm>;
  readonly site: CuffSite;
  readonly armWrong: string | null;
  readonly question: ReturnType<typeof parseCuffQuestion> | null;
};

function CuffFields({ rules, isCarried, form, site, armWrong, question }: CuffFieldsProps) {
  const { words } = useApp();
  const { manner } = words.say;
  const armField = fieldIn('armCm', 'armCm', manner);
  const { scheme } = rules;
  const right = question?.ok ? cuffChoice(question.value) : null;
  const text =
    right === null
      ? null
      : right.cuff === null || right.bladderCm === null
        ? words.sentence('pressure.noCuffFor')
        : words.sentence('pressure.cuffFor', { cuff: words.title('cuff', right.cuff), ...right.bladderCm });
  return (
    <>
      <MeasureField
        of="armCm"
        labelIn={(unit) => words.sentence('pressure.armCm', { unit: words.sentence(`settings.${unit}`) })}
        hint={
          isCarried
            ? `${words.sentence('pressure.armCarried')} ${text ?? ''}`.trim()
            : (text ?? words.sentence('pressure.armHint'))
        }
        wrong={armWrong}
        text={form.text(armField)}
        onText={(typed) => form.set(armField, typed)}
        chosen={form.text('armUnit')}
        onChoose={(unit) => form.set('armUnit', unit)}
      />
      {site === 'upper-arm' ? (
        <Field label={words.sentence('pressure.cuff')}>
          {(control) => (
            <select
              {...control}
              data-asks="cuff"
              value={form.text('cuff')}
              onChange={(event) => form.set('cuff', event.target.value)}
            >
              <option value="">{words.sentence('pressure.cuffNotSaid')}</option>
              {cuffScheme(scheme).cuffs.map(({ id }) => (
                <option key={id} value={id}>
                  {words.title('cuff', id)}
                </option>
              ))}
            </select>
          )}
        </Field>
      ) : null}
      <CuffWarning flags={right?.flags ?? []} />
      <details className="more">
        <summary>
          {words.sentence('pressure.site')}: {words.sentence(`pressure.${site}`)}
        </summary>
        <Choices
          legend={words.sentence('pressure.site')}
          isListed
          choices={CUFF_SITES.map((id) => ({ id, text: words.sentence(`pressure.${id}`) }))}
          chosen={site}
          onChoose={(id) => form.set('site', id)}
        />
      </details>
    </>
  );
}
