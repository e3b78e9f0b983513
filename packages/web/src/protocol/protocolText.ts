import {
  type FieldShape,
  type FieldValue,
  type Protocol,
  parseProtocol,
  type RoundSign,
  type Field as RuleField,
  SECTIONS,
  type SectionName,
} from '@evenfall/clinical';
import { type ProtocolChoiceMade, placeVersions } from '@evenfall/record';
import { clock, publishedSource, type Words } from '@evenfall/words';
import { signText } from '../app/signText.js';
import { dayText, stampText, timeText } from '../app/times.js';
import type { PlaceProtocols } from '../store/known.js';
import { isTimeOfDay } from './timeOfDay.js';

/** How much of a hash is shown: enough to tell the versions of one place apart. */
const SHORT = 12;

export function shortHash(version: string): string {
  return version.slice(0, SHORT);
}

/** The address at which a version is read. */
export function versionHref(version: string): string {
  return `/protocol/versions/${version}`;
}

/** A version as it is named everywhere: its number here, the day of its first use, who put it in force, its hash. */
export function versionText(version: string, place: PlaceProtocols | null, words: Words): string {
  const hash = shortHash(version);
  if (place === null) return words.sentence('chart.protocol', { text: hash });
  const found = placeVersions([], place.choices).find((one) => one.version === version);
  const first = found?.choices[0];
  if (found?.number == null || first === undefined)
    return words.sentence('protocol.versionNotUsed', { hash });
  const day = dayText(first.at.slice(0, 10), words);
  return words.sentence('protocol.version', {
    number: found.number,
    day,
    who: whoChose(first, place, words),
    hash,
  });
}

/** Who chose; somebody not known here where the agent is not. */
export function whoChose({ agent }: ProtocolChoiceMade, { agents }: PlaceProtocols, words: Words): string {
  return agents.find(({ id }) => id === agent)?.name ?? words.sentence('protocol.unknownAgent');
}

/** One line for a choice of the place: when, which version or none, by whom. */
export function choiceText(choice: ProtocolChoiceMade, place: PlaceProtocols, words: Words): string {
  const at = stampText({ at: choice.at }, words);
  const who = whoChose(choice, place, words);
  if (choice.version === null) return words.sentence('protocol.historyNone', { at, who });
  const number =
    placeVersions([], place.choices).find(({ version }) => version === choice.version)?.number ?? 0;
  return words.sentence('protocol.historyVersion', { at, who, number });
}

/** A version as kept; null where it is not there or this program cannot read it. */
export function readVersion(version: string, { protocols }: PlaceProtocols): Protocol | null {
  const row = protocols.find((one) => one.version === version);
  const read = row === undefined ? null : parseProtocol(row.content);
  return read?.ok ? read.value : null;
}

/** The definition of a field; undefined for one that this program does not have. */
export function shapeOf(section: SectionName, key: string): FieldShape | undefined {
  return (SECTIONS[section].fields as Readonly<Record<string, FieldShape>>)[key];
}

/** What a field is for; which of the two numbers of a pressure, where its words leave it open. */
export function fieldMeaning(place: string, words: Words): string {
  const meaning = words.title('rule', place);
  const which = /(Systolic|Diastolic)$/.exec(place)?.[1]?.toLowerCase() as
    | 'systolic'
    | 'diastolic'
    | undefined;
  if (which === undefined) return meaning;
  const said = words.sentence(`protocol.${which}`);
  return meaning.toLowerCase().includes(said.toLowerCase()) ? meaning : `${meaning}: ${said}`;
}

/** What a field is for, with its unit where it has one. */
export function fieldName(place: string, unit: string | null, words: Words): string {
  const name = fieldMeaning(place, words);
  return unit === null ? name : `${name} (${words.title('ruleUnit', unit)})`;
}

/** What a preset is called: a guideline by its rule in this section, else by its own name. */
export function presetTitle(section: SectionName, id: string, words: Words): string {
  const groups = [
    'readings',
    'arms',
    'recheck',
    'actNow',
    'signing',
    'equipment',
    'home',
    'ambulatory',
  ] as const;
  const group = groups.find((one) => one === section);
  const titles = [
    ...(group === undefined ? [] : [words.title(group, id)]),
    words.title('preset', id),
    words.title('scheme', id),
  ];
  if (section === 'category') titles.reverse();
  return titles.find((title) => title !== id) ?? id;
}

/** Fields whose words have titles elsewhere, by `section/key`. */
const TITLED = {
  'category/adultScheme': 'scheme',
  'category/childScheme': 'scheme',
  'category/pregnancyScheme': 'scheme',
  'count/clock': 'clock',
  'count/first': 'first',
  'deflation/perBeatWhen': 'perBeatWhen',
  'deflation/gaugeReading': 'gaugeReading',
  'cuff/scheme': 'preset',
  'cuff/neverFor': 'armFact',
  'cuff/preferOtherFor': 'armFact',
  'readings/rule': 'readings',
  'readings/irregularAverage': 'irregularAverage',
  'actNow/switchedOff': 'condition',
  'home/sittingUse': 'sittingUse',
  'home/averaged': 'homeAveraged',
  'home/judged': 'homeJudged',
  'home/scheme': 'homeScheme',
  'ambulatory/judged': 'period',
  'ambulatory/scheme': 'homeScheme',
  'ambulatory/wholeMean': 'wholeMean',
  'ambulatory/editing': 'editing',
} as const;

/** The field whose words are signs, and the word of a set of rules that there is none. */
const WANTED = 'round/wantedSigns';
const NONE = 'none';

/** One word of a field, as it is called. */
export function wordText(place: string, value: string, words: Words): string {
  if (value === 'true') return words.sentence('protocol.yes');
  if (value === 'false') return words.sentence('protocol.no');
  const group = (TITLED as Readonly<Record<string, (typeof TITLED)[keyof typeof TITLED]>>)[place];
  if (group === undefined) return place === WANTED ? signText(value as RoundSign, words) : value;
  const title = words.title(group, value);
  return title === NONE ? words.sentence('protocol.noneHere') : title;
}

/** The published works that a value was taken from, and how sure that is. */
export function sourceText(source: string, sure: RuleField['sure'], words: Words): string {
  const named = publishedSource(source);
  return words.sentence('protocol.source', { named, sure: words.sentence(`protocol.${sure}`) });
}

/** Where the value of a field comes from; of a value of the place, what was published in its stead, and where. */
export function originText(place: string, field: RuleField, words: Words): string {
  const { source, sure } = field.replaces ?? field;
  const said = sourceText(source, sure, words);
  if (field.replaces === null) return said;
  const text = valueText(place, field.replaces.value, field.unit, words);
  return `${words.sentence('protocol.local', { text })}; ${said}`;
}

/** The value of a field, with its unit. */
export function valueText(place: string, value: FieldValue, unit: string | null, words: Words): string {
  if (typeof value === 'number' && isTimeOfDay(unit)) return timeText(clock(value), words);
  const text = bareText(place, value, words);
  const isNumber =
    typeof value === 'number' || (typeof value === 'object' && value !== null && 'limit' in value);
  return unit === null || !isNumber
    ? text
    : words.sentence('protocol.withUnit', { text, unit: words.title('ruleUnit', unit) });
}

function bareText(place: string, value: FieldValue, words: Words): string {
  if (value === null) return words.sentence('protocol.noneHere');
  if (typeof value === 'number' && !(place in TITLED)) return words.say.short(value, 3);
  if (typeof value === 'number') return wordText(place, String(value), words);
  if (typeof value === 'boolean' || typeof value === 'string') return wordText(place, String(value), words);
  if ('comparison' in value) return `${value.comparison} ${words.say.short(value.limit, 3)}`;
  if (value.length === 0) return words.sentence('protocol.noneHere');
  return value
    .map((one) => (typeof one === 'number' ? words.say.short(one, 3) : wordText(place, one, words)))
    .join(', ');
}
