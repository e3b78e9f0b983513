import {
  answeredHome,
  answeredRecording,
  byHandOf,
  type ChartedSeries,
  type OneOfTwo,
  timesSaid,
  twoSeries,
} from '@evenfall/record';
import {
  besidePage,
  type FigureAt,
  homeFigure,
  type ReportPage,
  recordingFigure,
  type SideOfTwo,
} from '@evenfall/report';
import type { Words } from '@evenfall/words';
import { dateText, headerOf, type PageAbout } from './chartedPage.js';

/** Two series of a person as one page to print, the earlier first: before and after something was changed. */
export function chartedBeside(
  one: ChartedSeries,
  other: ChartedSeries,
  aboutOf: (series: ChartedSeries) => PageAbout,
  words: Words,
): ReportPage {
  const { first, second, compared } = twoSeries(one, other, (series) => aboutOf(series).rules);
  const named = ({ series, ...rest }: OneOfTwo): SideOfTwo => ({ ...rest, name: nameOf(series, words) });
  const sides = [first, second].map((of, k) => ({ series: of.series, of: named(of), id: `series${k}` }));
  const zones = [first, second].map(({ series }) => headerOf(series.content, aboutOf(series), words).zone);
  const header = headerOf(second.series.content, aboutOf(second.series), words);
  return besidePage(
    {
      first: named(first),
      second: named(second),
      compared,
      header: { ...header, zone: zones[0] === zones[1] ? header.zone : null },
      before: sides.flatMap(({ series, of }) => beforeOf(series, of.name, words)),
      figures: sides.map(({ series, of, id }) => ({
        of,
        figure: figureOf(series, aboutOf(series), id, words),
      })),
    },
    words,
  );
}

function nameOf({ content, from, until }: ChartedSeries, words: Words): string {
  return words.sentence(content.of === 'home' ? 'away.homeTitle' : 'away.recordingTitle', {
    from: dateText(from, words),
    until: dateText(until, words),
  });
}

/** That something of a series is still to be acted on, or that it is a learner's alone. */
function beforeOf({ open, isPreliminary }: ChartedSeries, text: string, words: Words): string[] {
  return [
    ...(open.length === 0 ? [] : [words.sentence('away.besideOpen', { text })]),
    ...(isPreliminary ? [words.sentence('away.besidePreliminary', { text })] : []),
  ];
}

function figureOf({ content, decided }: ChartedSeries, about: PageAbout, id: string, words: Words): FigureAt {
  const { rules, diary } = about;
  const asked = { content, byHand: byHandOf(decided), rules, office: null };
  if (content.of === 'home') {
    const drawn = { ...answeredHome({ ...asked, diary }), rules: rules.homeRules };
    return (how) => homeFigure({ ...drawn, about: timesSaid(content.readings) }, words, { id, ...how });
  }
  const drawn = answeredRecording(asked);
  return (how) => recordingFigure(drawn, words, { id, ...how });
}
