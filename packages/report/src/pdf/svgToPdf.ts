import { createRequire } from 'node:module';

/** What is used of svg-to-pdfkit, which brings no types. */
type SvgToPdf = (
  doc: PDFKit.PDFDocument,
  svg: string,
  x: number,
  y: number,
  options: {
    readonly width: number;
    readonly height: number;
    readonly assumePt: boolean;
    readonly preserveAspectRatio: string;
    readonly fontCallback: (family: string, bold: boolean) => string;
  },
) => void;

/** Draws an SVG text into a PDF, as vectors and with its letters as letters. */
export const svgToPdf = createRequire(import.meta.url)('svg-to-pdfkit') as SvgToPdf;
