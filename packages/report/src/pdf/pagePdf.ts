import type { Figure } from '../figure/figure.js';
import type { PaperId } from '../page/paper.js';
import type { Block, FigureAt, Headline, ReportPage } from '../page/reportPage.js';
import { canDraw } from './drawable.js';
import { bytesOf, MARGIN, openSheets, PADS, type Sheets } from './sheets.js';
import { svgToPdf } from './svgToPdf.js';
import { AFTER_TABLE, drawTable, endOfLists, tableHeight } from './table.js';

/** How a page becomes a file. `createdAt` is passed in: the same page at the same time is the same bytes. */
export type PdfChoices = { readonly size: PaperId; readonly createdAt: Date };

const TEXT = { title: 14, headline: 22, of: 10, heading: 8.5, body: 8, header: 8, foot: 6.8 } as const;
const INK = '#1a1a1a';
const MUTED = '#555555';
const GAP = 5;

/** The smallest share of its own height at which a figure is still read; under it what stands last goes to the next sheet. */
const LEAST_SHARE = 0.62;

/** A page as a tagged PDF: one sheet, then the lists. Text is text, figures are vectors. */
export async function pagePdf(asked: ReportPage, { size, createdAt }: PdfChoices): Promise<Uint8Array> {
  const sheets = openSheets(asked, size, createdAt);
  const page = namedPage(sheets, asked);
  drawHead(sheets, page);
  // What is said keeps its size; the figures take what the sheet has left for them.
  const fixed = page.blocks.reduce((sum, one) => sum + heightOf(sheets, one, 0), 0);
  const wanted = page.blocks.reduce((sum, one) => sum + figuresHeight(sheets, one), 0);
  const room = sheets.end - sheets.y - fixed;
  const share = wanted === 0 ? 1 : Math.max(LEAST_SHARE, Math.min(1, room / wanted));
  for (const block of page.blocks) drawBlock(sheets, block, share);
  // Lists begin on a sheet of their own, or under what the first had no room for.
  if (page.lists.length > 0) {
    if (sheets.doc.bufferedPageRange().count === 1) sheets.turn();
    else sheets.y += 3 * AFTER_TABLE;
  }
  sheets.pad = padFor(sheets, page.lists);
  for (const list of page.lists) {
    drawTable(sheets, list, sheets.left, sheets.width, true);
    sheets.y += 3 * AFTER_TABLE;
  }
  sheets.root.end();
  drawFeet(sheets, page);
  return bytesOf(sheets.doc);
}

/** A sheet less full than this is nearly empty. */
const NEARLY_EMPTY = 0.25;

/** The usual room in the rows of lists; less of it where that saves a last sheet that would be nearly empty. */
function padFor(sheets: Sheets, lists: ReportPage['lists']): number {
  const at = (pad: number) => endOfLists({ ...sheets, pad }, lists);
  const [usual, ...tighter] = PADS;
  const { turns, share } = at(usual);
  if (turns === 0 || share >= NEARLY_EMPTY) return usual;
  return tighter.find((pad) => at(pad).turns < turns) ?? usual;
}

/** Where the letters of a name cannot be drawn, what names its person otherwise stands beside it: no sheet is nobody's. */
function namedPage({ doc }: Sheets, page: ReportPage): ReportPage {
  const [name, ...rest] = page.header;
  if (name?.value == null || page.otherwise === null) return page;
  if (canDraw(doc.font('regular'), name.value)) return page;
  return { ...page, header: [{ ...name, value: `${name.value} (${page.otherwise})` }, ...rest] };
}

function drawHead(sheets: Sheets, page: ReportPage): void {
  const { doc, left, width } = sheets;
  drawInvented(sheets, page);
  sheets.tagged('H1', () => {
    doc.font('bold').fontSize(TEXT.title).fillColor(INK).text(page.title, left, sheets.y, { width });
  });
  sheets.y += TEXT.title + 6;
  const { unreviewed } = page;
  if (unreviewed !== null) {
    sheets.tagged('P', () => {
      doc
        .font('regular')
        .fontSize(TEXT.foot)
        .fillColor(MUTED)
        .text(unreviewed, left, sheets.y - 2, { width });
    });
    sheets.y += TEXT.foot + 3;
  }
  const column = width / 2;
  for (let k = 0; k < page.header.length; k += 2) {
    const heights = page.header
      .slice(k, k + 2)
      .map((one, side) => drawField(sheets, one, left + side * column, column));
    sheets.y += Math.max(...heights) + 4;
  }
  sheets.untagged(() => {
    doc
      .lineWidth(0.8)
      .strokeColor(INK)
      .moveTo(left, sheets.y)
      .lineTo(left + width, sheets.y)
      .stroke();
  });
  sheets.y += GAP + 2;
}

/** One field of the head from the current place: its value, or a line to write on. Answers how high it is. */
function drawField(
  { doc, y, tagged, untagged }: Sheets,
  { label, value }: ReportPage['header'][number],
  x: number,
  column: number,
): number {
  const said = `${label}: `;
  doc.font('bold').fontSize(TEXT.header);
  const wide = doc.widthOfString(said);
  const rest = column - wide - 8;
  const height = value === null ? 0 : doc.font('regular').heightOfString(value, { width: rest });
  tagged('P', () => {
    doc.font('bold').fontSize(TEXT.header).fillColor(INK).text(said, x, y, { lineBreak: false });
    if (value !== null) doc.font('regular').text(value, x + wide, y, { width: rest });
  });
  const under = y + TEXT.header + 1;
  if (value === null) {
    untagged(() => {
      doc
        .lineWidth(0.5)
        .strokeColor(MUTED)
        .moveTo(x + wide, under)
        .lineTo(x + column - 10, under)
        .stroke();
    });
  }
  return Math.max(height, TEXT.header + 3);
}

/** Over every page of invented numbers, so that none is taken for a person's. */
function drawInvented(sheets: Sheets, { invented }: ReportPage): void {
  if (invented === null) return;
  const { doc, left, width } = sheets;
  sheets.tagged('P', () => {
    doc.font('bold').fontSize(9).fillColor(INK).text(invented, left, sheets.y, { width, align: 'center' });
  });
  sheets.y += 15;
}

function linesOf({ doc, width }: Sheets, { lines, isUrgent }: Lines): number[] {
  doc.font(isUrgent ? 'bold' : 'regular').fontSize(TEXT.body);
  return lines.map((one) => doc.heightOfString(one, { width: width - INDENT }) + 1.5);
}

function headlineHeight({ headline }: Lines): number {
  return headline == null ? 0 : TEXT.headline + GAP;
}

/** The number large, and beside it on its own foot what it is. */
function drawHeadline({ doc, left, width, tagged }: Sheets, { text, of }: Headline, top: number): void {
  const x = left + INDENT;
  tagged('P', () => {
    doc
      .font('bold')
      .fontSize(TEXT.headline)
      .fillColor(INK)
      .text(text, x, top - 3, { lineBreak: false });
    const beside = x + doc.widthOfString(text) + 2 * GAP;
    doc
      .font('regular')
      .fontSize(TEXT.of)
      .text(of, beside, top + TEXT.headline - TEXT.of - 4, {
        width: left + width - beside,
        lineBreak: false,
      });
  });
}

type Lines = Extract<Block, { readonly kind: 'lines' }>;

/** Headings stand in a column of their own, so that a sheet is found through at a glance. */
const INDENT = 92;

function heightOf(sheets: Sheets, block: Block, share: number): number {
  switch (block.kind) {
    case 'lines': {
      const { doc } = sheets;
      doc.font('bold').fontSize(TEXT.heading);
      const heading = doc.heightOfString(block.heading, { width: INDENT - 8 });
      return (
        headlineHeight(block) +
        Math.max(
          heading,
          linesOf(sheets, block).reduce((sum, one) => sum + one, 0),
        ) +
        (block.isUrgent ? 2 * GAP : GAP)
      );
    }
    case 'tables':
      return Math.max(...block.tables.map((one, k) => tableHeight(sheets, one, placeOf(sheets, block.tables.length, k).width))) + GAP + 2; // biome-ignore format: one thought
    case 'figures':
      return figuresHeight(sheets, block) * share + GAP;
  }
}

/** What figures would take at their own proportions. */
function figuresHeight(sheets: Sheets, block: Block): number {
  if (block.kind !== 'figures') return 0;
  return Math.max(
    ...block.figures.map((one, k) => heightAt(one(), placeOf(sheets, block.figures.length, k).width)),
  );
}

function heightAt({ width, height }: Figure, wide: number): number {
  return (height * wide) / width;
}

function placeOf({ left, width }: Sheets, of: number, k: number): { x: number; width: number } {
  const between = 14;
  const wide = (width - between * (of - 1)) / of;
  return { x: left + k * (wide + between), width: wide };
}

/** Room for a heading with a line of its own. */
const PARTED_LEAST = 24;

function drawBlock(sheets: Sheets, block: Block, share: number): void {
  const { doc, left, width } = sheets;
  const height = heightOf(sheets, block, share);
  // Sentences that are not urgent go on over the end of a sheet: what fits of them stays on it.
  const isParted = block.kind === 'lines' && block.isUrgent !== true;
  const least = isParted ? Math.min(height, PARTED_LEAST) : height;
  if (sheets.y + least > sheets.end + GAP && height < sheets.end - MARGIN.top) sheets.turn();
  const top = sheets.y;
  switch (block.kind) {
    case 'lines': {
      if (block.isUrgent) {
        sheets.untagged(() => {
          doc
            .lineWidth(1.2)
            .strokeColor(INK)
            .rect(left - 4, top - 2.5, width + 8, height - GAP + 4)
            .stroke();
        });
      }
      sheets.tagged('H2', () => {
        doc
          .font('bold')
          .fontSize(TEXT.heading)
          .fillColor(INK)
          .text(block.heading, left, top, { width: INDENT - 8 });
      });
      if (block.headline != null) drawHeadline(sheets, block.headline, top);
      let y = top + headlineHeight(block);
      const heights = linesOf(sheets, block);
      block.lines.forEach((one, k) => {
        if (isParted && y + (heights[k] as number) > sheets.end + GAP) {
          sheets.turn();
          y = sheets.y;
        }
        const at = y;
        sheets.tagged('P', () => {
          doc.font(block.isUrgent ? 'bold' : 'regular').fontSize(TEXT.body).fillColor(INK).text(one, left + INDENT, at, { width: width - INDENT }); // biome-ignore format: one thought
        });
        y += heights[k] as number;
      });
      sheets.y = y < top ? y + GAP : top + height;
      return;
    }
    case 'tables':
      block.tables.forEach((table, k) => {
        const place = placeOf(sheets, block.tables.length, k);
        sheets.y = top;
        drawTable(sheets, table, place.x, place.width, false);
      });
      break;
    case 'figures':
      block.figures.forEach((figure, k) => {
        drawFigure(sheets, figure, placeOf(sheets, block.figures.length, k), top, share);
      });
      break;
  }
  sheets.y = top + height;
}

/** In the room there is: drawn lower, never smaller, so that its letters keep their size. */
function drawFigure(
  sheets: Sheets,
  drawnAt: FigureAt,
  place: { readonly x: number; readonly width: number },
  y: number,
  share: number,
): void {
  const figure = drawnAt({ height: drawnAt().height * share });
  sheets.tagged(
    'Figure',
    () => {
      svgToPdf(sheets.doc, figure.svg, place.x, y, {
        width: place.width,
        height: heightAt(figure, place.width),
        assumePt: true,
        preserveAspectRatio: 'xMidYMin meet',
        fontCallback: (_family, bold) => (bold ? 'bold' : 'regular'),
      });
    },
    `${figure.title}. ${figure.description}`,
  );
}

/** The foot of every sheet: what the program is not, when and by what it was made, the page; and that it is invented. */
function drawFeet({ doc, left, width, end }: Sheets, page: ReportPage): void {
  const { start, count } = doc.bufferedPageRange();
  const name = page.header[0]?.value;
  for (let k = 0; k < count; k++) {
    doc.switchToPage(start + k);
    doc.markContent('Artifact', { type: 'Pagination' });
    doc.font('regular').fontSize(TEXT.foot).fillColor(MUTED);
    const [y, side] = [end + 6, 190];
    doc.text(page.aid, left, y, { width: width - side - 10, height: 24 });
    // A sheet that is parted from the first still says whose it is.
    const whose = k === 0 || name == null ? [] : [name];
    doc.text([...whose, page.made, page.pageOf(k + 1, count)].join('\n'), left + width - side, y, { width: side, align: 'right' }); // biome-ignore format: one thought
    if (k > 0 && page.invented !== null) {
      doc
        .font('bold')
        .fontSize(TEXT.foot)
        .fillColor(INK)
        .text(page.invented, left, 14, { width, align: 'center' });
    }
    doc.endMarkedContent();
  }
}
