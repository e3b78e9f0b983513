import { actFirstGroups, protocolVersion } from '@evenfall/clinical';
import {
  homeFigure,
  homePage,
  recordingFigure,
  recordingPage,
  type SeriesSaid,
  saidOnPage,
} from '@evenfall/report';
import type { Context } from '../../command.js';
import { marksFlags, type RecordingAnswered } from './ambulatoryAnswer.js';
import { askedOf, type HomeAnswered } from './homeAnswer.js';
import { officeFar, officeWas } from './homeLines.js';
import { readFlags, refusedRows } from './seriesOfText.js';
import type { TypedSheets } from './typedSheets.js';
import { besideOf, type Drawable, headerOf } from './withSheets.js';

/** The page and the figure of a series at home. */
export function homeDrawable(answered: HomeAnswered, sheets: TypedSheets, context: Context): Drawable {
  const { read, result, homeRules: rules, known, thresholds, visits } = answered;
  const { words } = context;
  const drawn = { readings: read.readings, result, rules };
  const said = { ...saidOf(answered, sheets, context), usual: { known, thresholds, office: visits } };
  return {
    page: () => homePage({ ...drawn, asked: askedOf(answered), ...saidOnPage(said, words) }, words),
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
    page: () => {
      const said = { ...saidOf(answered, sheets, context), usual: usualAsked(answered) };
      const settled = [...marksFlags(answered, words).map(({ detail }) => detail), ...said.settled];
      return recordingPage({ ...drawn, ...saidOnPage({ ...said, settled }, words) }, words);
    },
    figure: () => recordingFigure(drawn, words),
  };
}

function usualAsked({ known, thresholds, visits }: RecordingAnswered): SeriesSaid['usual'] {
  return thresholds.length === 0 ? null : { known, thresholds, office: visits };
}

/** What the page of either says, from the file and what was typed beside it. */
function saidOf(
  { read, rules, protocol, first, office, visited, tooFar, target }: HomeAnswered | RecordingAnswered,
  sheets: TypedSheets,
  context: Context,
): SeriesSaid {
  const { words } = context;
  const far = officeFar(tooFar, words);
  const dangerous = new Map(
    first.map(({ row: line, systolic, diastolic }) => {
      const reading = read.readings.find(({ index }) => read.lines[index - 1] === line) ?? null;
      return [line, { line, systolic, diastolic, pulse: reading?.pulse ?? null, reading }];
    }),
  );
  const found = first.flatMap(({ row: line, flag }) => {
    const row = dangerous.get(line);
    return row === undefined ? [] : [{ row, flag }];
  });
  const left =
    far === null
      ? []
      : [words.sentence('report.line', { label: words.sentence('series.office'), text: far })];
  return {
    header: headerOf(read, sheets, context),
    ruleSet: { id: rules, version: protocolVersion(protocol) },
    before: [],
    first: actFirstGroups([...dangerous.values()], found, []),
    asked: null,
    refused: refusedRows(read, words).map(({ row, detail }) => ({ line: row, why: detail })),
    beside: besideOf(read, words),
    settled: readFlags(read, words).map(({ detail }) => detail),
    office:
      office === null && far === null
        ? null
        : { was: [...officeWas({ office, visited }, words), ...left], beside: office },
    target,
    usual: null,
  };
}
