import { inflateSync } from 'node:zlib';

/** What a PDF holds, read by the format's own rules (ISO 32000-1) as far as these files use them. */
export type ReadPdf = {
  /** The text of each page, in the order in which it is written. */
  readonly pages: readonly string[];
  readonly sizes: readonly (readonly [width: number, height: number])[];
  /** Types of the structure elements, in order. */
  readonly tags: readonly string[];
  /** Text alternatives of its figures. */
  readonly alternatives: readonly string[];
  readonly language: string | null;
  readonly isMarked: boolean;
};

type Part = { readonly dict: string; readonly stream: Buffer | null };

export function readPdf(bytes: Uint8Array): ReadPdf {
  const file = Buffer.from(bytes).toString('latin1');
  const parts = new Map<number, Part>();
  for (const [, id, body = ''] of file.matchAll(/(?:^|\n)(\d+) 0 obj\n([\s\S]*?)\nendobj/g)) {
    const at = body.indexOf('stream\n');
    const dict = at < 0 ? body : body.slice(0, at);
    const raw = at < 0 ? null : Buffer.from(body.slice(at + 7, body.lastIndexOf('\nendstream')), 'latin1');
    parts.set(Number(id), {
      dict,
      stream: raw !== null && dict.includes('/FlateDecode') ? inflateSync(raw) : raw,
    });
  }
  const all = [...parts.values()];
  const pages = all.filter(({ dict }) => /\/Type \/Page\b(?!s)/.test(dict));
  const catalog = all.find(({ dict }) => /\/Type \/Catalog/.test(dict))?.dict ?? '';
  const elements = all.filter(({ dict }) =>
    /\/Type \/StructElem|\/S \/[A-Z]\w*[\s\S]*\/P \d+ 0 R/.test(dict),
  );
  return {
    pages: pages.map(({ dict }) => textOf(dict, parts)),
    sizes: pages.map(({ dict }) => {
      const [, width, height] = /\/MediaBox \[0 0 ([\d.]+) ([\d.]+)\]/.exec(dict) ?? [];
      return [Number(width), Number(height)] as const;
    }),
    tags: elements.map(({ dict }) => /\/S \/(\w+)/.exec(dict)?.[1] ?? ''),
    alternatives: elements.flatMap(({ dict }) => {
      const found = /\/Alt (\((?:\\.|[^\\)])*\)|<[0-9A-Fa-f]+>)/s.exec(dict)?.[1];
      return found === undefined ? [] : [stringOf(found)];
    }),
    language: /\/Lang \((.*?)\)/.exec(catalog)?.[1] ?? null,
    isMarked: /\/MarkInfo[\s\S]*?\/Marked true/.test(catalog + all.map(({ dict }) => dict).join('\n')),
  };
}

/** A text string: UTF-16 with a byte-order mark, or one byte a letter. */
function stringOf(written: string): string {
  const bytes = written.startsWith('<')
    ? Buffer.from(written.slice(1, -1), 'hex')
    : Buffer.from(written.slice(1, -1).replace(/\\(.)/gs, '$1'), 'latin1');
  return bytes[0] === 0xfe && bytes[1] === 0xff
    ? Buffer.from(bytes.subarray(2)).swap16().toString('utf16le')
    : bytes.toString('latin1');
}

function textOf(page: string, parts: ReadonlyMap<number, Part>): string {
  const refer = (text: string, key: string) => Number(new RegExp(`/${key} (\\d+) 0 R`).exec(text)?.[1]);
  const content = parts.get(refer(page, 'Contents'))?.stream?.toString('latin1') ?? '';
  const resources = /\/Resources \d/.test(page) ? (parts.get(refer(page, 'Resources'))?.dict ?? '') : page;
  const fonts = new Map<string, Map<number, string>>();
  for (const [, name = '', id] of resources.matchAll(/\/(F\d+) (\d+) 0 R/g)) {
    const font = parts.get(Number(id))?.dict ?? '';
    fonts.set(name, unicodeOf(parts.get(refer(font, 'ToUnicode'))?.stream?.toString('latin1') ?? ''));
  }
  let font = new Map<number, string>();
  const said: string[] = [];
  for (const [token, name, shown] of content.matchAll(
    /\/(F\d+) [\d.]+ Tf|\[((?:<[0-9a-fA-F]*>|[-\d.\s])*)\] TJ/g,
  )) {
    if (name !== undefined) font = fonts.get(name) ?? new Map();
    else if (token !== undefined && shown !== undefined) {
      const glyphs = [...shown.matchAll(/<([0-9a-fA-F]*)>/g)].flatMap(
        ([, hex = '']) => hex.match(/.{4}/g) ?? [],
      );
      said.push(glyphs.map((one) => font.get(Number.parseInt(one, 16)) ?? '\uFFFD').join(''));
    }
  }
  return said.join('\n');
}

/** What glyph numbers stand for. */
function unicodeOf(map: string): Map<number, string> {
  const found = new Map<number, string>();
  const letters = (hex: string) =>
    (hex.match(/.{4}/g) ?? []).map((one) => String.fromCharCode(Number.parseInt(one, 16))).join('');
  for (const [, block = ''] of map.matchAll(/beginbfrange([\s\S]*?)endbfrange/g)) {
    for (const [, from = '', , list = ''] of block.matchAll(
      /<([0-9a-fA-F]+)>\s*<([0-9a-fA-F]+)>\s*\[([\s\S]*?)\]/g,
    )) {
      [...list.matchAll(/<([0-9a-fA-F\s]*)>/g)].forEach(([, hex = ''], k) => {
        found.set(Number.parseInt(from, 16) + k, letters(hex.replace(/\s/g, '')));
      });
    }
  }
  return found;
}
