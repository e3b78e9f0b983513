import {
  actFirstGroups,
  actFirstIn,
  completedYears,
  isChild,
  marksBeside,
  upright,
} from '@evenfall/clinical';
import {
  type AgentStanding,
  answeredHome,
  answeredRecording,
  byHandOf,
  type ChartedSeries,
  type DiaryAsked,
  type Identity,
  type InForce,
  type OfficeLeftOut,
  type OfficeNear,
  readingsAdded,
  type SeriesContent,
  type StoredEntry,
  seriesAbout,
  sleepPutRight,
  standingOf,
  timesSaid,
  visitsMean,
} from '@evenfall/record';
import {
  clockText,
  dayText,
  homePage,
  loneText,
  officeNoneText,
  officeText,
  type ReportPage,
  recordingPage,
  type SeriesSaid,
  saidOnPage,
  sleepText,
} from '@evenfall/report';
import { askedText, type Words } from '@evenfall/words';

/** What stands on the page of a charted series besides the series. */
export type PageAbout = {
  readonly identity: Identity | null;
  /** The id of the person. */
  readonly person: string;
  /** The rules of the version that the series names. */
  readonly rules: InForce;
  readonly office: OfficeNear | null;
  /** The diary that came back with it; null for none. */
  readonly diary: DiaryAsked | null;
  /** Why no office round is taken, where some are near. */
  readonly officeLeft: readonly OfficeLeftOut[];
  /** Whether the stiffness index of a recording is asked for, whatever its rules say. */
  readonly asksStiffness: boolean;
  /** Who made entries of the person. */
  readonly agents: readonly AgentStanding[];
  readonly isInvented: boolean;
  /** When the page is made, as it is to be shown, and by which program. */
  readonly madeAt: string;
  readonly program: string;
};

/** A series of the record as a page to print: with what hands decided of it, and why. */
export function chartedPage(series: ChartedSeries, about: PageAbout, words: Words): ReportPage {
  const { content } = series;
  const { rules, office } = about;
  const asked = { content, byHand: byHandOf(series.decided), rules, office };
  if (content.of === 'home') {
    const answered = answeredHome({ ...asked, diary: about.diary });
    const said = saidOf(series, answered, about, words);
    return homePage({ ...answered, rules: rules.homeRules, ...saidOnPage(said, words) }, words);
  }
  const answered = answeredRecording(asked, about.asksStiffness);
  const said = saidOf(series, answered, about, words);
  return recordingPage({ ...answered, ...saidOnPage(said, words) }, words);
}

type Answered = ReturnType<typeof answeredHome> | ReturnType<typeof answeredRecording>;

function saidOf(series: ChartedSeries, answered: Answered, about: PageAbout, words: Words): SeriesSaid {
  const { content } = series;
  const { facts, refused, computedBy } = content;
  const { readings, office, beside, usual } = answered;
  const rows = [
    ...readings.map((reading) => ({ ...pressureOf(reading), pulse: reading.pulse, reading, line: null })),
    ...refused.map((row) => ({ ...pressureOf(row), pulse: null, reading: null, line: row.line })),
  ].map(upright);
  const found = actFirstIn<(typeof rows)[number]>(
    rows,
    facts.isPregnant === true,
    isChild(facts.ageMonths === null ? null : completedYears(facts.ageMonths)),
  );
  const alerts = series.alerts.map((alert) => ({ ...alert, code: alert.condition }));
  const none = officeNoneText(about.officeLeft, words);
  const marks = answered.of === 'home' ? null : marksBeside(readings, answered.dayNight);
  const lone =
    answered.of === 'home' ? null : loneText(answered.lone, answered.result.judged.whole.mean, words);
  const isTyped = content.readings.length > 0 && content.readings.every(({ how }) => how === 'typed');
  const irregular = content.readings.filter((one) => one.irregular === true).length;
  return {
    header: headerOf(content, about, words),
    ruleSet:
      computedBy.preset === null ? null : { id: computedBy.preset, version: computedBy.presetVersion ?? '' },
    before: [
      ...(series.isInError ? [words.sentence('away.inError')] : []),
      ...(series.isPreliminary ? [words.sentence('away.preliminary')] : []),
    ],
    first: actFirstGroups(rows, found, alerts),
    asked: content.features === null ? null : askedText(content.features, words),
    refused: refused.map(({ line, got }) => ({
      line,
      why: `${words.sentence('away.asItStood')}: “${got ?? ''}”`,
    })),
    beside: besideOf(series, words),
    target: answered.target,
    about: timesSaid(content.readings),
    closed: {
      lines: closedBy(series, about.agents, words),
      isAll: series.open.length === 0 && series.closed.length > 0,
    },
    signed: [
      ...broughtInBy(series, about.agents, words),
      ...countersignedBy(series, about.agents, words),
      ...sleepPutRightBy(series, about.agents, words),
    ],
    settled: [
      ...(lone === null ? [] : [lone]),
      ...(content.note === null
        ? []
        : [words.sentence('report.line', { label: words.sentence('away.note'), text: `“${content.note}”` })]),
      ...(isTyped ? [words.sentence('away.allTyped')] : []),
      ...(irregular === 0 ? [] : [words.sentence('series.irregularReadings', { readings: irregular })]),
      ...(marks === null ? [] : [words.sentence('series.marksNotUsed', marks)]),
    ],
    office:
      office === null || beside === null
        ? none === null
          ? null
          : { was: [none], beside: null }
        : { was: Object.values(officeText(office, beside.limits, words)), beside },
    usual: usual === null ? null : { ...usual, office: visitsMean(office) },
  };
}

/** Whom somebody told of what was to be acted on, when, and what was said back. */
function closedBy({ closed }: ChartedSeries, agents: readonly AgentStanding[], words: Words): string[] {
  return closed.map((entry) => {
    const { conditions, toldWhom, toldAt, saidBack } = entry.content;
    return words.sentence('chart.closedSays', {
      conditions: conditions.map((one) => words.title('condition', one)).join(', '),
      whom: toldWhom,
      at: signedAs(entry, toldAt.at, agents, words).at,
      said: saidBack,
      who: signedAs(entry, toldAt.at, agents, words).who,
    });
  });
}

/** Who brought a series in and when, and who added readings since. */
function broughtInBy({ amended }: ChartedSeries, agents: readonly AgentStanding[], words: Words): string[] {
  const story = amended.story.filter((one) => one.kind === 'series');
  const putRight = new Set(sleepPutRight(amended.story).map(({ entry }) => entry.id));
  return story.flatMap((entry) => {
    const said = signedAs(entry, entry.writtenAt, agents, words);
    const readings = readingsAdded(entry, story);
    if (readings === null) return [words.sentence('away.broughtIn', said)];
    if (putRight.has(entry.id)) return [];
    return [words.sentence('away.addedTo', { ...said, readings })];
  });
}

/** Who said what of a learner's series, and when. */
function countersignedBy(
  { countersigned }: ChartedSeries,
  agents: readonly AgentStanding[],
  words: Words,
): string[] {
  return countersigned.map((entry) => {
    const { agrees, note } = entry.content;
    const said = words.sentence(agrees ? 'chart.countersigned' : 'chart.notAgreed');
    const { who, at } = signedAs(entry, entry.measuredAt.at, agents, words);
    return [`${said} ${who}, ${at}`, ...(note === null ? [] : [`“${note}”`])].join(': ');
  });
}

/** Who put the hours of sleep of a recording right, and when, from what, and why. */
function sleepPutRightBy(
  { amended }: ChartedSeries,
  agents: readonly AgentStanding[],
  words: Words,
): string[] {
  return sleepPutRight(amended.story).map(({ entry, before, after }) =>
    words.sentence('away.sleepWasPutRight', {
      ...signedAs(entry, entry.writtenAt, agents, words),
      before: sleepText(before, words),
      after: sleepText(after, words),
      why: entry.amends?.text ?? '',
    }),
  );
}

/** Who signed something, in what standing, and when by the clock of that place. */
function signedAs(
  entry: StoredEntry,
  at: string,
  agents: readonly AgentStanding[],
  words: Words,
): { who: string; at: string } {
  const name = agents.find(({ id }) => id === entry.agent)?.name ?? words.sentence('chart.unknownAgent');
  const standing = standingOf(entry, agents);
  const [hours = 0, minutes = 0] = at.slice(11, 16).split(':').map(Number);
  return {
    who:
      standing === null
        ? name
        : words.sentence('chart.by', { who: name, role: words.sentence(`roles.${standing}`) }),
    at: `${dateText(at.slice(0, 10), words)} ${clockText(60 * hours + minutes, words)}`,
  };
}

function pressureOf({ systolic, diastolic }: { systolic: number | null; diastolic: number | null }) {
  return { systolic, diastolic };
}

/** Whose a series is and how it was taken, as it stands at the head of a page. */
export function headerOf(
  content: SeriesContent,
  { identity, person, madeAt, program, isInvented }: PageAbout,
  words: Words,
): SeriesSaid['header'] {
  const { devices, arms, zones } = seriesAbout(content);
  const { treated } = content;
  const all = (said: readonly string[]) => (said.length === 0 ? null : said.join(', '));
  return {
    name: identity?.name ?? null,
    born: identity?.birthDate == null ? null : dateText(identity.birthDate, words),
    number: identity?.number ?? null,
    identifier: identity?.number ?? person,
    device: all(devices),
    arm: all(arms.map((arm) => words.sentence(`facts.${arm}`))),
    medicines:
      treated === null ? null : words.sentence(treated ? 'report.medicineTaken' : 'report.medicineNone'),
    zone: all(zones),
    madeAt,
    program,
    isInvented,
  };
}

/** A local date `YYYY-MM-DD` as the reader wants dates. */
export function dateText(date: string, words: Words): string {
  return dayText(Date.parse(`${date}T00:00:00Z`) / DAY_MS, words);
}

const DAY_MS = 86_400_000;

const CLOCK_SAID = { skipped: 'series.clockSkipped', twice: 'series.clockTwice' } as const;

/** What a hand decided of a reading, and what came beside it, by its place from 1. */
function besideOf({ content, decided, value }: ChartedSeries, words: Words): Map<number, string[]> {
  const said = new Map<number, string[]>();
  const isMixed = new Set(content.readings.map(({ how }) => how)).size > 1;
  for (const [
    place,
    { how, note, asleep, irregular, clock, mended, startedByHand },
  ] of content.readings.entries()) {
    const byHand = decided.find(({ index }) => index === place + 1);
    // That a hand took it out is why it is left out: then only the reason is still to be said.
    const isSaid =
      byHand?.decision === 'out' &&
      value.dropped.some(({ index, code }) => index === place + 1 && code === 'rejected');
    const all = [
      ...(byHand === undefined
        ? []
        : [
            words.sentence(
              isSaid ? 'report.reasonWas' : byHand.decision === 'out' ? 'away.takenOut' : 'away.putBack',
              {
                text: byHand.reason,
              },
            ),
          ]),
      ...(isMixed && how === 'typed' ? [words.sentence('away.wasTyped')] : []),
      ...(asleep === true ? [words.sentence('away.wasAsleep')] : []),
      ...(irregular === true ? [words.sentence('series.irregularMark')] : []),
      ...(startedByHand === true ? [words.sentence('series.startedByHandMark')] : []),
      ...(clock === null ? [] : [words.sentence(CLOCK_SAID[clock])]),
      ...(mended === null ? [] : [words.sentence('away.putRight', { text: mended })]),
      ...(note === null ? [] : [`“${note}”`]),
    ];
    if (all.length > 0) said.set(place + 1, all);
  }
  return said;
}
