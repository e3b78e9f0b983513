import {
  armsBeside,
  type Flag,
  isCategoryHeldBack,
  isCategoryOfLow,
  isLowForScore,
  NO_ROUND_NOTES,
  needsBeside,
  type Recheck,
  type RoundNotes,
  rechecksBeside,
  standingBeside,
} from '@evenfall/clinical';
import { laterBy, type RoundValueKept } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { timeText } from '../app/times.js';
import { Flags } from '../parts/Flags.js';
import { Folded } from '../parts/Folded.js';

type ResultBlockProps = {
  readonly value: RoundValueKept;
  /** What is said beside it and is no part of it; absent where nothing is. */
  readonly notes?: RoundNotes;
  /** Whether it is the only one on its page. */
  readonly isLandmark?: boolean;
  /** What stands above it in the same words, and is not said a second time. */
  readonly said?: readonly Flag[];
  /** When the last reading was taken, RFC 3339, from which the times of what is to be looked at again count; absent where they stand elsewhere. */
  readonly readAt?: string | null;
};

/** What the protocol makes of a round: average, category, score, arms, standing test and rechecks. */
export function ResultBlock({
  value,
  notes = NO_ROUND_NOTES,
  isLandmark = false,
  said = [],
  readAt = null,
}: ResultBlockProps) {
  const { words } = useApp();
  const lines = resultLines(value, words, notes)
    .map((line) => (line.isRechecks ? { ...line, text: dueText(value, readAt, words) } : line))
    .map((line) => ({ ...line, flags: line.flags.filter((flag) => !isSaid(flag, said)) }))
    .filter(({ text, flags }) => text !== '' || flags.length > 0);
  if (lines.length === 0) return null;
  // On the review what asks for nothing is looked at when asked for; in the chart all of it stands.
  const folded = isLandmark ? lines.filter(({ isPlain, flags }) => isPlain && flags.length === 0) : [];
  return (
    <section className="result-block" aria-label={isLandmark ? words.sentence('result.title') : undefined}>
      {isLandmark ? <h2>{words.sentence('result.title')}</h2> : <h4>{words.sentence('result.title')}</h4>}
      <Lines lines={lines.filter((line) => !folded.includes(line))} />
      {folded.length === 0 ? null : (
        <Folded
          summary={words.sentence('result.furtherNumbers')}
          of={folded.map(({ name }) => name).join(', ')}
        >
          <Lines lines={folded} />
        </Folded>
      )}
    </section>
  );
}

function Lines({ lines }: { readonly lines: readonly ResultLine[] }) {
  return (
    <dl className="result-lines">
      {lines.map(({ name, text, flags, isFlagFirst = false }) => (
        <div key={name}>
          <dt>{name}</dt>
          <dd>
            {isFlagFirst ? null : text}
            <Flags flags={flags} />
            {isFlagFirst ? <p>{text}</p> : null}
          </dd>
        </div>
      ))}
    </dl>
  );
}

type ResultLine = {
  readonly name: string;
  readonly text: string;
  readonly flags: readonly Flag[];
  /** A number that was worked out of others and asks for nothing by itself. */
  readonly isPlain: boolean;
  /** Whether its flags are read before it: by itself it would read as if all were well. */
  readonly isFlagFirst?: boolean;
  /** Whether it is of what is to be looked at again. */
  readonly isRechecks?: boolean;
};

/** Whether the same is said already. */
function isSaid({ code, figures }: Flag, said: readonly Flag[]): boolean {
  return said.some((one) => one.code === code && isSameFigures(one.figures, figures));
}

function isSameFigures(one: Flag['figures'], other: Flag['figures']): boolean {
  return Object.entries(one).every(([key, value]) => other[key] === value);
}

/** When the pressure is to be looked at again, by the clock of the place: of the first one that is due. */
function dueText({ rechecks }: RoundValueKept, readAt: string | null, words: Words): string {
  const [first] = rechecks;
  if (first === undefined || readAt === null || first.fromSeconds === 0) return '';
  const clock = (seconds: number) => timeText(laterBy(readAt, seconds).slice(11, 16), words);
  const from = clock(first.fromSeconds);
  return first.withinSeconds === null
    ? words.sentence('result.dueFrom', { from })
    : words.sentence('result.dueFromBy', { from, by: clock(first.withinSeconds) });
}

/** The result of a round as lines of a name and a text, in the order in which they are read. */
export function resultLines(
  value: RoundValueKept,
  words: Words,
  notes: RoundNotes = NO_ROUND_NOTES,
): ResultLine[] {
  const line = (name: string, text: string, flags: readonly Flag[] = []): ResultLine => ({
    name,
    text,
    flags,
    isPlain: false,
  });
  const plain = (name: string, text: string, flags: readonly Flag[] = []): ResultLine => ({
    ...line(name, text, flags),
    isPlain: true,
  });
  const { pressure, category, earlyWarning, arms, standing, rechecks } = value;
  // What goes by the newest reading says so, wherever an average stands beside it.
  const isNewest =
    notes.newestFirst !== null && !(pressure?.used.length === 1 && pressure.used[0] === notes.newestFirst);
  const isOfLast = pressure?.systolic == null || isNewest;
  const byLast = (isOfPressure: boolean) =>
    isOfPressure && isNewest && pressure?.systolic != null ? `, ${words.sentence('result.byLast')}` : '';
  // A score that asks for nothing stands after whatever asks for something.
  const score =
    earlyWarning === null
      ? []
      : [
          line(
            words.sentence('result.earlyWarning'),
            `${
              earlyWarning.total === null
                ? words.sentence('result.atLeast', {
                    points: earlyWarning.atLeast,
                    parts: earlyWarning.missing.map((part) => words.title('scorePart', part)),
                  })
                : words.sentence('result.points', { points: earlyWarning.total })
            }${byLast(earlyWarning.parts.systolic != null)}. ${words.sentence('result.college')}`,
            [...(earlyWarning.response === null ? [] : [earlyWarning.response]), ...earlyWarning.flags],
          ),
        ];
  const mmHgKey = isOfLast ? 'result.mmHgOfLast' : 'result.mmHg';
  return [
    ...(pressure === null ? [] : [averageLine(pressure, value, words)]),
    ...(category === null
      ? []
      : [
          {
            ...line(
              words.sentence('result.category'),
              isCategoryOfLow(value)
                ? words.sentence('result.noneOfLow')
                : `${categoryText(category, pressure, words)}${saysNothingOfLow(value, words)}`,
              [...notes.category, ...category.why, ...category.flags],
            ),
            isFlagFirst: notes.category.length > 0 || isCategoryHeldBack(value),
          },
        ]),
    ...(value.meanPressureMmHg === null
      ? []
      : [
          plain(
            words.sentence('result.meanPressure'),
            words.sentence(mmHgKey, { mmHg: value.meanPressureMmHg }),
          ),
        ]),
    ...(value.pulsePressureMmHg === null
      ? []
      : [
          plain(
            words.sentence('result.pulsePressure'),
            words.sentence(mmHgKey, { mmHg: value.pulsePressureMmHg }),
          ),
        ]),
    ...score.filter(({ flags }) => flags.length > 0),
    ...value.scores.map(({ of, value: made, flags }) =>
      plain(
        words.title('score', of),
        made === null
          ? words.sentence('result.notWhole')
          : `${words.say.short(made, 2)}${byLast(of !== 'body-mass-index')}`,
        flags,
      ),
    ),
    ...(arms === null ? [] : [line(words.sentence('result.arms'), '', armsBeside(arms.why, notes.arms))]),
    ...(standing === null
      ? []
      : [
          line(
            words.sentence('result.standing'),
            '',
            standingBeside(standing, notes.standing, alertsOf(value)),
          ),
        ]),
    ...(rechecks.length === 0
      ? []
      : [
          {
            ...line(
              words.sentence('result.rechecks'),
              '',
              rechecksBeside(rechecks as readonly Recheck[], notes.repeat),
            ),
            isRechecks: true,
          },
        ]),
    ...score.filter(({ flags }) => flags.length === 0),
  ];
}

/** The conditions of a round that somebody must act on: they stand before what it comes to. */
function alertsOf({ actNow }: RoundValueKept): readonly string[] {
  return actNow.map(({ condition }) => condition);
}

function averageLine(
  pressure: NonNullable<RoundValueKept['pressure']>,
  value: RoundValueKept,
  words: Words,
): ResultLine {
  const name = words.sentence('result.average');
  const { systolic, diastolic, used, rule, isGeneral, flags, why } = pressure;
  const needs = needsBeside({ ...value, needs: pressure.needs });
  if (systolic === null || diastolic === null)
    return {
      name,
      text: words.sentence('result.noAverage'),
      flags: [...saidOnce(why, needs), ...needs, ...flags],
      isPlain: false,
    };
  const shown = value.category?.shown ?? null;
  const numbers = `${shown?.systolic ?? words.say.number(systolic)}/${shown?.diastolic ?? words.say.number(diastolic)}`;
  const by = words.sentence(isGeneral ? 'result.byGeneral' : 'result.by', {
    text: guidelineIn(words.title('readings', rule)),
  });
  const of = words.sentence('result.ofReadings', { readings: used.length });
  return { name, text: `${numbers} ${of}, ${by}`, flags: [...needs, ...flags], isPlain: false };
}

/** A rule goes by the name of its guideline, which its title begins with; how it averages stands in the protocol. */
function guidelineIn(title: string): string {
  return title.split(':')[0] ?? title;
}

/** What is still needed says already that there was too little. */
function saidOnce(why: readonly Flag[], needs: readonly Flag[]): readonly Flag[] {
  return needs.length === 0 ? why : why.filter(({ code }) => code !== 'too-few');
}

/**
 * That a category is one of high pressures, where the score of the same round gives points for a low one; a flag that says
 * so already says more.
 */
function saysNothingOfLow({ category, earlyWarning }: RoundValueKept, words: Words): string {
  const systolic = category?.shown.systolic ?? null;
  if (category === null || systolic === null || earlyWarning === null) return '';
  if (!isLowForScore(Number(systolic)) || category.flags.some(({ code }) => code === 'very-low')) return '';
  return ` ${words.sentence('result.highAlone')}`;
}

/** A category says what it stands on: an average, one reading, or one of its numbers alone. */
function categoryText(
  category: NonNullable<RoundValueKept['category']>,
  pressure: RoundValueKept['pressure'],
  words: Words,
): string {
  const { shown, guideline } = category;
  const id = category.category ?? category.atLeast;
  if (id === null) return words.sentence('result.notPlaced');
  const isAverage = pressure !== null && pressure.systolic !== null;
  const key =
    category.category === null ? 'result.atLeastIn' : isAverage ? 'result.fallsIn' : 'result.fallsInOne';
  return words.sentence(key, {
    pressure:
      category.category === null
        ? `${words.title('scorePart', shown.systolic === null ? 'diastolic' : 'systolic')} ${shown.systolic ?? shown.diastolic}`
        : `${shown.systolic}/${shown.diastolic}`,
    category: words.title('category', id),
    guideline: words.title('scheme', guideline),
    highestOf: category.highestOf ?? 1,
  });
}
