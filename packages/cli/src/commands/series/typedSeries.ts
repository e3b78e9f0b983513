import {
  type AmbulatoryCircumstances,
  type DayNight,
  doOverlap,
  listPresets,
  type Parsed,
  type Protocol,
  presetProtocol,
  protocolVersion,
  type Refusal,
  refusal,
  SEXES,
  type Sex,
} from '@evenfall/clinical';
import {
  DATE_ORDERS,
  isZone,
  NOTHING_SAID,
  SERIES_COLUMNS,
  type SeriesChoices,
  type SeriesColumn,
} from '@evenfall/exchange';
import type { Words } from '@evenfall/words';
import type { Item } from '../../command.js';
import type { Given, Option } from '../../options/option.js';
import { officeOf, type TypedOffice } from './typedOffice.js';

/** The rule set where none was named. Source: decision (the strictest of those that were read). */
export const USUAL_RULES = 'ish-2020';

export type SeriesSection = 'home' | 'ambulatory';

const idsOf = (section: SeriesSection): string[] =>
  listPresets()
    .filter((one) => one.section === section)
    .map(({ id }) => id);

/** What was typed beside the file. */
export type TypedSeries = {
  readonly files: readonly string[];
  readonly rules: string;
  /** The rule set that was named; null where the usual one is taken. */
  readonly namedRules: string | null;
  readonly choices: SeriesChoices;
  readonly ageYears: number | null;
  readonly sex: Sex | null;
  readonly isPregnant: boolean;
  readonly office: TypedOffice | null;
  readonly isTreated: boolean | null;
  /** How many threads work on many files; null for as many as pay. */
  readonly workers: number | null;
};

/** The options of both kinds of series. */
export function seriesOptions(section: SeriesSection): Option[] {
  return [
    { name: 'rules', kind: 'value', means: 'options.homeRules', hint: 'ID', choices: idsOf(section) },
    { name: 'zone', kind: 'value', means: 'options.zone', hint: 'ZONE' },
    { name: 'dates', kind: 'value', means: 'options.dates', choices: DATE_ORDERS },
    { name: 'unit', kind: 'value', means: 'options.pressureUnit', choices: ['mmHg', 'kPa'] },
    { name: 'columns', kind: 'value', means: 'options.columns', hint: 'COLUMN,...' },
    { name: 'age', kind: 'value', means: 'options.age', hint: 'YEARS' },
    { name: 'sex', kind: 'value', means: 'options.priorSex', choices: SEXES },
    { name: 'pregnant', kind: 'switch', means: 'options.seriesPregnant' },
    { name: 'office', kind: 'value', means: 'options.officeMean', hint: 'S/DxN|DATE=S/D,...' },
    { name: 'treated', kind: 'value', means: 'options.treated', choices: ['yes', 'no'] },
    { name: 'workers', kind: 'value', means: 'options.fileWorkers', hint: 'NUMBER' },
  ];
}

/** The options of a recording alone. */
export const RECORDING_OPTIONS: readonly Option[] = [
  { name: 'asleep', kind: 'value', means: 'options.asleep', hint: 'HH:MM-HH:MM' },
  { name: 'nap', kind: 'value', means: 'options.nap', hint: 'HH:MM-HH:MM' },
  { name: 'day', kind: 'value', means: 'options.dayWindow', hint: 'HH:MM-HH:MM' },
  { name: 'night', kind: 'value', means: 'options.nightWindow', hint: 'HH:MM-HH:MM' },
  { name: 'scheduled', kind: 'value', means: 'options.scheduled', hint: 'READINGS' },
  { name: 'all', kind: 'switch', means: 'options.allHours' },
  { name: 'stiffness', kind: 'switch', means: 'options.asksStiffness' },
];

/** Every rule set of a section, in the order of the handbook. */
export function ruleItems(section: SeriesSection): (words: Words) => Item[] {
  return (words) =>
    listPresets()
      .filter((one) => one.section === section)
      .map(({ id, source, status }) => {
        const protocol = protocolOf(section, id);
        const fields = Object.entries(protocol.sections[section] ?? {});
        return {
          id,
          title: words.title(section, id),
          source,
          status,
          typed: `--rules ${id}`,
          version: protocolVersion(protocol),
          fields: fields.map(([key, { value, unit, ...from }]) => ({
            key,
            value,
            unit,
            source: from.source,
            status: from.sure,
          })),
        };
      });
}

/** The protocol of a rule set for one kind of series, made once for all files; an id that is offered can be read. */
export function protocolOf(section: SeriesSection, id: string): Protocol {
  const key = `${section}/${id}`;
  const known = PROTOCOLS.get(key);
  if (known !== undefined) return known;
  const found = presetProtocol({ [section]: id });
  if (!found.ok) throw new Error(`The rule set ${id} is listed and cannot be read`);
  PROTOCOLS.set(key, found.value);
  return found.value;
}

const PROTOCOLS = new Map<string, Protocol>();

/** Reads the options of a series. Errors, all together: `/NAME` of the option. */
export function typedSeries(
  section: SeriesSection,
  given: Given,
  files: readonly string[],
): Parsed<TypedSeries> {
  const refusals: Refusal[] = [];
  const zone = given.text('zone');
  if (zone !== null && !isZone(zone)) refusals.push(refusal('/zone', 'unknown-id', 'iana-zone', zone));
  const columns = columnsOf(given.text('columns'), refusals);
  const choices: SeriesChoices = {
    ...NOTHING_SAID,
    kind: section,
    zone,
    dates: DATE_ORDERS.find((one) => one === given.text('dates')) ?? null,
    unit: (['mmHg', 'kPa'] as const).find((one) => one === given.text('unit')) ?? null,
    mapping: columns === null ? null : { headings: null, columns },
    areColumnsSure: columns !== null,
  };
  const value: TypedSeries = {
    files,
    rules: given.text('rules') ?? USUAL_RULES,
    namedRules: given.text('rules'),
    choices,
    ageYears: wholeFrom(given, 'age', 0, OLDEST_YEARS, refusals),
    sex: SEXES.find((one) => one === given.text('sex')) ?? null,
    isPregnant: given.isOn('pregnant'),
    office: officeOf(given, refusals),
    isTreated: given.text('treated') === null ? null : given.text('treated') === 'yes',
    workers: wholeFrom(given, 'workers', 1, MOST_WORKERS, refusals),
  };
  return refusals.length > 0 ? { ok: false, refusals } : { ok: true, value };
}

const OLDEST_YEARS = 130;
const MOST_WORKERS = 256;
const MOST_READINGS = 100_000;

/** What a recording was set to, and what tells its day from its night; null for the latter leaves it to the file and the rules. */
export type TypedRecording = Pick<AmbulatoryCircumstances, 'scheduled' | 'isAllUsed'> & {
  readonly dayNight: DayNight | null;
  readonly asksStiffness: boolean;
};

/** Reads the options of a recording. Errors as above. */
export function typedRecording(given: Given): Parsed<TypedRecording> {
  const refusals: Refusal[] = [];
  const [asleep = null, nap = null, day = null, night = null] = (
    ['asleep', 'nap', 'day', 'night'] as const
  ).map((name) => rangeOf(given.text(name), name, refusals));
  // Without the night a nap would be taken for it; and no minute is of both.
  if (
    (given.text('nap') !== null && given.text('asleep') === null) ||
    (asleep !== null && nap !== null && doOverlap(asleep, nap))
  ) {
    refusals.push(refusal('/nap', 'contradicts', 'nap-apart', given.text('nap')));
  }
  const isClock = given.text('day') !== null || given.text('night') !== null;
  if (
    isClock &&
    (given.text('day') === null || given.text('night') === null || given.text('asleep') !== null)
  ) {
    const name = given.text('day') === null ? 'night' : 'day';
    refusals.push(refusal(`/${name}`, 'contradicts', 'day-and-night', given.text(name)));
  }
  const scheduled = wholeFrom(given, 'scheduled', 1, MOST_READINGS, refusals);
  if (refusals.length > 0) return { ok: false, refusals };
  const dayNight: DayNight | null =
    asleep !== null
      ? { by: 'asleep-range', asleep, nap }
      : day !== null && night !== null
        ? { by: 'clock', day, night }
        : null;
  return {
    ok: true,
    value: { scheduled, isAllUsed: given.isOn('all'), asksStiffness: given.isOn('stiffness'), dayNight },
  };
}

/** A range of the clock in minutes from midnight. Source: docs/conventions.md section 1. */
function rangeOf(
  text: string | null,
  name: string,
  refusals: Refusal[],
): { from: number; to: number } | null {
  if (text === null) return null;
  const found = /^([01]?\d|2[0-3]):([0-5]\d)-([01]?\d|2[0-4]):([0-5]\d)$/.exec(text);
  const [, h1, m1, h2, m2] = found ?? [];
  const [from, to] = [Number(h1) * 60 + Number(m1), Number(h2) * 60 + Number(m2)];
  if (found === null || to > 1440 || from === to) {
    refusals.push(refusal(`/${name}`, 'not-a-time', 'clock-range', text));
    return null;
  }
  return { from, to: to === 1440 ? 0 : to };
}

function columnsOf(text: string | null, refusals: Refusal[]): (SeriesColumn | null)[] | null {
  if (text === null) return null;
  const typed = text.split(',').map((one) => one.trim());
  const columns = typed.map((one) => SERIES_COLUMNS.find((column) => column === one) ?? null);
  const wrong = typed.find((one, at) => columns[at] === null && one !== '-' && one !== '');
  const again = columns.find((one, at) => one !== null && columns.indexOf(one) !== at);
  if (wrong !== undefined || again !== undefined) {
    const code = wrong === undefined ? 'repeated' : 'unknown-id';
    refusals.push(
      refusal('/columns', code, 'columns-of-series', wrong ?? again, { choices: SERIES_COLUMNS }),
    );
    return null;
  }
  return columns;
}

/** A whole number within limits; null where it was not typed or is refused. */
export function wholeFrom(
  given: Given,
  name: string,
  minimum: number,
  maximum: number,
  refusals: Refusal[],
): number | null {
  const text = given.text(name);
  if (text === null) return null;
  const isNumber = /^-?\d+(\.\d+)?$/.test(text);
  const value = Number(text);
  const code = !isNumber ? 'not-a-number' : !Number.isInteger(value) ? 'not-whole' : 'out-of-range';
  if (isNumber && Number.isInteger(value) && value >= minimum && value <= maximum) return value;
  refusals.push(refusal(`/${name}`, code, 'whole-from', text, { figures: { minimum, maximum } }));
  return null;
}
