import type { Scenario } from '@evenfall/physiology';
import type { Words } from '@evenfall/words';
import { numberOf } from './drawing/looks.js';
import { GROUPS } from './groups.js';
import { whoText } from './scenarioText.js';

/** Where somebody is met. It says no more of them than one would know there. */
export const SETTINGS = ['check', 'surgery', 'home', 'ward', 'emergency', 'antenatal', 'children'] as const;
export type Setting = (typeof SETTINGS)[number];

/** What is known of the people of the book before they are measured: an invented name, and where they are met. */
const BEFORE: Readonly<Record<string, { readonly name: string; readonly at: Setting }>> = {
  'quiet-morning': { name: 'Edda Marlow', at: 'check' },
  'long-runner': { name: 'Tomas Reyle', at: 'check' },
  'calm-after-stairs': { name: 'Viktor Hale', at: 'check' },
  'calm-here-not-there': { name: 'Omar Siddal', at: 'check' },
  'wide-sleeve': { name: 'Bruno Kestrel', at: 'check' },
  unheralded: { name: 'Gareth Lowe', at: 'check' },
  'white-corridor': { name: 'Petra Lindhout', at: 'surgery' },
  'stiff-pipe': { name: 'Winifred Auger', at: 'surgery' },
  'hidden-shelf': { name: 'Anselm Crook', at: 'surgery' },
  'open-gate': { name: 'Colm Barrow', at: 'surgery' },
  'slow-hill': { name: 'Josef Tarn', at: 'surgery' },
  'leaves-in-wind': { name: 'Giorgos Vane', at: 'surgery' },
  'missed-step': { name: 'Ingrid Sorrel', at: 'surgery' },
  'two-arms': { name: 'Ivo Castell', at: 'surgery' },
  'racing-warm': { name: 'Soraya Dune', at: 'surgery' },
  'thin-sleeve': { name: 'Agnes Pell', at: 'home' },
  'up-too-fast': { name: 'Harun Keel', at: 'home' },
  'slow-bell': { name: 'Elsie Brand', at: 'home' },
  'bad-hose': { name: 'Luis Farrow', at: 'home' },
  'storm-of-leaves': { name: 'Beatriz Holm', at: 'ward' },
  'two-by-two': { name: 'Desmond Achebe', at: 'ward' },
  'strong-weak': { name: 'Walter Pym', at: 'ward' },
  'warm-flush': { name: 'Hanna Oakes', at: 'ward' },
  tide: { name: 'Ernest Vail', at: 'ward' },
  'broken-clock': { name: 'Marek Thorne', at: 'ward' },
  'sleepy-six': { name: 'Silas Grove', at: 'ward' },
  'fever-ward': { name: 'Tess Arlen', at: 'ward' },
  'tight-chest': { name: 'Noor Haddix', at: 'emergency' },
  'tight-sac': { name: 'Rafael Orme', at: 'emergency' },
  'cold-hands': { name: 'Dimitri Shaw', at: 'emergency' },
  'deep-and-fast': { name: 'Kofi Lund', at: 'emergency' },
  'noisy-bay': { name: 'Rosa Pike', at: 'emergency' },
  'second-trimester': { name: 'Amara Quill', at: 'antenatal' },
  'third-trimester-alarm': { name: 'Lucia Fenn', at: 'antenatal' },
  playground: { name: 'Mila Strand', at: 'children' },
  'feverish-toddler': { name: 'Ben Alder', at: 'children' },
};

/** Invented names for people of the place; the same id has the same name. */
const GIVEN = {
  f: ['Ada', 'Chiara', 'Dora', 'Fatma', 'Greta', 'Ines', 'Jun', 'Leila', 'Maud', 'Sunniva'],
  m: ['Aldo', 'Bela', 'Ciaran', 'Dov', 'Emeka', 'Felix', 'Hugo', 'Idris', 'Nils', 'Samir'],
} as const;
const FAMILY = [
  'Ashdown',
  'Birch',
  'Corley',
  'Delane',
  'Eskdale',
  'Fallow',
  'Garth',
  'Hobday',
  'Ilves',
  'Juniper',
  'Larkin',
];

type Who = Pick<Scenario, 'id' | 'sex'> & Partial<Pick<Scenario, 'title'>>;

/** What somebody is called before anything is known of them: of the place, as the place named them; of the book, a name, for a title there gives away what is to be found. */
export function personName({ id, sex, title = null }: Who): string {
  const number = numberOf(id);
  const [given, family] = [GIVEN[sex], FAMILY];
  return (
    BEFORE[id]?.name ??
    title ??
    `${given[number % given.length]} ${family[Math.floor(number / given.length) % family.length]}`
  );
}

/** Where the people of the book are met; null for those of the place. */
export function settingOf({ id }: Pick<Scenario, 'id'>): Setting | null {
  return BEFORE[id]?.at ?? null;
}

/** Who comes in, as one sees them and where. */
export function seenText(scenario: Pick<Scenario, 'id' | 'ageYears' | 'sex'>, words: Words): string {
  const at = settingOf(scenario);
  const who = whoText(scenario, words);
  return at === null ? who : `${who}, ${words.sentence(`practice.at-${at}`)}`;
}

/** The people of the book as a learner meets them: a few to begin with, then all others by where they are met. */
export const MET: readonly { readonly group: 'first' | Setting; readonly ids: readonly string[] }[] = [
  { group: 'first', ids: GROUPS.first },
  ...SETTINGS.map((group) => ({
    group,
    ids: Object.entries(BEFORE).flatMap(([id, { at }]) =>
      at === group && !(GROUPS.first as readonly string[]).includes(id) ? [id] : [],
    ),
  })),
];
