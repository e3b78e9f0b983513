/** The widest line of help and of lists, in signs: that of a terminal nobody has widened. Source: decision. */
export const WIDTH = 80;

/** The widest first column that the second one still stands beside. */
const WIDEST_BESIDE = 26;

/** A text in lines of at most `WIDTH` signs, each after `indent` blanks. A word that is longer stays whole. */
export function wrap(text: string, indent = 0): string[] {
  const before = ' '.repeat(indent);
  const lines: string[] = [];
  let line = '';
  for (const word of text.split(' ')) {
    const longer = line === '' ? word : `${line} ${word}`;
    if (line === '' || indent + longer.length <= WIDTH) line = longer;
    else {
      lines.push(before + line);
      line = word;
    }
  }
  return [...lines, (before + line).trimEnd()];
}

/**
 * What something is called, and beside it what it means, in lines of at most `WIDTH`: a name too long for its column has a line
 * of its own.
 */
export function beside(rows: readonly (readonly [name: string, meaning: string])[]): string[] {
  const fitting = rows.map(([name]) => name.length).filter((length) => length <= WIDEST_BESIDE);
  const column = Math.max(0, ...fitting) + 2;
  return rows.flatMap(([name, meaning]) => {
    const lines = wrap(meaning, column);
    if (name.length + 2 > column) return [name, ...lines];
    return [name.padEnd(column) + (lines[0] ?? '').slice(column), ...lines.slice(1)].map((line) =>
      line.trimEnd(),
    );
  });
}
