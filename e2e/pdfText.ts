import { inflateSync } from 'node:zlib';

/**
 * What stands on each page of a PDF that Chromium made, enough of it to look for a word: the glyphs of a page in
 * order, read by the table of each font in turn. A word that is set in one font is found.
 */
export function pdfPages(pdf: Buffer): string[] {
  const streams = streamsOf(pdf);
  const tables = streams.filter((text) => text.includes('begincmap')).map(tableOf);
  const pages = streams.filter((text) => /\bTf\b/.test(text) && /\bBT\b/.test(text));
  return pages.map((page) => {
    const glyphs = [...page.matchAll(/<([0-9A-Fa-f]+)>/g)].flatMap(
      ([, hex = '']) => hex.match(/.{4}/g) ?? [],
    );
    return tables
      .map((table) => glyphs.map((glyph) => table.get(glyph.toUpperCase()) ?? '').join(''))
      .join('\n');
  });
}

function streamsOf(pdf: Buffer): string[] {
  const found: string[] = [];
  let from = 0;
  for (;;) {
    const start = pdf.indexOf('stream\n', from);
    if (start === -1) return found;
    const end = pdf.indexOf('endstream', start);
    try {
      found.push(inflateSync(pdf.subarray(start + 'stream\n'.length, end)).toString('latin1'));
    } catch {
      // a stream that is no deflated text: a font, a picture
    }
    from = end + 'endstream'.length;
  }
}

/** From glyphs to letters, as a font says it: single ones and runs. */
function tableOf(cmap: string): Map<string, string> {
  const table = new Map<string, string>();
  const letter = (code: number) => String.fromCharCode(code);
  const key = (glyph: number) => glyph.toString(16).toUpperCase().padStart(4, '0');
  for (const [, from = '', to = '', first = ''] of cmap.matchAll(
    /<([0-9A-F]{4})> <([0-9A-F]{4})> <([0-9A-F]{4})>/gi,
  ))
    for (let glyph = Number.parseInt(from, 16); glyph <= Number.parseInt(to, 16); glyph += 1)
      table.set(key(glyph), letter(Number.parseInt(first, 16) + glyph - Number.parseInt(from, 16)));
  for (const [, block = ''] of cmap.matchAll(/beginbfchar([\s\S]*?)endbfchar/g))
    for (const [, glyph = '', code = ''] of block.matchAll(/<([0-9A-F]{4})> <([0-9A-F]{4})>/gi))
      table.set(glyph.toUpperCase(), letter(Number.parseInt(code, 16)));
  return table;
}
