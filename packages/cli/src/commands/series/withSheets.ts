import { type Refusal, refusal } from '@evenfall/clinical';
import type { ReadSeries } from '@evenfall/exchange';
import type { Figure, ReportHeader, ReportPage } from '@evenfall/report';
import type { Words } from '@evenfall/words';
import { type Answer, refused } from '../../answer.js';
import type { Context } from '../../command.js';
import { filesOf } from '../../input/filesOf.js';
import { takenPath, writeNewFile } from '../../output/newFile.js';
import type { TypedSheets } from './typedSheets.js';

/** What can be drawn of one answered series. */
export type Drawable = { readonly page: () => ReportPage; readonly figure: () => Figure };

/**
 * Answers, and writes the files that were asked for. They are of one series: several are refused before anything is read, and so is
 * a file that is there already. Nothing is written where the series is refused.
 */
export async function withSheets(
  files: readonly string[],
  sheets: TypedSheets,
  context: Context,
  answer: () => Promise<Answer>,
  drawable: () => Drawable | null,
): Promise<Answer> {
  const asked = [
    ...(sheets.pdf === null ? [] : [{ field: '--pdf', path: sheets.pdf }]),
    ...(sheets.svg === null ? [] : [{ field: '--svg', path: sheets.svg }]),
  ];
  if (asked.length === 0) return await answer();
  const refusedBy = (refusals: readonly Refusal[]) =>
    refused(refusals.map((one) => context.words.problem(one)));
  if ((await filesOf(files)).kind === 'several') {
    return refusedBy(
      asked.map(({ field, path }) => refusal(field, 'contradicts', 'one-series-to-draw', path)),
    );
  }
  const taken = (
    await Promise.all(asked.map((one) => takenPath(one.field, one.path, sheets.isReplaced)))
  ).flat();
  if (taken.length > 0) return refusedBy(taken);
  const answered = await answer();
  const found = drawable();
  if (answered.kind !== 'one' || found === null) return answered;
  const problems: Refusal[] = [];
  for (const { field, path } of asked) {
    const bytes =
      field === '--pdf'
        ? await pdfOf(found.page(), sheets, context)
        : new TextEncoder().encode(`${found.figure().svg}\n`);
    const wrong = await writeNewFile({ field, path, bytes }, sheets.isReplaced);
    problems.push(...wrong);
    // The answer alone is on standard output.
    if (wrong.length === 0)
      context.stderr.write(`${context.words.sentence('commandLine.wrote', { path })}\n`);
  }
  return problems.length > 0 ? refusedBy(problems) : answered;
}

/** The head of a page from a file: what it says of the device and the arm; the rest is left to be written in by hand. */
export function headerOf(
  read: ReadSeries,
  { isInvented }: TypedSheets,
  { now, version }: Context,
): ReportHeader {
  const all = (of: (beside: ReadSeries['beside'][number]) => string | null) => {
    const found = [...new Set(read.beside.map(of).filter((one): one is string => one !== null))];
    return found.length === 0 ? null : found.join(', ');
  };
  return {
    name: null,
    born: null,
    device: all(({ device }) => device),
    arm: all(({ arm }) => arm),
    medicines: null,
    zone: read.zone,
    madeAt: `${now().toISOString().slice(0, 16).replace('T', ' ')} UTC`,
    program: `evenfall ${version}`,
    isInvented,
  };
}

/** What a file says beside its readings, by their index. */
export function besideOf(read: ReadSeries, words: Words): Map<number, string[]> {
  const notes = new Map(read.beside.map(({ index, note }) => [index, note]));
  return new Map(
    read.readings.flatMap(({ index, startedByHand }) => {
      const note = notes.get(index) ?? null;
      const said = [
        ...(startedByHand === true ? [words.sentence('series.startedByHandMark')] : []),
        ...(note === null ? [] : [`“${note}”`]),
      ];
      return said.length === 0 ? [] : [[index, said] as const];
    }),
  );
}

/** What writes PDF files is loaded only where one is asked for: every command would start slower by it. */
async function pdfOf(page: ReportPage, { paper }: TypedSheets, { now }: Context): Promise<Uint8Array> {
  const { pagePdf } = await import('@evenfall/report/pdf');
  return await pagePdf(page, { size: paper, createdAt: now() });
}
