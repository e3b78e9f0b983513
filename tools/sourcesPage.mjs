const HOW_SURE = [
  ['found', 'read in the named source itself'],
  ['second-hand', 'read in a page that quotes or tabulates the named source'],
  [
    'memory',
    'widely published, not read again for this project; an alert that stands on it asks to confirm it locally',
  ],
  ['memory-low', 'from memory, with low confidence'],
  ['practice', 'common practice, no source found'],
  ['derived', 'arithmetic from a stated formula'],
  ['decision', 'a choice of this project'],
];

/** Rows of the longest table that is printed whole. */
const LONGEST_TABLE = 50;

/**
 * The page of every clinical number, made from the code: `FIGURES`, `TABLES`, `SECTIONS` and `PRESETS` of the clinical
 * package, and the figures of the simulated person and of its observers. Wording lives here; numbers and sources only there.
 */
export function sourcesPage(
  { FIGURES, COMPARISONS, TABLES, SECTIONS, PRESETS },
  { PHYSIOLOGY_FIGURES },
  { PRACTICE_FIGURES },
) {
  const parts = [
    '# Every clinical number and where it comes from',
    'Made from the code by `node tools/sources.mjs --write`; a test fails if this page and the code differ, so change ' +
      'the number in its `figures.ts` (or the protocol section) and make the page again. "Bedside handbook" is the ' +
      'project\'s collection of facts of the trade, "physiology handbook" its model book of a simulated person, by section; where a ' +
      'publication is named, that is given in full.',
    table(['how sure', 'meaning'], HOW_SURE),
  ];
  for (const [folder, figures] of Object.entries(FIGURES)) {
    const rows = Object.entries(figures).map(([id, one]) => [
      `\`${id}\``,
      shown(one.value),
      one.unit,
      sideOf(COMPARISONS[folder][id]),
      one.meaning,
      one.source,
      one.sure,
    ]);
    parts.push(
      `## clinical/${folder}`,
      table(['name', 'value', 'unit', 'applies at', 'meaning', 'source', 'how sure'], rows),
    );
    for (const [name, one] of Object.entries(TABLES[folder] ?? {})) parts.push(...publishedTable(name, one));
  }
  for (const [name, section] of Object.entries(SECTIONS)) {
    const rows = Object.entries(section.fields).map(([key, field]) => [
      `\`${key}\``,
      shown(field.value),
      field.unit ?? '',
      takes(field),
      field.meaning,
      field.source,
      field.sure,
    ]);
    parts.push(
      `## Protocol: ${name}`,
      'What stands where neither a preset nor the place says otherwise. The bounds of what a place may set are ' +
        'decisions of this project and say nothing about a person.',
      table(['field', 'value', 'unit', 'takes', 'meaning', 'source', 'how sure'], rows),
    );
  }
  const simulated = [
    ...Object.entries(PHYSIOLOGY_FIGURES).map(([folder, figures]) => ['physiology', folder, figures]),
    ...Object.entries(PRACTICE_FIGURES).map(([folder, figures]) => ['practice', folder, figures]),
  ];
  for (const [name, folder, figures] of simulated) {
    const rows = Object.entries(figures).map(([id, one]) => [
      `\`${id}\``,
      shown(one.value),
      one.unit,
      one.meaning,
      one.source,
      one.sure,
    ]);
    parts.push(
      `## ${name}/${folder}`,
      name === 'physiology'
        ? 'Of the simulated person alone: nothing here judges a reading.'
        : 'Of simulated observers and of the people a protocol is tried on: nothing here judges a reading at the bedside.',
      table(['name', 'value', 'unit', 'meaning', 'source', 'how sure'], rows),
    );
  }
  parts.push(
    '## Presets',
    table(['preset', 'section', 'field', 'value', 'source', 'how sure'], PRESETS.flatMap(presetRows)),
  );
  return `${parts.join('\n\n')}\n`;
}

/** A published table with its source; one too long to be read is named only. */
function publishedTable(name, { meaning, unit, source, sure, rows }) {
  const about = `Table \`${name}\`: ${meaning}. In ${unit}; ${rows.length} rows; ${sure}: ${source}.`;
  if (rows.length > LONGEST_TABLE) return [about];
  const headings = Object.keys(rows[0]);
  const cells = rows.map((row) =>
    headings.map((heading) => (row[heading] === null ? '' : String(row[heading]))),
  );
  return [about, table(headings, cells)];
}

/** Which side of a limit its rule applies on; empty for a number that is no limit by itself. */
function sideOf(comparison) {
  return comparison === undefined ? '' : `\`${comparison}\``;
}

function presetRows({ id, section, source, status, changes }) {
  const fields = Object.entries(changes).map(([key, one]) => [
    '',
    '',
    `\`${key}\``,
    shown(one.value),
    one.source,
    one.sure,
  ]);
  const whole = fields.length === 0 ? 'as the section stands' : '';
  return [[`\`${id}\``, `\`${section}\``, whole, '', source, status], ...fields];
}

function takes(field) {
  switch (field.kind) {
    case 'number':
      return `${shown(field.low)} to ${shown(field.high)}${field.isWhole ? ', whole' : ''}${field.comparison ? `; applies at \`${field.comparison}\`` : ''}`;
    case 'limit':
      return `${field.comparisons.join(' or ')} ${shown(field.low)} to ${shown(field.high)}${field.orNone ? ', or none' : ''}`;
    case 'numbers':
      return `a rising list, ${shown(field.low)} to ${shown(field.high)}`;
    case 'yes-no':
      return 'yes or no';
    default:
      return field.choices.join(', ');
  }
}

function shown(value) {
  if (value === null) return 'none';
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  if (typeof value === 'number') return String(Number(value.toPrecision(6)));
  if (Array.isArray(value)) return value.map(shown).join(', ');
  return typeof value === 'object' ? `${value.comparison} ${shown(value.limit)}` : value;
}

function table(headings, rows) {
  const line = (cells) => `| ${cells.map((cell) => cell.replaceAll('|', '\\|')).join(' | ')} |`;
  return [line(headings), `|${headings.map(() => ' --- |').join('')}`, ...rows.map(line)].join('\n');
}
