import {
  alertsBeside,
  armsBeside,
  type Flag,
  isCategoryHeldBack,
  standingBeside,
  worstAlerts,
} from '@evenfall/clinical';
import {
  type AgentStanding,
  type AmendedEntry,
  type ChartRound,
  flagsStanding,
  type Identity,
  laterBy,
  notesStanding,
  openIn,
  pressureWritten,
  type RoundAverage,
  type RoundValueKept,
  type RulesOf,
  readingsAveraged,
  rechecksOf,
  resultsStanding,
  roundAverage,
  type StoredEntry,
  signingOf,
  signOf,
  standingOf,
  valuesStanding,
} from '@evenfall/record';
import { beginningText, restText, type Words } from '@evenfall/words';
import { armsFound, standingFound } from './roundFindings.js';
import type { Aside, Values } from './template.js';
import { gaugeTexts, type RunEntry, type ValueOf, valueText, withBeside } from './valueText.js';

/** Fields of a template, in the order in which they are listed. */
export const TEXT_FIELDS = [
  'identity',
  'name',
  'birthDate',
  'number',
  'day',
  'time',
  'begun',
  'rest',
  'pulse',
  'breaths',
  'pressure',
  'meanOf',
  'readings',
  'arm',
  'posture',
  'place',
  'others',
  'arms',
  'armsFound',
  'standing',
  'standingFound',
  'category',
  'caution',
  'temperature',
  'saturation',
  'pain',
  'consciousness',
  'weight',
  'height',
  'score',
  'actNow',
  'told',
  'alerts',
  'again',
  'doubts',
  'notDone',
  'note',
  'who',
  'role',
  'status',
  'protocol',
] as const;
export type TextField = (typeof TEXT_FIELDS)[number];

/** What a text is made from. */
export type TextOf = ValueOf & {
  /** All rounds of the chart, this one among them: what is still asked for hangs on what was taken since. */
  readonly rounds: readonly ChartRound[];
  readonly identity: Identity | null;
  readonly agents: readonly AgentStanding[];
  readonly rulesOf: RulesOf;
  /** A local date (`YYYY-MM-DD`) as its reader writes it. */
  readonly dayText: (date: string) => string;
  /** When it is written, local with its offset, RFC 3339: what was due by then is late. */
  readonly now: string;
};

/** What each field says of a round as it stands: what amendments dispute is said in every claim. */
export function roundFields(of: TextOf): Values<TextField> {
  const { round, identity, words, dayText, rulesOf } = of;
  const { say } = words;
  const signing = signingOf(round);
  const first = signing ?? round.values[0]?.original;
  const at = takenAt(round);
  const text = (sign: string) => claims(round, sign, (entry, value) => valueText(entry, value, of), words);
  const mean = round.isInError ? null : roundAverage(round, rulesOf);
  const runs = runsOf(round);
  const averaged = readingsAveraged(round, rulesOf);
  // Of a mean, the readings that it was made of: another arm or posture beside it is not where it was taken.
  const said = mean === null ? runs : runs.filter(({ ids }) => ids.some((id) => averaged.includes(id)));
  const arm = allOf(said, ({ place }) => armText(place, words), say.allOf);
  const posture = allOf(said, ({ place }) => words.sentence(`pressure.${place.posture}Posture`), say.allOf);
  const isOnePlace = new Set(runs.map(({ place }) => placed(place, words))).size < 2;
  const readings = claims(
    round,
    'pressure',
    (entry, value) => valueText(entry, value, of, isOnePlace ? [] : placesOf(entry, words)),
    words,
  );
  // What the rule leaves out of a mean at the same place says nothing new.
  const beside = runs.filter(
    ({ place }) => said.length > 0 && said.every((one) => placed(one.place, words) !== placed(place, words)),
  );
  const others = beside.map(({ entry, value }) => valueText(entry, value, of, placesOf(entry, words)));
  // Where amendments disagree, what each of them makes of the round: none may hide what another says.
  const all = round.isInError ? [] : valuesStanding(round, rulesOf);
  const made = round.isInError ? [] : resultsStanding(round, rulesOf);
  const isHeldBack = [...made, ...all].some(isCategoryHeldBack);
  const notes = notesStanding(round, rulesOf, identity?.birthDate ?? null);
  const alerts = worstAlerts(all.flatMap(({ actNow }) => actNow));
  return {
    identity: identity === null ? null : identityText(identity, of),
    name: identity?.name ?? null,
    birthDate: identity?.birthDate == null ? null : dayText(identity.birthDate),
    number: identity?.number ?? null,
    day: at === '' ? null : dayText(at.slice(0, 10)),
    time: at === '' ? null : at.slice(11, 16),
    begun: signing?.content.begun == null ? null : beginningText(signing.content.begun, words),
    rest: signing?.content.rest == null ? null : restText(signing.content.rest, words),
    pulse: text('pulse'),
    breaths: text('breaths'),
    pressure: mean === null ? readings : withBeside(meanText(mean, words), meanBeside(said, of)),
    // One reading is the mean of nothing.
    meanOf: mean === null || mean.readings < 2 ? null : say.number(mean.readings),
    readings,
    arm,
    posture,
    place: allOf(
      said,
      ({ place }) => placed(place, words),
      (places) => places.join('; '),
    ),
    others: others.length === 0 ? null : others.join(', '),
    arms: detailsOf(
      made.flatMap(({ arms }) => (arms === null ? [] : armsBeside(arms.why, notes.arms))),
      words,
    ),
    armsFound: armsFound(made, notes.arms, words),
    standing: detailsOf(
      made.flatMap(({ standing }) => (standing === null ? [] : standingBeside(standing, notes.standing))),
      words,
    ),
    standingFound: standingFound(made, words),
    category: eachOf(
      made.map((one) => (isHeldBack ? null : categoryText(one, words))),
      words,
    ),
    caution: isHeldBack ? words.sentence('handover.caution') : null,
    temperature: text('temperature'),
    saturation: text('oxygen-saturation'),
    pain: text('pain'),
    consciousness: text('consciousness'),
    weight: text('weight'),
    height: text('height'),
    score: eachOf(
      made.map(({ earlyWarning }) => (earlyWarning?.total == null ? null : say.number(earlyWarning.total))),
      words,
    ),
    actNow:
      alerts.length === 0
        ? null
        : alertsBeside(alerts, notes.repeat)
            .map(({ condition, figures }) => words.detail({ code: condition, figures }))
            .join(' '),
    told: toldText(of, 'handover.notTold'),
    alerts: toldText(of, 'handover.alertOpen'),
    again: againText(of),
    doubts: doubtsText(
      [...said, ...beside].map(({ entry }) => ({ entry, flags: flagsStanding(entry, round, notes) })),
      words,
    ),
    notDone: notDoneText(signing, words),
    note: signing?.content.note ?? null,
    who: first === undefined ? null : (of.agents.find(({ id }) => id === first.agent)?.name ?? null),
    role: roleText(first, of.agents, words),
    status: words.sentence(`handover.${statusOf(round)}`),
    protocol: signing?.content.protocolVersion?.slice(0, SHORT_VERSION) ?? null,
  };
}

/** Who it is in a line: the name, when they were born and their number, as far as they are known. */
function identityText({ name, birthDate, number }: Identity, { words, dayText }: TextOf): string {
  return [
    name,
    ...(birthDate === null ? [] : [words.sentence('handover.born', { text: dayText(birthDate) })]),
    ...(number === null ? [] : [words.sentence('handover.numbered', { text: number })]),
  ].join(', ');
}

/** What is to be known of readings that stand as their mean. */
function meanBeside(readings: ReturnType<typeof runsOf>, { words, gauges }: TextOf): readonly string[] {
  const failed = readings.flatMap(({ entry }) => gaugeTexts(entry, gauges, words));
  const isAmended = readings.some(({ value }) => value.standing === 'amended');
  return [...new Set([...failed, ...(isAmended ? [words.sentence('handover.amended')] : [])])];
}

/** What the first who signed is called; null where nobody knows. */
function roleText(
  first: StoredEntry | undefined,
  agents: readonly AgentStanding[],
  words: Words,
): string | null {
  const standing = first === undefined ? null : standingOf(first, agents);
  return standing === null ? null : words.sentence(`roles.${standing}`);
}

/** What a round was called, and that this rests on no average where it does; null where it was called nothing. */
function categoryText({ category, pressure }: RoundValueKept, words: Words): string | null {
  if (category?.category == null) return null;
  const text = words.title('category', category.category);
  if (pressure?.systolic != null && pressure.used.length > 1) return text;
  return words.sentence('handover.byOneReading', { text, highestOf: category.highestOf ?? 1 });
}

/** The average of a round, each number as its category shows it: never rounded across a limit. */
function meanText({ systolic, diastolic, shown }: RoundAverage, { say }: Words): string {
  return `${shown.systolic ?? say.number(systolic)}/${shown.diastolic ?? say.number(diastolic)}`;
}

/** What claims come to, once where they agree; null where none comes to anything. */
function eachOf(texts: readonly (string | null)[], words: Words): string | null {
  const [first, ...others] = new Set(texts.filter((text) => text !== null));
  if (first === undefined) return null;
  if (others.length === 0) return first;
  return words.sentence('handover.disputed', { text: words.say.anyOf([first, ...others]) });
}

/** Enough of a version's hash to tell two apart by eye. */
const SHORT_VERSION = 8;

/** How far a round is settled; every text of a round that is not signed and agreed to says it. */
export function statusOf(round: ChartRound): 'isSigned' | 'isPreliminary' | 'isUnsigned' | 'isInError' {
  if (round.isInError) return 'isInError';
  if (round.signed === null || round.unsigned.length > 0) return 'isUnsigned';
  return round.isPreliminary ? 'isPreliminary' : 'isSigned';
}

function claims(
  round: ChartRound,
  sign: string,
  written: (entry: StoredEntry, value: AmendedEntry) => string | null,
  words: Words,
): string | null {
  const values = round.values.filter(({ original }) => signOf(original) === sign);
  const said = values.flatMap((value) => {
    const { current, standing } = value;
    const texts = current.flatMap((entry) => written(entry, value) ?? []);
    if (texts.length === 0) return [];
    return [
      standing === 'contested'
        ? words.sentence('handover.disputed', { text: words.say.anyOf(texts) })
        : texts.join(', '),
    ];
  });
  return said.length === 0 ? null : said.join(', ');
}

type Place = RunEntry['content']['evidence']['place'];

/** The pressures that stand, each with the ids of its story and where it was taken. */
function runsOf(round: ChartRound) {
  return round.values.flatMap((value) =>
    value.current
      .filter((entry): entry is RunEntry => entry.kind === 'run')
      .map((entry) => ({
        entry,
        value,
        place: entry.content.evidence.place,
        ids: value.story.map(({ id }) => id),
      })),
  );
}

/** What all of some say alike; where they differ, each once and aside: it stands with each of them too. Null for none. */
function allOf<Item>(
  items: readonly Item[],
  say: (item: Item) => string,
  join: (texts: readonly string[]) => string,
): string | Aside | null {
  const [first, ...others] = new Set(items.map(say));
  if (first === undefined) return null;
  return others.length === 0 ? first : { aside: join([first, ...others]) };
}

function armText({ side, site }: Place, words: Words): string {
  return words.title('limb', `${side} ${site}`).toLowerCase();
}

function placed(place: Place, words: Words): string {
  const posture = words.sentence(`pressure.${place.posture}Posture`);
  return words.sentence('handover.placed', { arm: armText(place, words), posture });
}

function placesOf(entry: StoredEntry, words: Words): readonly string[] {
  return entry.kind === 'run' ? [placed(entry.content.evidence.place, words)] : [];
}

/**
 * Whom the alerts were told to, and which of them nobody closed; null where there was none.
 *
 * @param openSays the sentence for those that nobody closed
 */
function toldText(
  { round, rulesOf, words, dayText }: TextOf,
  openSays: 'handover.notTold' | 'handover.alertOpen',
): string | null {
  if (round.isInError) return null;
  const named = (conditions: readonly string[]) =>
    words.say.allOf([...new Set(conditions)].map((one) => words.title('condition', one)));
  const open = openIn(round, rulesOf).map(({ condition }) => condition);
  const said = [
    ...round.closed.map(({ content: { conditions, toldWhom, toldAt, saidBack } }) =>
      words.sentence('handover.told', {
        conditions: named(conditions),
        whom: toldWhom,
        at: timeBeside(toldAt.at, round, dayText),
        said: saidBack.replace(/[.\s]+$/, ''),
      }),
    ),
    ...(open.length === 0 ? [] : [words.sentence(openSays, { conditions: named(open) })]),
  ];
  return said.length === 0 ? null : said.join(' ');
}

/**
 * When the pressure is due again, and why, as the chart still asks, and by how much that is late: nothing once it was taken again, and what another
 * round asks for with the time of that round. Null where nothing asks for it.
 */
function againText({ round, rounds, rulesOf, words, dayText, now }: TextOf): string | null {
  if (round.isInError) return null;
  const standing = rounds.filter(({ isInError }) => !isInError);
  // A server has no clock of the place: now is written as the clock of the round would show it.
  const taken = takenAt(round);
  const there = laterBy(taken, (Date.parse(now) - Date.parse(taken)) / 1000);
  const said = rechecksOf(standing, rulesOf).map((due) => {
    const other = due.round === round.id ? undefined : standing.find(({ id }) => id === due.round);
    const reason = words.title('recheckReason', due.code);
    const why =
      other === undefined
        ? reason
        : words.sentence('handover.ofOtherRound', {
            text: reason,
            at: timeBeside(takenAt(other), round, dayText),
          });
    const from = timeBeside(due.fromAt, round, dayText);
    const minutesSince = (at: string) => Math.floor((Date.parse(now) - Date.parse(at)) / 60_000);
    if (due.byAt === null) {
      const minutes = minutesSince(due.fromAt);
      if (minutes < 1) return words.sentence('handover.againFrom', { from, why });
      return words.sentence('handover.againSince', {
        from,
        why,
        minutes,
        now: timeBeside(there, round, dayText),
      });
    }
    const by = timeBeside(due.byAt, round, dayText);
    const minutes = minutesSince(due.byAt);
    if (minutes < 1) return words.sentence('handover.again', { from, by, why });
    return words.sentence('handover.againLate', { by, why, minutes, now: timeBeside(there, round, dayText) });
  });
  return said.length === 0 ? null : said.join(' ');
}

/** When a round was signed, or its first value taken. */
function takenAt(round: ChartRound): string {
  return (signingOf(round) ?? round.values[0]?.original)?.measuredAt.at ?? '';
}

/** A time as it stands beside a round: with its day where that is another one. */
function timeBeside(at: string, round: ChartRound, dayText: TextOf['dayText']): string {
  const [day, time] = [at.slice(0, 10), at.slice(11, 16)];
  return day === takenAt(round).slice(0, 10) ? time : `${dayText(day)} ${time}`;
}

/** Flags in words, each once; null for none. */
function detailsOf(flags: readonly Flag[], words: Words): string | null {
  const texts = [...new Set(flags.map((flag) => words.detail(flag)))];
  return texts.length === 0 ? null : texts.join(' ');
}

/** What is to be known of readings, each sentence once; after the numbers of those that it is of where it is not of all. */
function doubtsText(
  readings: readonly { readonly entry: RunEntry; readonly flags: readonly Flag[] }[],
  words: Words,
): string | null {
  const of = new Map<string, RunEntry[]>();
  for (const { entry, flags } of readings) {
    for (const text of new Set(flags.map((flag) => words.detail(flag)))) {
      of.set(text, [...(of.get(text) ?? []), entry]);
    }
  }
  const said = [...of].map(([text, entries]) =>
    entries.length === readings.length
      ? text
      : `${entries.map(({ content }) => pressureWritten(content)).join(', ')}: ${text}`,
  );
  return said.length === 0 ? null : said.join(' ');
}

function notDoneText(signing: ReturnType<typeof signingOf>, words: Words): string | null {
  const said = (signing?.content.signs ?? []).flatMap((one) => {
    if (!('notDone' in one)) return [];
    const { reason, text } = one.notDone;
    const why = reason === 'other' && text !== null ? text : words.sentence(`review.${reason}`);
    return [words.sentence('chart.notDone', { sign: words.sentence(`app.${one.sign}`), reason: why })];
  });
  return said.length === 0 ? null : said.join(' ');
}
