import {
  cvPercent,
  type GroupVariability,
  groupVariability,
  type MeanAndSd,
  type Parsed,
  type Refusal,
  refusal,
  VARIABILITY_FITS,
  VARIABILITY_RULE,
  type VariabilityFit,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { Json } from '../answer.js';
import { command } from '../command.js';
import { eachFile, ofText } from '../input/eachFile.js';
import { jsonOf } from '../input/jsonOf.js';
import { columns } from '../output/columns.js';
import { computedBy } from '../output/computedBy.js';

const COMPONENTS = ['systolic', 'diastolic'] as const;
type Component = (typeof COMPONENTS)[number];

/** Whose variation it is: of readings of a recording, or of the means of days at home. */
type Kind = 'home' | 'ambulatory';

/** One answer of `home` or `ambulatory` with both numbers; the file it was made of, where it says so. */
type Person = Readonly<Record<Component, MeanAndSd>> & {
  readonly file: string | null;
  readonly line: number;
};
type Left = { readonly line: number; readonly file: string | null; readonly reason: LeftCode };
type LeftCode = 'refused-file' | 'not-valid-series' | 'no-spread';

type Group = { readonly of: Kind; readonly people: readonly Person[]; readonly left: readonly Left[] };

/** `evenfall variability`: how the variation of many people's series goes with their mean, from answers of `home` or `ambulatory`. */
export const variability = command<{ readonly files: readonly string[] }>({
  name: 'variability',
  summary: 'commands.variability',
  options: [],
  operands: { hint: 'FILE|-', least: 1, most: 1, expected: 'a-file' },

  parse: (_, files) => ({ ok: true, value: { files } }),

  run: ({ files }, context) =>
    eachFile(
      files,
      {
        of: ofText<Group>(groupOf),
        json: (group) => jsonOfGroup(group, context.version, context.words),
        lines: (group) => linesOf(group, context.words),
      },
      context,
    ),
});

/** The answers of a text, one JSON object a line. */
function groupOf(text: string): Parsed<Group> {
  const refusals: Refusal[] = [];
  const people: Person[] = [];
  const left: Left[] = [];
  let of: Kind | null = null;
  for (const [at, row] of text.split('\n').entries()) {
    if (row.trim() === '') continue;
    const line = at + 1;
    const parsed = jsonOf(row);
    const answer = parsed.ok ? objectOf(parsed.value) : null;
    if (answer === null) {
      refusals.push(refusal('', 'missing', 'json-text', null, { line }));
      continue;
    }
    const file = typeof answer.file === 'string' ? answer.file : null;
    if (Array.isArray(answer.problems)) {
      left.push({ line, file, reason: 'refused-file' });
      continue;
    }
    const kind = kindOf(answer);
    if (kind === null || (of !== null && kind !== of)) {
      const code = kind === null ? 'missing' : 'contradicts';
      refusals.push(
        refusal('', code, kind === null ? 'series-answer' : 'series-of-one-kind', null, { line }),
      );
      continue;
    }
    of = kind;
    const [systolic, diastolic] = COMPONENTS.map((one) => meanAndSd(answer, kind, one));
    if (answer.valid !== true) left.push({ line, file, reason: 'not-valid-series' });
    else if (systolic == null || diastolic == null) left.push({ line, file, reason: 'no-spread' });
    else people.push({ file, line, systolic, diastolic });
  }
  if (refusals.length > 0) return { ok: false, refusals };
  if (of === null) return { ok: false, refusals: [refusal('', 'missing', 'series-answer', null)] };
  return { ok: true, value: { of, people, left } };
}

type Answered = Readonly<Record<string, unknown>>;

function objectOf(value: unknown): Answered | null {
  return typeof value === 'object' && value !== null && !Array.isArray(value) ? (value as Answered) : null;
}

function kindOf(answer: Answered): Kind | null {
  if (Array.isArray(answer.dayMeans) && objectOf(answer.dayToDay) !== null) return 'home';
  return objectOf(answer.whole) !== null && objectOf(answer.sd) !== null ? 'ambulatory' : null;
}

/** Of a recording its readings over 24 hours; at home the means of its days. Null where it has no spread. */
function meanAndSd(answer: Answered, kind: Kind, component: Component): MeanAndSd | null {
  const at = (...path: readonly string[]) =>
    path.reduce<unknown>((value, key) => objectOf(value)?.[key], answer);
  const mean =
    kind === 'ambulatory' ? at('whole', 'arithmetic', component) : meanOfDays(answer.dayMeans, component);
  const sd = kind === 'ambulatory' ? at('sd', component) : at('dayToDay', 'sd', component);
  return typeof mean === 'number' && typeof sd === 'number' && mean > 0 && sd > 0 ? { mean, sd } : null;
}

function meanOfDays(days: unknown, component: Component): number | null {
  const known = (Array.isArray(days) ? days : [])
    .map((day) => objectOf(day)?.[component])
    .filter((one) => typeof one === 'number');
  return known.length === 0 ? null : known.reduce((sum, one) => sum + one, 0) / known.length;
}

type Fits = Readonly<Record<VariabilityFit, GroupVariability | null>>;

function fitsOf({ people }: Group, component: Component): Fits {
  const all = people.map((one) => one[component]);
  const [logLog, leastSquares] = VARIABILITY_FITS.map((by) => groupVariability(all, by));
  return { 'log-log': logLog ?? null, 'least-squares': leastSquares ?? null };
}

const KEYS = { 'log-log': 'logLog', 'least-squares': 'leastSquares' } as const;

function jsonOfGroup(group: Group, version: string, words: Words): Json {
  const fits = { systolic: fitsOf(group, 'systolic'), diastolic: fitsOf(group, 'diastolic') };
  const curve = (found: GroupVariability | null) =>
    found === null
      ? null
      : { x: found.x, a: found.a, mean: found.mean, rest: found.rest, correlation: found.correlation };
  const byFit = <T>(of: (by: VariabilityFit) => T) =>
    Object.fromEntries(VARIABILITY_FITS.map((by) => [KEYS[by], of(by)]));
  return {
    of: group.of,
    people: group.people.length,
    systolic: byFit((by) => curve(fits.systolic[by])),
    diastolic: byFit((by) => curve(fits.diastolic[by])),
    each: group.people.map((person, place) => ({
      file: person.file,
      line: person.line,
      ...Object.fromEntries(
        COMPONENTS.map((component) => {
          const { mean, sd } = person[component];
          const vim = byFit((by) => fits[component][by]?.each[place] ?? null);
          return [component, { mean, sd, cvPercent: cvPercent(mean, sd), vim }];
        }),
      ),
    })),
    left: group.left.map((one) => ({ ...one, detail: words.detail({ code: one.reason, figures: {} }) })),
    computedBy: computedBy(version, VARIABILITY_RULE, null),
  };
}

function linesOf(group: Group, words: Words): string[] {
  const say = words.sentence;
  const number = (value: number) => words.say.number(value, 2);
  const fits = { systolic: fitsOf(group, 'systolic'), diastolic: fitsOf(group, 'diastolic') };
  return columns([
    [
      say('series.readings'),
      say(group.of === 'home' ? 'series.groupHome' : 'series.groupRecordings', {
        people: group.people.length,
      }),
    ],
    ...group.left.map(({ line, file, reason }) => [
      say('series.leftOut'),
      say('series.lines', {
        lines: file ?? String(line),
        count: 1,
        detail: words.detail({ code: reason, figures: {} }),
      }),
    ]),
    ...COMPONENTS.map((component) => {
      const found = fits[component]['log-log'];
      return [
        say(`series.${component}`),
        found === null
          ? say('series.noGroup')
          : say('series.groupOf', {
              x: found.x,
              mean: found.mean,
              correlation: found.correlation ?? 0,
            }),
      ];
    }),
    ...group.people.map((person, place) => [
      person.file ?? String(person.line),
      COMPONENTS.map((component) =>
        say('series.vimOf', {
          component: say(`report.${component}`),
          mean: number(person[component].mean),
          sd: number(person[component].sd),
          vim: found(fits[component]['log-log'], place, number),
        }),
      ).join('; '),
    ]),
    [say('commandLine.note'), say('series.groupNote')],
  ]);
}

function found(group: GroupVariability | null, place: number, number: (value: number) => string): string {
  const vim = group?.each[place];
  return vim === undefined ? '-' : number(vim);
}
