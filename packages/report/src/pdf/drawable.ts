/** Stands for each letter that the fonts of a page cannot draw: a box, never nothing. Both fonts have it. */
export const STAND_IN = '□';

/** What a letter of its own need not draw: line breaks, tabs and what only joins or parts others. */
const INVISIBLE = /[\n\t\p{Default_Ignorable_Code_Point}]/u;

type Glyphs = { readonly hasGlyphForCodePoint: (codePoint: number) => boolean };

/** What pdfkit has of the font in use, which its types leave out. */
function glyphsOf(doc: PDFKit.PDFDocument): Glyphs {
  return (doc as unknown as { readonly _font: { readonly font: Glyphs } })._font.font;
}

/** Whether the font in use draws every letter of a text. */
export function canDraw(doc: PDFKit.PDFDocument, text: string): boolean {
  return drawable(doc, text) === text.normalize('NFC');
}

function drawable(doc: PDFKit.PDFDocument, text: string): string {
  const glyphs = glyphsOf(doc);
  return [...text.normalize('NFC')]
    .map((letter) => {
      if (INVISIBLE.test(letter)) return letter;
      return glyphs.hasGlyphForCodePoint(letter.codePointAt(0) ?? 0) ? letter : STAND_IN;
    })
    .join('');
}

/** Lets a document write and measure texts with a stand-in for each letter that its font cannot draw. */
export function withStandIns(doc: PDFKit.PDFDocument): void {
  for (const name of ['text', 'widthOfString', 'heightOfString'] as const) {
    const own = doc[name] as (text: string, ...rest: unknown[]) => unknown;
    const wrapped = (text: string, ...rest: unknown[]) => own.call(doc, drawable(doc, text), ...rest);
    Object.assign(doc, { [name]: wrapped });
  }
}
