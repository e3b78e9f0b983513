import { isReviewed, LANGUAGES, type Language, languageOf, localeOf } from '@evenfall/words';
import { useSyncExternalStore } from 'react';
import { Link } from 'wouter';
import { useApp } from '../app/context.js';
import { dayText, timeText } from '../app/times.js';
import { Choices } from '../parts/Choices.js';
import { Page } from '../parts/Page.js';
import { localDate } from '../ports/stampAt.js';
import { CHOICES, type Preferences } from './preferences.js';

/** How this device writes: language, dates, times and units. A choice counts at once. */
export function SettingsPage() {
  const { words, preferences, clock } = useApp();
  const chosen = useSyncExternalStore(preferences.subscribe, preferences.get);
  const today = localDate(clock.stamp());
  const languageText = (language: Language | null) => {
    if (language !== null) return LANGUAGES[language].name;
    const own = languageOf(localeOf(null, navigator.languages)) ?? 'en';
    return words.sentence('settings.asBrowser', { text: LANGUAGES[own].name });
  };
  const datesText = (dates: Preferences['dates']) => {
    const text = dayText(today, words.inManner({ dates }));
    return dates === null ? words.sentence('settings.asLanguage', { text }) : text;
  };
  const one = <Key extends keyof Preferences>(
    key: Key,
    legend: string,
    textOf: (choice: (typeof CHOICES)[Key][number]) => string,
  ) => (
    <Choices
      legend={legend}
      choices={CHOICES[key].map((choice) => ({ id: String(choice), text: textOf(choice) }))}
      chosen={String(chosen[key])}
      onChoose={(id) =>
        preferences.change({ [key]: CHOICES[key].find((choice) => String(choice) === id) ?? null })
      }
    />
  );
  return (
    <Page title={words.sentence('settings.title')} back={{ href: '/', text: words.sentence('people.title') }}>
      <p>{words.sentence('settings.lead')}</p>
      {preferences.isKeeping() ? null : <p className="notice">{words.sentence('settings.notKept')}</p>}
      <div className="form">
        {one('language', words.sentence('settings.language'), languageText)}
        {isReviewed(words) ? <UnreviewedNotes /> : null}
        {one('dates', words.sentence('settings.dates'), datesText)}
        {one('hours', words.sentence('settings.hours'), (hours) =>
          timeText('14:30', words.inManner({ hours })),
        )}
        {one('temperature', words.sentence('settings.temperature'), (unit) =>
          words.sentence(`settings.${unit}`),
        )}
        {one('length', words.sentence('settings.length'), (unit) => words.sentence(`settings.${unit}`))}
        {one('mass', words.sentence('settings.mass'), (unit) => words.sentence(`settings.${unit}`))}
        {one('paper', words.sentence('settings.paper'), (paper) => words.sentence(`settings.${paper}`))}
      </div>
      <Link href="/card" className="button button-quiet">
        {words.sentence('card.title')}
      </Link>
    </Page>
  );
}

/** Which of the languages to choose from no clinician has reviewed. */
function UnreviewedNotes() {
  const { words } = useApp();
  return Object.values(LANGUAGES)
    .filter((language) => !language.isReviewed)
    .map(({ name }) => (
      <p key={name} className="small soft">
        {words.sentence('settings.notReviewed', { text: name })}
      </p>
    ));
}
