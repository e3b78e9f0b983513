import { PREPARATION_TIMES } from '@evenfall/clinical';
import {
  CARD_LANGUAGES,
  type CardLanguage,
  type CardText,
  languageOf,
  loadCard,
  localeOf,
  publishedSource,
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
  const [language, setLanguage] = useState<CardLanguage>(languageOf(words.say.locale) ?? 'en');
  const [theirs, setTheirs] = useState<CardText | null>(null);
  const [isAway, setAway] = useState(false);
  useEffect(() => {
    let isHere = true;
    const locale =
      language === 'ar' ? language : localeOf(language, [words.say.locale, ...navigator.languages]);
    loadCard(locale).then(
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
          choices={Object.entries(CARD_LANGUAGES).map(([id, text]) => ({ id: id as CardLanguage, text }))}
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
      {theirs === null ? null : <Card text={theirs} />}
    </Page>
  );
}

function Card({ text }: { readonly text: CardText }) {
  const { rest, clear } = PREPARATION_TIMES;
  return (
    <article className="card" lang={text.locale} dir={text.direction}>
      <h2>{text.heading}</h2>
      <ol className="card-steps">
        <Step isWide text={text.before(clear.value)}>
          <BeforePicture />
        </Step>
        <Step text={text.toilet}>
          <ToiletPicture />
        </Step>
        <Step text={text.rest(rest.value)}>
          <RestPicture minutes={rest.value} />
        </Step>
        <Step text={text.back}>
          <BackPicture />
        </Step>
        <Step text={text.feet}>
          <FeetPicture />
        </Step>
        <Step text={text.bare}>
          <BarePicture />
        </Step>
        <Step text={text.arm}>
          <ArmPicture />
        </Step>
        <Step isWide text={text.quiet}>
          <QuietPicture />
        </Step>
      </ol>
      <p className="card-tell">{text.tell}</p>
      <p className="small soft">
        {text.source(publishedSource(clear.source) ?? '')} {text.notReviewed}
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
