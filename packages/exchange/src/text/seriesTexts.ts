import { type ChartedSeries, isByGeneralRules, NOTHING_CHOSEN } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { meanBeside, seriesMeanText } from './seriesRuleText.js';

/**
 * Every series that stands in a few lines of plain text: what it is and when, its mean by which rule set, how many readings
 * on how many days, what was left out and why, and what is to be done at once. Newest first. What a reader elsewhere could
 * not know stands before each: that nobody here is real, or that nobody has countersigned it.
 *
 * @param dayText a local date (`YYYY-MM-DD`) as its reader writes it
 * @param notices what every file of the book says (INVENTED, SIMULATED, CLASS)
 */
export function seriesTexts(
  series: readonly ChartedSeries[],
  words: Words,
  dayText: (date: string) => string,
  notices: readonly string[],
): string[] {
  return series
    .filter(({ isInError }) => !isInError)
    .map((one) => {
      const before = [...notices, ...(one.isPreliminary ? [words.sentence('handover.isPreliminary')] : [])];
      const lines = linesOf(one, words, dayText).join('\n');
      return before.length === 0 ? lines : `${before.join(', ')}: ${lines}`;
    });
}

function linesOf(series: ChartedSeries, words: Words, dayText: (date: string) => string): string[] {
  const { content, value, from, until, decided, alerts, amended } = series;
  const say = words.sentence;
  const when = { from: dayText(from), until: dayText(until) };
  const left = value.dropped.length;
  const isGeneral = isByGeneralRules(series);
  return [
    say(content.of === 'home' ? 'exchanged.homeFromTo' : 'exchanged.recordingFromTo', when),
    seriesMeanText(content, value, isGeneral, words),
    ...(content.of === 'home'
      ? [say('exchanged.homeMeanOf', { used: value.used, days: value.days ?? 0, left })]
      : [
          say('exchanged.recordingOf', { used: value.used, left }),
          ...periodLines(value, isGeneral ? NOTHING_CHOSEN : series.rules, words),
        ]),
    ...leftOutLines(value.dropped, words),
    ...(decided.length === 0 ? [] : [say('exchanged.decidedByHand', { readings: decided.length })]),
    ...(amended.current.length > 1 ? [say('exchanged.contested')] : []),
    ...value.why.map((one) => words.detail(one)),
    ...alerts.map(({ condition, figures }) =>
      say('exchanged.actNow', { text: words.detail({ code: condition, figures }) }),
    ),
  ];
}

type Value = ChartedSeries['value'];

/** @param rules that the means were made by; null where they are not at hand: then they are told to two decimals */
function periodLines(
  { day, night, counts, dayNightBy }: Value,
  rules: ChartedSeries['rules'],
  words: Words,
): string[] {
  const { ambulatoryRules: limits } = rules ?? {};
  const text = (means: Value['day'], of: 'day' | 'night') => {
    if (means?.systolic == null) return null;
    const part = (mmHg: number | null, name: 'Systolic' | 'Diastolic') =>
      mmHg === null || limits !== undefined
        ? meanBeside(mmHg, limits?.[`${of}${name}`] ?? null, words)
        : words.say.short(mmHg, 2);
    return `${part(means.systolic, 'Systolic')}/${part(means.diastolic, 'Diastolic')}`;
  };
  const [byDay, byNight] = [text(day, 'day'), text(night, 'night')];
  if (counts === null || (byDay === null && byNight === null)) return [];
  const by = words.sentence(dayNightBy === 'diary' ? 'series.byDiary' : 'series.byClock');
  const of = { day: byDay ?? '–', night: byNight ?? '–', dayUsed: counts.day, nightUsed: counts.night, by };
  return [words.sentence('exchanged.dayAndNight', of)];
}

/** Each reason once, with how many readings it left out. */
function leftOutLines(dropped: Value['dropped'], words: Words): string[] {
  const byText = new Map<string, number>();
  for (const one of dropped) {
    const text = words.detail(one);
    byText.set(text, (byText.get(text) ?? 0) + 1);
  }
  return [...byText].map(([reason, readings]) =>
    words.sentence('exchanged.leftOutFor', { readings, reason }),
  );
}
