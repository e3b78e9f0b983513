import { LANGUAGE_IDS, LANGUAGES, type Language, languageOf } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { Choices } from '../parts/Choices.js';

/** The language of this device, before anybody has signed in: each by its own name. */
export function LanguageChoice() {
  const { words, preferences } = useApp();
  return (
    <Choices<Language>
      legend={words.sentence('settings.language')}
      choices={LANGUAGE_IDS.map((id) => ({ id, text: LANGUAGES[id].name }))}
      chosen={languageOf(words.say.locale) ?? 'en'}
      onChoose={(language) => preferences.change({ language })}
    />
  );
}
