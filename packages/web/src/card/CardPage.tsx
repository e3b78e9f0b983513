import { PREPARATION_TIMES } from '@evenfall/clinical';
import {
  isReviewed,
  LANGUAGE_IDS,
  LANGUAGES,
  type Language,
  languageOf,
  loadWords,
  localeOf,
  publishedSource,
  type Words,
} from '@evenfall/words';
import { type ReactNode, useEffect, useState } from 'react';
import { useApp } from '../app/context.js';
import { Choices } from '../parts/Choices.js';
import { Page } from '../parts/Page.js';
import {
  ArmPicture,
  BackPicture,
  BarePicture,
  BeforePicture,
  FeetPicture,
  QuietPicture,
  RestPicture,
  ToiletPicture,
} from './pictures.js';
import '../styles/card.css';

/** A page in pictures for whoever is to be measured, in a language of their own. */
export function CardPage() {
  const { words } = useApp();
  const [language, setLanguage] = useState<Language>(languageOf(words.say.locale) ?? 'en');
  const [theirs, setTheirs] = useState(words);
  const [isAway, setAway] = useState(false);
  useEffect(() => {
    let isHere = true;
    loadWords(localeOf(language, [words.say.locale, ...navigator.languages])).then(
      (loaded) => {
        if (!isHere) return;
        setTheirs(loaded);
        setAway(false);
      },
      () => isHere && setAway(true),
    );
    return () => {
      isHere = false;
    };
  }, [language, words]);
  return (
    <Page
      title={words.sentence('card.title')}
      back={{ href: '/settings', text: words.sentence('settings.title') }}
    >
      <div className="not-printed card-choice">
        <p>{words.sentence('card.lead')}</p>
        <Choices
          legend={words.sentence('card.language')}
          choices={LANGUAGE_IDS.map((id) => ({ id, text: LANGUAGES[id].name }))}
          chosen={language}
          onChoose={setLanguage}
        />
        {isAway ? <p className="notice">{words.sentence('app.unreachable')}</p> : null}
        <div className="buttons">
          <button type="button" className="button button-first" onClick={() => window.print()}>
            {words.sentence('card.print')}
          </button>
        </div>
      </div>
      <Card words={theirs} />
    </Page>
  );
}

function Card({ words }: { readonly words: Words }) {
  const { rest, clear } = PREPARATION_TIMES;
  return (
    <article className="card" lang={words.say.locale}>
      <h2>{words.sentence('card.heading')}</h2>
      <ol className="card-steps">
        <Step isWide text={words.sentence('card.before', { minutes: clear.value })}>
          <BeforePicture />
        </Step>
        <Step text={words.sentence('card.toilet')}>
          <ToiletPicture />
        </Step>
        <Step text={words.sentence('card.rest', { minutes: rest.value })}>
          <RestPicture minutes={rest.value} />
        </Step>
        <Step text={words.sentence('card.back')}>
          <BackPicture />
        </Step>
        <Step text={words.sentence('card.feet')}>
          <FeetPicture />
        </Step>
        <Step text={words.sentence('card.bare')}>
          <BarePicture />
        </Step>
        <Step text={words.sentence('card.arm')}>
          <ArmPicture />
        </Step>
        <Step isWide text={words.sentence('card.quiet')}>
          <QuietPicture />
        </Step>
      </ol>
      <p className="card-tell">{words.sentence('card.tell')}</p>
      <p className="small soft">
        {words.sentence('card.source', { text: publishedSource(clear.source) ?? '' })}{' '}
        {isReviewed(words) ? null : words.sentence('app.notReviewed')}
      </p>
    </article>
  );
}

type StepProps = { readonly text: string; readonly isWide?: boolean; readonly children: ReactNode };

function Step({ text, isWide = false, children }: StepProps) {
  return (
    <li className={isWide ? 'card-step card-step-wide' : 'card-step'}>
      {children}
      <p>{text}</p>
    </li>
  );
}
