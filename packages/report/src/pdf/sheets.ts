import { createRequire } from 'node:module';
import PDFDocument from 'pdfkit';
import { PAPERS, type PaperId } from '../page/paper.js';
import type { ReportPage } from '../page/reportPage.js';
import { withStandIns } from './drawable.js';

const find = createRequire(import.meta.url);

/** Margins of a sheet, in points. */
export const MARGIN = { side: 36, top: 30, bottom: 40 } as const;

/** Room over and under the text of a row of a table, the usual first; the others where they save a sheet that is nearly empty. */
export const PADS = [1.7, 1.2, 0.8] as const;

export type Font = 'regular' | 'bold';

/** A PDF under way: where the next thing goes, and the tags it is read by. */
export type Sheets = {
  readonly doc: PDFKit.PDFDocument;
  readonly left: number;
  readonly width: number;
  /** The lowest y that may be written at. */
  readonly end: number;
  y: number;
  /** Room over and under the text of a row of a table, in points. */
  pad: number;
  /** Draws something under a tag, in order of reading. */
  readonly tagged: (type: string, draw: () => void, alt?: string) => void;
  /** Draws what is no content: a rule, a head of the page said before. */
  readonly untagged: (draw: () => void) => void;
  readonly root: PDFKit.PDFStructureElement;
  readonly turn: () => void;
};

/** A tagged document with its fonts. `createdAt` is written as its date and makes two runs the same, byte for byte. */
export function openSheets(page: ReportPage, size: PaperId, createdAt: Date): Sheets {
  const { width, height } = PAPERS[size];
  const doc = new PDFDocument({
    size: [width, height],
    margin: 0,
    bufferPages: true,
    tagged: true,
    pdfVersion: '1.7',
    lang: page.locale,
    displayTitle: true,
    info: {
      Title: page.title,
      Creator: 'Evenfall',
      Producer: 'Evenfall',
      CreationDate: createdAt,
      ModDate: createdAt,
    },
  });
  doc.registerFont('regular', find.resolve('dejavu-fonts-ttf/ttf/DejaVuSans.ttf'));
  doc.registerFont('bold', find.resolve('dejavu-fonts-ttf/ttf/DejaVuSans-Bold.ttf'));
  withStandIns(doc);
  const root = doc.struct('Document');
  doc.addStructure(root);
  const sheets: Sheets = {
    doc,
    left: MARGIN.side,
    width: width - 2 * MARGIN.side,
    end: height - MARGIN.bottom,
    y: MARGIN.top,
    pad: PADS[0],
    root,
    tagged: (type, draw, alt) => {
      root.add(doc.struct(type, alt === undefined ? {} : { alt }, draw));
    },
    untagged: (draw) => {
      doc.markContent('Artifact', { type: 'Layout' });
      draw();
      doc.endMarkedContent();
    },
    turn: () => {
      doc.addPage();
      sheets.y = MARGIN.top;
    },
  };
  return sheets;
}

/** Everything written, once the document is ended. */
export function bytesOf(doc: PDFKit.PDFDocument): Promise<Uint8Array> {
  return new Promise((resolve, reject) => {
    const chunks: Uint8Array[] = [];
    doc.on('data', (chunk: Uint8Array) => chunks.push(chunk));
    doc.on('error', reject);
    doc.on('end', () => resolve(Buffer.concat(chunks)));
    doc.end();
  });
}
