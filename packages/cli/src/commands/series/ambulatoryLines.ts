import { combinedLoad, DERIVED, periodCategories, type SurgeDefinition } from '@evenfall/clinical';
import {
  fallText,
  loadText,
  loneText,
  periodCategoriesSaid,
  periodLoadText,
  risesSaid,
  riseText,
  stiffnessText,
  wholeText,
} from '@evenfall/report';
import type { Words } from '@evenfall/words';
import { columns } from '../../output/columns.js';
import { editedOf, marksFlags, notesOf, type RecordingAnswered } from './ambulatoryAnswer.js';
import { assumptionsIn } from './homeAnswer.js';
import { chanceRows, meanOfPart, officeLines, ruleRow, targetRows } from './homeLines.js';
import { actFirstRows, leftOutRows, readFlags } from './seriesOfText.js';

/** The answer for people, what is dangerous first. */
export function recordingLines(answered: RecordingAnswered, words: Words): string[] {
  const { result, read, rules, protocol, ambulatoryRules: limits } = answered;
  const note = words.sentence('commandLine.note');
  const categories = periodCategoriesSaid(periodCategories(result, limits), result.pattern, words);
  const lone = loneText(answered.lone, result.judged.whole.mean, words);
  const { scheduled, isPlanSaid, kept, byHand, day, night } = result.counts;
  const by = words.sentence(result.dayNightBy === 'diary' ? 'series.byDiary' : 'series.byClock');
  const of = {
    day: { systolic: limits.daySystolic, diastolic: limits.dayDiastolic },
    night: { systolic: limits.nightSystolic, diastolic: limits.nightDiastolic },
    whole: { systolic: limits.wholeSystolic, diastolic: limits.wholeDiastolic },
  };
  return columns([
    ...actFirstRows(answered.first, words),
    ruleRow('ambulatory', rules, protocol, words),
    [
      words.sentence('series.readings'),
      `${words.sentence('series.kept', { kept: kept - byHand, scheduled, isPlanSaid, byHand, day, night })}; ${by}`,
    ],
    ...leftOutRows(editedOf(answered, words), words),
    ...(lone === null ? [] : [[note, lone]]),
    ...result.why.map((flag) => [note, words.detail(flag)]),
    [
      words.sentence('series.whole'),
      withPulse(meanOfPart(result.judged.whole.mean, of.whole, words), result.all.mean.pulse, words),
    ],
    [
      words.sentence('series.day'),
      withPulse(meanOfPart(result.day.mean, of.day, words), result.day.mean.pulse, words),
    ],
    [
      words.sentence('series.night'),
      withPulse(meanOfPart(result.night.mean, of.night, words), result.night.mean.pulse, words),
    ],
    [words.sentence('series.result'), verdictText(result.high, words)],
    ...(result.pattern === null
      ? []
      : [
          [
            words.sentence('series.pattern'),
            words.sentence('series.consistentWith', {
              names: words.title('ambulatoryPattern', result.pattern),
            }),
          ],
        ]),
    ...(categories === null ? [] : [[words.sentence('series.category'), categories.text]]),
    ...targetRows(answered.target, words),
    ...fallRows(answered, words),
    ...loadRows(answered, words),
    ...wholeLoadRows(answered, words),
    ...(limits.reportsStiffness ? [[words.sentence('series.stiffness'), stiffnessText(result, words)]] : []),
    ...derivedRows(answered, words),
    ...chanceRows(answered.probability, assumptionsIn(answered), words),
    ...officeLines(answered, words),
    ...(result.counts.kept === 0 ? [] : [[note, wholeText(result, limits, words)]]),
    ...(categories?.flags ?? []).map((flag) => [note, words.detail(flag)]),
    ...result.flags.map((flag) => [note, words.detail(flag)]),
    ...notesOf(answered).map((flag) => [note, words.detail(flag)]),
    ...marksFlags(answered, words).map(({ detail }) => [note, detail]),
    ...readFlags(read, words).map(({ detail }) => [note, detail]),
  ]);
}

/** Whether the recording is high by the rule set, as page and PDF say it. */
function verdictText(high: boolean | null, words: Words): string {
  if (high === null) return words.sentence('series.noCategory');
  return words.sentence(high ? 'series.isHigh' : 'series.isNotHigh');
}

function withPulse(pressure: string, pulse: number | null, words: Words): string {
  return words.sentence('series.pressure', { pressure, pulse });
}

/** The fall by night with its class, and the rise after waking where a diary tells when that was. */
function fallRows({ result }: RecordingAnswered, words: Words): string[][] {
  const fall = fallText(result, words);
  const rows: string[][] = fall === null ? [] : [[words.sentence('series.fall'), fall]];
  if (result.surge !== null) {
    const { rises, notes } = risesSaid(result.surge, words);
    const label = (id: SurgeDefinition) =>
      words.sentence(id === 'eveningFall' ? 'series.fall' : 'series.rise');
    rows.push(...rises.map((one) => [label(one.id), riseText(one, words)]));
    rows.push(...notes.map((text) => [words.sentence('commandLine.note'), text]));
  }
  const curve = result.cosinor.systolic.one;
  const [first] = curve?.harmonics ?? [];
  if (curve !== null && first !== undefined) {
    const minutes = Math.round(first.peakHour * 60) % 1440;
    const peak = [minutes / 60, minutes % 60]
      .map((one) => String(Math.floor(one)).padStart(2, '0'))
      .join(':');
    const { mesor } = curve;
    rows.push([
      words.sentence('series.curve'),
      words.sentence('series.curveOf', { mesor, amplitude: first.amplitude, peak }),
    ]);
  }
  return rows;
}

function loadRows({ result, ambulatoryRules: rules }: RecordingAnswered, words: Words): string[][] {
  return (['day', 'night'] as const).flatMap((period) => {
    const text = periodLoadText(period, result.load[period], rules, words);
    return text === null ? [] : [[words.sentence('series.load'), text]];
  });
}

/** The load of 24 hours, with the limits that it is over. */
function wholeLoadRows(
  { result, read, dayNight, ambulatoryRules: rules }: RecordingAnswered,
  words: Words,
): string[][] {
  const text = loadText(combinedLoad(read.readings, result.edited, dayNight, rules), rules, words);
  return text === null ? [] : [[words.sentence('series.load'), text]];
}

/** Mean arterial and pulse pressure of each period, with how far its readings lie apart. */
function derivedRows({ result: { all, day, night }, spreads }: RecordingAnswered, words: Words): string[][] {
  const periods = { whole: all, day, night };
  return DERIVED.flatMap((derived) => {
    const said = (['whole', 'day', 'night'] as const).flatMap((period) => {
      const mean = periods[period][derived];
      const { sd, least, most } = spreads[period][derived];
      return mean === null || least === null || most === null
        ? []
        : [words.sentence('series.derivedOf', { period: words.title('period', period), mean, sd, least, most })]; // biome-ignore format: one thought
    });
    return said.length === 0 ? [] : [[words.sentence(`report.${derived}`), said.join('; ')]];
  });
}
