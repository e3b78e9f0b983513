import { assumptionsOf, protocolVersion, usualOf } from '@evenfall/clinical';
import type { ReadSeries } from '@evenfall/exchange';
import { clockText, dayText, homeFigure, homePage, recordingFigure, recordingPage } from '@evenfall/report';
import type { Words } from '@evenfall/words';
import type { Context } from '../../command.js';
import type { RecordingAnswered } from './ambulatoryAnswer.js';
import type { HomeAnswered } from './homeAnswer.js';
import { officeRows, VERSION_SHOWN } from './homeLines.js';
import { type ActFirst, readFlags, refusedRows } from './seriesOfText.js';
import type { TypedSheets } from './typedSheets.js';
import { type Drawable, headerOf, notesOf } from './withSheets.js';

/** The page and the figure of a series at home. */
export function homeDrawable(answered: HomeAnswered, sheets: TypedSheets, context: Context): Drawable {
  const { read, result, homeRules: rules } = answered;
  const { words } = context;
  const drawn = { readings: read.readings, result, rules };
  return {
    page: () =>
      homePage(
        { ...drawn, ...besideOf(answered, sheets, context), chances: chancesOf(answered, words) },
        words,
      ),
    figure: () => homeFigure(drawn, words),
  };
}

/** The page and the figure of a recording over 24 hours. */
export function recordingDrawable(
  answered: RecordingAnswered,
  sheets: TypedSheets,
  context: Context,
): Drawable {
  const { read, result, ambulatoryRules: rules, dayNight } = answered;
  const { words } = context;
  const drawn = { readings: read.readings, result, rules, dayNight };
  return {
    page: () => recordingPage({ ...drawn, ...besideOf(answered, sheets, context) }, words),
    figure: () => recordingFigure(drawn, words),
  };
}

/** What stands on the page of either, from the file and what was typed beside it. */
function besideOf(
  { read, rules, protocol, first, office }: HomeAnswered | RecordingAnswered,
  sheets: TypedSheets,
  context: Context,
) {
  const { words } = context;
  return {
    header: headerOf(read, sheets, context),
    ruleSet: { id: rules, version: protocolVersion(protocol).slice(0, VERSION_SHOWN) },
    actFirst: actFirstLines(read, first, words),
    refused: refusedRows(read, words).map(({ row, detail }) => ({ line: row, why: detail })),
    notes: notesOf(read),
    settled: readFlags(read, words).map(({ detail }) => detail),
    office: officeRows(office, words).map((row) => row.join(': ')),
  };
}

/** Both numbers about the limit of high, and every chance in words; null where none is given. */
function chancesOf({ probability, known }: HomeAnswered, words: Words) {
  const [first] = probability;
  if (first === undefined) return null;
  const drawn = (['systolic', 'diastolic'] as const).flatMap((component) => {
    const threshold = first.threshold[component];
    const result = usualOf(component, known, threshold);
    return result === null ? [] : [{ component, result, threshold }];
  });
  return {
    drawn,
    rows: probability,
    assumptions: assumptionsOf(known, usualOf('systolic', known, 0)).map((one) => words.detail(one)),
  };
}

/** Each kind of danger once, with its readings and when they were; a row that could not be read by its line. */
function actFirstLines(read: ReadSeries, first: readonly ActFirst[], words: Words): string[] {
  const codes = [...new Set(first.map(({ flag }) => flag.code))];
  return codes.map((code) => {
    const ofCode = first.filter(({ flag }) => flag.code === code) as [ActFirst];
    const pressures = ofCode.slice(0, MOST_NAMED).map(({ row, systolic, diastolic }) => {
      const reading = read.readings.find(({ index }) => read.lines[index - 1] === row);
      const when =
        reading === undefined
          ? words.sentence('report.atLine', { line: row })
          : `${dayText(reading.localDay, words, true)} ${clockText(reading.minuteOfDay, words)}`;
      return `${systolic ?? '-'}/${diastolic ?? '-'} (${when})`;
    });
    const more = ofCode.length - pressures.length;
    const said = [
      ...pressures,
      ...(more > 0 ? [words.sentence('report.andMore', { readings: more })] : []),
    ].join(', ');
    return words.sentence('report.actOn', { pressures: said, detail: words.detail(ofCode[0].flag) });
  });
}

/** How many readings of one danger a page names; the list has them all. */
const MOST_NAMED = 5;
