import type { Words } from '@evenfall/words';
import { type FormEvent, useEffect, useId, useRef, useState } from 'react';
import { Link, useLocation } from 'wouter';
import { useBook } from '../app/book.js';
import { useApp, useKept } from '../app/context.js';
import { signText } from '../app/signText.js';
import { withWrongCuff } from '../pressure/cuffOfReading.js';
import { useSignedIn } from '../signIn/useAccess.js';
import { nextHref } from './nextHref.js';
import { SignAs, type Signer, useSigner } from './SignAs.js';
import { sign } from './sign.js';
import type { RoundStanding } from './standing.js';
import type { Round } from './useRound.js';

type SignProps = { readonly round: Round; readonly person: string; readonly standing: RoundStanding };

/** Signing as it stands: who would, what is missing, how often it was asked for. */
export type Signing = {
  /** The id of the form, which its key stands apart from. */
  readonly form: string;
  readonly signer: Signer;
  readonly missing: readonly string[];
  /** Whether a severe pressure asks something: that comes first, then nothing lies over it and nothing else calls. */
  readonly isAsking: boolean;
  readonly asked: number;
  readonly submit: (event: FormEvent) => void;
};

/** Signing says what is missing rather than being dead. */
export function useSigning({ round, person, standing }: SignProps): Signing {
  const app = useApp();
  const signer = useSigner(round.draft);
  const { agent } = signer;
  const { book } = useBook();
  const [asked, setAsked] = useState(0);
  /** Whether the round was not any more what this page showed when it was signed. */
  const [isChanged, setChanged] = useState(false);
  const [, go] = useLocation();
  const form = useId();
  // A learner is not asked for a pregnancy in front of the class.
  const unasked = standing.unasked.filter((one) => one === 'features' || book !== 'class');
  const missing = [
    ...missingOf({ ...standing, unasked }, agent !== null, app.words),
    ...(withWrongCuff(round.draft).length === 0 ? [] : [app.words.sentence('review.cuffWrong')]),
  ];
  const says = [...missing, ...(isChanged ? [app.words.sentence('review.changedMeanwhile')] : [])];
  const submit = (event: FormEvent) => {
    event.preventDefault();
    setAsked(asked + 1);
    setChanged(false);
    if (missing.length > 0 || agent === null) return;
    if (!sign(app, round, { ...signer, agent })) {
      setChanged(true);
      return;
    }
    go(`/people/${person}`, { replace: true });
  };
  return { form, signer, missing: says, isAsking: unasked.length > 0, asked, submit };
}

/** Who signs, in what role, and what is missing once it was asked for. */
export function SignForm({ signing }: { readonly signing: Signing }) {
  const { words } = useApp();
  const { book } = useBook();
  const { form, signer, missing, asked, submit } = signing;
  return (
    <form id={form} className="form sign-form" onSubmit={submit}>
      <h2>{words.sentence('review.sign')}</h2>
      <SignAs signer={signer} />
      {asked > 0 && missing.length > 0 ? <NotReady key={asked} missing={missing} /> : null}
      <p className="soft small">
        {words.sentence(book === 'class' ? 'class.signHint' : 'review.signHint')}{' '}
        {words.sentence('review.lead')}
      </p>
    </form>
  );
}

type BarProps = {
  readonly signing: Signing;
  readonly standing: RoundStanding;
  readonly person: string;
};

/**
 * Both ways on, in sight however much there is to read: what comes next, as long as not all is taken, and signing. What is asked
 * for at once comes before signing.
 */
export function SignBar({ signing, standing, person }: BarProps) {
  const { words } = useApp();
  const { step, why } = standing.next;
  const isAtOnce = why.some(({ code }) => code === 'again-at-once');
  return (
    <div className={signing.isAsking ? 'next-steps next-steps-last sign-bar' : 'next-steps sign-bar'}>
      <SignerName agent={signing.signer.agent} />
      {step === 'review' ? null : (
        <Link
          href={nextHref(person, step)}
          className={`button${isAtOnce ? ' button-first' : ''} button-large`}
        >
          {words.sentence('review.goOnWith', { text: words.title('step', step) })}
        </Link>
      )}
      <button
        type="submit"
        form={signing.form}
        className={`button${isAtOnce ? '' : ' button-first'} button-large`}
      >
        {words.sentence('review.sign')}
      </button>
    </div>
  );
}

/** Whose name it will be, beside the key that signs: a device passes from hand to hand. */
function SignerName({ agent }: { readonly agent: string | null }) {
  const { words } = useApp();
  const known = useKept(({ known: { agents } }) => agents.value);
  const who = useSignedIn();
  const name =
    known?.find(({ id }) => id === agent)?.name ?? (who?.agent.id === agent ? who?.agent.name : undefined);
  if (name === undefined) return null;
  return (
    <p className="small sign-bar-who">
      <span className="soft">{words.sentence('review.signsAs')}</span> {name}
    </p>
  );
}

/** What is missing, where the eye is: it comes into sight each time that it is asked for. */
function NotReady({ missing }: { readonly missing: readonly string[] }) {
  const { words } = useApp();
  const place = useRef<HTMLDivElement>(null);
  useEffect(() => place.current?.scrollIntoView({ block: 'center' }), []);
  return (
    <div className="notice" role="alert" ref={place}>
      <p>{words.sentence('review.cannotYet')}</p>
      <ul className="flags">
        {missing.map((text) => (
          <li key={text}>{text}</li>
        ))}
      </ul>
    </div>
  );
}

/** What keeps a round from being signed. */
function missingOf(
  { missing, unasked }: Pick<RoundStanding, 'missing' | 'unasked'>,
  isSomebodyThere: boolean,
  words: Words,
): string[] {
  return [
    ...missing.map((one) => words.sentence('review.needs', { text: signText(one, words) })),
    ...unasked.map((one) =>
      words.sentence(one === 'features' ? 'review.unaskedFeatures' : 'review.unaskedPregnancy'),
    ),
    ...(isSomebodyThere ? [] : [words.sentence('review.needsAgent')]),
  ];
}
