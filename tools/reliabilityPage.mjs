// docs/reliability.md out of what the scripts of `npm run prove` answered: `{ name, passed, failed, lines, table? }` each.

/** What stands over a table of numbers held against published ones. */
const OVER_TABLE = `Each line is a number that was published of people, arms, ears and cuffs, or that the model book works out. The simulator is run a few thousand times with a seed and
read by a perfect reader (or the one that the line names); what comes must lie within the tolerance, and every line is counted. It shows that the model does on the whole what people
do where somebody measured it. It does not show how one person is, nor anything that has no line. Rows and tolerances are those of the model book (physiology handbook 18; where it says
a section, of that section), and what is to be known of a row stands under the table.`;

/** The whole page: those that were run now, in the place of what stood of them before, and the others as they stood. */
export function reliabilityPage(results, before, { today, engine, byHand }) {
  const kept = sectionsOf(before).filter(({ name }) => !results.some((one) => one.name === name));
  const now = results.map((one) => ({ name: one.name, text: sectionOf(one) }));
  const order = sectionsOf(before).map(({ name }) => name);
  const place = ({ name }) => (order.includes(name) ? order.indexOf(name) : order.length);
  const sections = [...kept, ...now].sort((a, b) => place(a) - place(b));
  const when =
    kept.length === 0 ? '' : `; ${kept.map(({ name }) => `*${name}*`).join(', ')} in an earlier run`;
  return `# Reliability: what the heavy loops counted

Written by \`npm run prove\` on ${today}, ${engine}${when}. Run it again to check.

${byHand}

${sections.map(({ text }) => text).join('\n')}`;
}

/** The sections of a page as they stand. */
export function sectionsOf(page) {
  return page
    .split(/^(?=## )/m)
    .slice(1)
    .map((text) => ({ name: text.slice(3, text.indexOf('\n')).trim(), text: `${text.trimEnd()}\n` }));
}

function sectionOf({ name, passed, failed, lines, table }) {
  const body = table === undefined ? lines.map((line) => `    ${line}`).join('\n') : tableOf(table);
  const over = table === undefined ? '' : `${OVER_TABLE}\n\n`;
  return `## ${name}\n\n${over}${passed} passed, ${failed} failed.\n\n${body}\n`;
}

/** A line for each number, by the rows of the book, and under it what is to be known of a row. */
function tableOf(table) {
  const rows = new Map();
  for (const one of table) rows.set(one.row, [...(rows.get(one.row) ?? []), one]);
  const sorted = [...rows].sort(([a], [b]) => (Number(a) || 999) - (Number(b) || 999));
  const lines = sorted.flatMap(([row, all]) =>
    all.map(({ what, wanted, got, isRight, source }, i) => {
      const number = isRight ? got : `**${got}: not met**`;
      return `| ${i === 0 ? row : ''} | ${what} | ${wanted} | ${number} | ${i === 0 ? (source ?? '') : ''} |`;
    }),
  );
  const notes = sorted.flatMap(([row, [{ note }]]) => (note === null ? [] : [`- **${row}**: ${note}.`]));
  const under = notes.length === 0 ? [] : ['', ...notes];
  return [
    '| row | what | published, tolerance | simulator | source |',
    '|---|---|---|---|---|',
    ...lines,
    ...under,
  ].join('\n');
}
