/** The parts of svg-to-pdfkit that are used; the package brings no types. */
declare module 'svg-to-pdfkit' {
  export default function svgToPdf(
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
  ): void;
}
