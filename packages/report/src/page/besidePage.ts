import type { Words } from '@evenfall/words';
import { type BesideSaid, besideSaid, type SideOfTwo, type TwoSeries } from './besideSaid.js';
import { type FigureAt, framed, type ReportHeader, type ReportPage } from './reportPage.js';

/** What the sheet of two series says besides both: whose they are, what comes first, and a figure of each. */
export type BesidePageInput = TwoSeries & {
  readonly header: ReportHeader;
  /** What is still to be acted on in one of them and what else is said before, in sentences. */
  readonly before: readonly string[];
  readonly figures: readonly { readonly of: SideOfTwo; readonly figure: FigureAt }[];
};

/** One sheet: how far the mean moved and how sure that is, both means with what each rests on, the readings of each drawn. */
export function besidePage(input: BesidePageInput, words: Words): ReportPage {
  const { first, second, header, before, figures } = input;
  const said = besideSaid(input, words);
  const say = words.sentence;
  const measured = [first, second].map(({ name }) => name.replaceAll(' ', '\u00a0')).join('; ');
  return framed(header, measured, words, {
    isOfTwo: true,
    title: say('report.besidePage'),
    blocks: [
      ...(before.length === 0
        ? []
        : [{ kind: 'lines' as const, heading: say('series.actFirst'), lines: before, isUrgent: true }]),
      {
        kind: 'lines',
        heading: say('report.result'),
        // Of two that are not alike a difference found at a glance would be taken for a change.
        headline:
          said.unlike === null
            ? {
                text: said.moved,
                of: `mmHg, ${say('away.laterMinusEarlier').toLocaleLowerCase(words.say.locale)}`,
              }
            : null,
        lines: linesOf(said),
      },
      { kind: 'tables', tables: [{ ...said.table, caption: say('report.meansTable') }] },
      { kind: 'lines', heading: say('report.cautions'), lines: said.beside },
      ...figures.flatMap(({ of, figure }) => [
        { kind: 'lines' as const, heading: say('series.readings'), lines: [of.name] },
        { kind: 'figures' as const, figures: [figure] },
      ]),
    ],
    lists: [],
  });
}

function linesOf({ unlike, sure }: BesideSaid): string[] {
  return [...(unlike === null ? [] : [unlike]), ...(sure === null ? [] : [sure])];
}
