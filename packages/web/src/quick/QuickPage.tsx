import type { PersonRecord } from '@evenfall/api';
import { carriedCuff, cuffRulesFor } from '@evenfall/clinical';
import { useEffect, useRef, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useApp } from '../app/context.js';
import { useForm } from '../app/forms.js';
import { useGaugeAtHand } from '../equipment/GaugeChoice.js';
import { FactsLines } from '../facts/FactsLines.js';
import { Asking } from '../parts/Asking.js';
import { Choices } from '../parts/Choices.js';
import { Flags } from '../parts/Flags.js';
import { IdentityOf, nameIn } from '../parts/Identity.js';
import { Page } from '../parts/Page.js';
import { useProblemInSight } from '../parts/useProblemInSight.js';
import { localDate } from '../ports/stampAt.js';
import { askedAgain } from '../pressure/askedAgain.js';
import { isCuffKnown } from '../pressure/cuffOfReading.js';
import { ReadAgain } from '../pressure/ReadAgain.js';
import { setKey } from '../pressure/setKey.js';
import { otherWayRound } from '../pressure/typedPressure.js';
import { runContentOf } from '../round/entries.js';
import { OthersRound } from '../round/OthersRound.js';
import { ActNowPanel, AskPanel } from '../round/ResultPanels.js';
import { beginRound } from '../round/rounds.js';
import { SignAs, useSigner } from '../round/SignAs.js';
import { sign } from '../round/sign.js';
import { standingOf } from '../round/standing.js';
import { entriesIn, useInForce, useRecord } from '../round/useRound.js';
import { isOfAnother, takenBy } from '../round/whose.js';
import { useMeasuring } from '../signIn/useAccess.js';
import { carriedPlace } from './carriedPlace.js';
import { partText } from './partText.js';
import { armOf, type Placed, placeOn } from './placeOn.js';
import { QuickKeypad } from './QuickKeypad.js';
import { QuickPlace } from './QuickPlace.js';
import { isAskedForRhythm, notInWindow, setWindowSeconds } from './setWindow.js';
import { readTypedSet, type SetMethod } from './typedSet.js';
import { type QuickRound, useQuickRound } from './useQuickRound.js';
import { useSettled } from './useSettled.js';
import { withSlash } from './withSlash.js';
import { SET_NUMBERS, withTypedSet } from './withTypedSet.js';

/** From the list to a signed set in three touches: the person, the numbers, the signature. */
export function QuickPage({ person }: { readonly person: string }) {
  const { words } = useApp();
  const { asked, again } = useRecord(person);
  const rules = useInForce();
  const round = useQuickRound(person);
  const agent = useMeasuring();
  const title = words.sentence('quick.title');
  return (
    <Page
      isCoverable
      isWide
      title={title}
      heading={
        <span className="measure-heading">
          <span>{nameIn(asked.value)}</span>
          <span className="measure-sign">{title}</span>
        </span>
      }
      under={<IdentityOf record={asked.value} />}
      back={{ href: '/', text: words.sentence('people.title') }}
      isBare
    >
      <Asking asked={asked} again={again} away="line" missing={words.sentence('app.noSuchPerson')}>
        {(record) => (
          <Asking asked={rules.asked} again={rules.again} away="not">
            {() =>
              record.identity === null ? (
                <p className="notice">{words.sentence('person.erasedNoRound')}</p>
              ) : round === null ? null : isOfAnother(round.draft, agent) ? (
                <OthersRound draft={round.draft} />
              ) : (
                <div className="round-step">
                  <QuickSet person={person} round={round} record={record} />
                </div>
              )
            }
          </Asking>
        )}
      </Asking>
    </Page>
  );
}

type SetProps = { readonly person: string; readonly round: QuickRound; readonly record: PersonRecord };

/** Half a number that was typed is not judged; ms, a choice of how it feels. */
const SETTLES_AFTER_MS = 700;

function QuickSet({ person, round, record }: SetProps) {
  const app = useApp();
  const { words, clock, ids, session, store, program } = app;
  const [, go] = useLocation();
  const { draft, facts, inForce } = round;
  const { countRules, roundRules } = inForce;
  const entries = entriesIn(record);
  const carried = carriedPlace(entries);
  const cuffRules = cuffRulesFor(roundRules.cuff, facts.ageMonths);
  const cuffBefore = draft.pressure.place?.cuff ?? carried?.place.cuff ?? null;
  const cuffKept = carriedCuff(cuffBefore, cuffRules);
  const form = useForm(`quick ${person}`, {
    method: 'auscultation',
    side: draft.pressure.place?.side ?? carried?.place.side ?? '',
    posture: draft.pressure.place?.posture ?? carried?.place.posture ?? 'sit',
    cuff: cuffKept?.id ?? '',
  });
  // How somebody counts is a habit of theirs and holds for the next person too.
  const habit = useForm('quick habit', { windowSeconds: String(countRules.pulseWindowSeconds) });
  const signer = useSigner(draft);
  const gauge = useGaugeAtHand().gauge?.id ?? null;
  const [made, setMade] = useState(() => ({ run: ids(), pulse: ids() }));
  const [isAsked, setAsked] = useState(false);
  const [refused, setRefused] = useState(0);
  /** Whether another page of this device changed the round meanwhile. */
  const [isChanged, setChanged] = useState(false);
  const whole = useRef<HTMLFormElement>(null);
  useProblemInSight(whole, refused);
  const field = useRef<HTMLInputElement>(null);
  const text = form.text('text');
  const [settled, settle] = useSettled(text, SETTLES_AFTER_MS);
  // Where there is a mouse there is a keyboard: what it types goes to the field, once the page has begun at its top.
  useEffect(() => {
    if (!window.matchMedia('(hover: hover) and (pointer: fine)').matches) return;
    const frame = window.requestAnimationFrame(() => field.current?.focus({ preventScroll: true }));
    return () => window.cancelAnimationFrame(frame);
  }, []);

  const { clock: startsOn, first } = store.get().kept.start ?? countRules;
  const { hasIrregularRhythm } = facts.round;
  const isRhythmAsked = isAskedForRhythm(hasIrregularRhythm, countRules);
  const windowSeconds = setWindowSeconds(
    form.text('windowSeconds'),
    habit.text('windowSeconds'),
    hasIrregularRhythm,
    countRules,
  );
  // As long as nobody said, a rate is read as of a full minute, which any may be, and nothing is made of it.
  const counted = { windowSeconds: windowSeconds ?? countRules.fullWindowSeconds, clock: startsOn, first };
  const { set: read, wrong } = readTypedSet(
    text,
    { method: form.text('method') as SetMethod, counted },
    inForce,
  );
  const isWindowUnsaid = windowSeconds === null && read?.pulse != null;
  const set = read !== null && isWindowUnsaid ? { ...read, pulse: null } : read;
  const arm = armOf(form, set);
  const place = arm === null ? null : placeOn(arm, form, set, round);
  const isCuffWrong = place !== null && !isCuffKnown(place.place);
  const isPlaced = place !== null && place.allowed === 'yes' && !isCuffWrong;

  const begun = form.text('at') === '' ? clock.stamp() : JSON.parse(form.text('at'));
  const start = {
    ...made,
    sequence: store.get().kept.sequence,
    measuredAt: begun,
    keptAt: { session, atMs: clock.monotonicMs() },
    rhythmFelt: isRhythmAsked ? rhythmOf(form.text('rhythm')) : null,
    isWindowSaid: form.text('windowSeconds') !== '',
  };
  const roundAt = ({ place: at }: Placed) =>
    set === null ? null : withTypedSet(draft, set, at, gauge, start);
  const next = place === null ? null : roundAt(place);
  const standing = next === null ? null : standingOf(next, { facts, inForce, program });
  // What must be done now does not wait for an arm to be said: on either it is the same.
  const told = next ?? roundAt(placeOn('left', form, set, round));
  const telling = standing ?? (told === null ? null : standingOf(told, { facts, inForce, program }));
  const reading = next?.pressure.values.at(-1);
  const flags =
    next === null || reading === undefined
      ? []
      : runContentOf(next, reading, { facts, inForce, program }).value.flags;
  const isSettled = settled === text && text !== '';
  // A slip is one on whichever arm: it is asked about before the arm is said.
  const where = place?.place ?? placeOn('left', form, set, round).place;
  const again =
    set === null
      ? []
      : askedAgain({ run: set.run, place: where, measuredAt: begun, entry: null }, draft, entries, {
          facts,
          inForce,
          program,
        });
  // What was said of other numbers does not hold for these.
  const isUnread = again.length > 0 && form.text('read') !== set?.numbers;
  const isOpen = isUnread || isWindowUnsaid || (standing !== null && standing.unasked.length > 0);

  const type = (typed: string) => {
    setAsked(false);
    // What is rubbed out whole was read at no time; the next begins when it is begun.
    if (typed === '') for (const one of ['at', 'read']) form.set(one, '');
    else if (form.text('at') === '') form.set('at', JSON.stringify(clock.stamp()));
    form.set('text', typed);
  };
  /** Keeps what is typed in the round on this device; null where something is missing. */
  const keep = () => {
    setAsked(true);
    setRefused((times) => times + 1);
    settle(text);
    if (next === null || !isPlaced || isUnread || isWindowUnsaid) return null;
    const taken = takenBy(next, signer.agent);
    const shown = store.get().kept.drafts[person];
    let isKept = false;
    store.change((state) => {
      // Another page of this device went on with the round, or signed it: that is not written over.
      if (state.kept.drafts[person] !== shown) return state;
      isKept = true;
      return {
        ...state,
        kept: {
          ...state.kept,
          sequence: state.kept.sequence + SET_NUMBERS,
          drafts: { ...state.kept.drafts, [person]: taken },
        },
      };
    });
    setChanged(!isKept);
    return isKept ? taken : null;
  };
  const another = () => {
    if (keep() === null) return;
    form.set('text', '');
    form.set('at', '');
    form.set('read', '');
    form.set('windowSeconds', '');
    form.set('rhythm', '');
    setMade({ run: ids(), pulse: ids() });
    setAsked(false);
    field.current?.focus();
  };
  const submit = () => {
    const { agent } = signer;
    setAsked(true);
    setRefused((times) => times + 1);
    settle(text);
    if (agent === null || standing === null || isOpen) return;
    const kept = keep();
    if (kept === null) return;
    if (!sign(app, { draft: kept, facts, inForce }, { ...signer, agent })) {
      setChanged(true);
      return;
    }
    form.done();
    go(`/people/${person}`, { replace: true });
  };
  // Asked and never guessed.
  const swapped = wrong?.code === 'not-below-systolic' ? otherWayRound(text) : null;
  const slashed = withSlash(text);
  const unreached = notInWindow(wrong);
  const says =
    slashed !== null
      ? words.sentence('quick.noSlash')
      : unreached !== null
        ? words.sentence('quick.notInWindow', unreached)
        : wrong === null
          ? null
          : words.problem(wrong, { nameOf: (field) => partText(field, words) }).message;
  const isWindowAsked = isRhythmAsked
    ? read?.pulse != null || unreached !== null
    : unreached !== null && (isAsked || isSettled);
  return (
    <form
      ref={whole}
      className="measure quick"
      noValidate
      onSubmit={(event) => {
        event.preventDefault();
        submit();
      }}
    >
      <FactsLines entries={entries} day={localDate(draft.begunAt)} />
      <label className="quick-field">
        <span className="unseen">{words.sentence('quick.field')}</span>
        <input
          ref={field}
          className="typed-number typed-set"
          type="text"
          inputMode="none"
          autoComplete="off"
          maxLength={40}
          value={text}
          placeholder="–"
          aria-invalid={isAsked && wrong !== null}
          aria-describedby="quick-says"
          onChange={({ target }) => type(target.value)}
        />
      </label>
      <p id="quick-says" className={isAsked && says !== null ? 'field-wrong' : 'soft small quick-says'}>
        {isAsked && says !== null ? says : set?.pulse == null ? words.sentence('quick.field') : pulseText()}
      </p>
      {slashed === null || !(isAsked || isSettled) ? null : (
        <button type="button" className="button other-way" onClick={() => type(slashed)}>
          {words.sentence('quick.meantSlash', { text: slashed })}
        </button>
      )}
      {swapped === null || !(isAsked || isSettled) ? null : (
        <button type="button" className="button other-way" onClick={() => type(swapped)}>
          {words.sentence('pressure.otherWayRound', { text: swapped })}
        </button>
      )}
      {isWindowAsked ? (
        <Choices
          legend={words.sentence('quick.countedFor')}
          choices={countRules.pulseWindowsSeconds.map((seconds) => ({
            id: String(seconds),
            text: words.sentence('quick.seconds', { seconds }),
          }))}
          chosen={windowSeconds === null ? null : String(windowSeconds)}
          onChoose={(seconds) => form.set('windowSeconds', seconds)}
        />
      ) : null}
      {isWindowAsked && isRhythmAsked ? (
        <Choices
          legend={words.sentence('quick.rhythmFelt')}
          choices={RHYTHMS.map((id) => ({ id, text: words.sentence(`quick.rhythm-${id}`) }))}
          chosen={rhythmOf(form.text('rhythm'))}
          onChoose={(rhythm) => form.set('rhythm', rhythm)}
        />
      ) : null}
      {isUnread && (isSettled || isAsked) ? (
        <ReadAgain
          title={words.sentence('quick.readAgain')}
          why={again}
          numbers={set?.numbers ?? ''}
          onRead={() => form.set('read', set?.numbers ?? '')}
        />
      ) : null}
      {isSettled && telling !== null && told !== null ? (
        <>
          <ActNowPanel standing={telling} />
          <AskPanel
            round={{ ...round, draft: told, measure: () => undefined, keep: () => undefined }}
            standing={telling}
          />
        </>
      ) : null}
      <QuickPlace
        form={form}
        habit={{
          text: () => (windowSeconds === null ? '' : String(windowSeconds)),
          set: (field, text) => {
            form.set(field, text);
            if (!isRhythmAsked) habit.set(field, text);
          },
        }}
        carried={carried}
        place={place?.place ?? null}
        windows={countRules.pulseWindowsSeconds}
        isFelt={set?.method === 'palpation'}
        isAsked={isAsked}
        isCuffWrong={isCuffWrong}
        cuffLeft={cuffKept === null ? cuffBefore : null}
        rules={cuffRules}
      />
      {place === null || place.allowed === 'yes' ? null : (
        <div className="notice notice-stop" role="alert">
          <p>
            <strong>{place.because.map((kind) => words.title('armFact', kind)).join(', ')}</strong>
          </p>
          <p>{words.sentence('quick.wholeRound')}</p>
        </div>
      )}
      {draft.pressure.values.length === 0 ? null : (
        <p className="small soft">
          {words.sentence('quick.keptSoFar', { readings: draft.pressure.values.length })}
        </p>
      )}
      {isAsked && signer.agent === null ? (
        <p className="field-wrong" role="alert">
          {words.sentence('quick.needsAgent')}
        </p>
      ) : null}
      {isAsked && isChanged ? (
        <p className="field-wrong" role="alert">
          {words.sentence('quick.changedMeanwhile')}
        </p>
      ) : null}
      {isAsked && isOpen ? (
        <p className="field-wrong" role="alert">
          {words.sentence(
            isWindowUnsaid ? 'quick.windowUnsaid' : isUnread ? 'quick.readNot' : 'quick.unasked',
          )}
        </p>
      ) : null}
      <QuickKeypad
        onKey={(key) => type(setKey(text, key))}
        onRubOut={() => type(text.slice(0, -1).replace(/\/$/, ''))}
        isIn={set !== null && !isOpen}
      />
      {isSettled ? <Flags flags={[...flags, ...(standing?.nextPressure?.why ?? [])]} /> : null}
      <button type="button" className="button" onClick={another}>
        {words.sentence('quick.another')}
      </button>
      <p className="small soft">{words.sentence('quick.identity')}</p>
      <SignAs signer={signer} />
      <div className="buttons">
        <Link
          href={`/people/${person}/round`}
          className="button button-quiet"
          onClick={() => beginRound(app, person)}
        >
          {words.sentence('quick.toRound')}
        </Link>
      </div>
    </form>
  );

  function pulseText(): string {
    const { n, windowSeconds } = set?.pulse ?? { n: 0, windowSeconds: 0 };
    return words.sentence('quick.pulseIs', { n, seconds: windowSeconds });
  }
}

const RHYTHMS = ['irregular', 'regular'] as const;

/** How the pulse felt, as it was said; null for not said: what nobody felt is not charted. */
function rhythmOf(chosen: string): (typeof RHYTHMS)[number] | null {
  return RHYTHMS.find((one) => one === chosen) ?? null;
}
