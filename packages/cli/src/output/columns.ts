/** Lines of two or more columns, each but the last as wide as its widest cell; two spaces between. */
export function columns(rows: readonly (readonly string[])[]): string[] {
  const widths: number[] = [];
  for (const row of rows) {
    for (const [at, cell] of row.slice(0, -1).entries()) widths[at] = Math.max(widths[at] ?? 0, cell.length);
  }
  return rows.map((row) => row.map((cell, at) => cell.padEnd(widths[at] ?? 0)).join('  ').trimEnd()); // biome-ignore format: one row
}
