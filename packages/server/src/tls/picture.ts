import { generate } from 'lean-qr';

/** The quiet zone, in modules. Source: ISO/IEC 18004 (from memory). */
const QUIET = 4;

/** A text as the dark modules of a QR picture, quiet zone included: a square of `size`, and the path of an SVG. */
export function modulesOf(text: string): { size: number; path: string } {
  const code = generate(text);
  const size = code.size + 2 * QUIET;
  const modules: string[] = [];
  for (let y = 0; y < code.size; y += 1) {
    for (let x = 0; x < code.size; x += 1) {
      if (code.get(x, y)) modules.push(`M${x + QUIET} ${y + QUIET}h1v1h-1z`);
    }
  }
  return { size, path: modules.join('') };
}

/** A text as a QR picture in SVG: black on white whatever the page, with its quiet zone. */
export function svgPicture(text: string): string {
  const { size, path } = modulesOf(text);
  return `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${size} ${size}" shape-rendering="crispEdges"><rect width="${size}" height="${size}" fill="#fff"/><path d="${path}" fill="#000"/></svg>`;
}

/** The same for a terminal of light signs on dark: two rows of modules in each line. */
export function terminalPicture(text: string): readonly string[] {
  const code = generate(text);
  const lines: string[] = [];
  for (let y = -QUIET; y < code.size + QUIET; y += 2) {
    let line = '';
    for (let x = -QUIET; x < code.size + QUIET; x += 1) {
      const [above, below] = [code.get(x, y), code.get(x, y + 1)];
      line += above ? (below ? ' ' : '\u2584') : below ? '\u2580' : '\u2588';
    }
    lines.push(line);
  }
  return lines;
}
