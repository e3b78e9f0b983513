import type { Expectation } from './expectation.js';

/** Rules of files that come and go: texts by a template, tables, bundles and backups. */
export const files = {
  'template-field': () => 'a field of the list',
  'closed-brace': (f, say) => `a } after the { at sign ${say.short(f.value('at'))}`,
  'closed-bracket': (f, say) => `a ] after the [ at sign ${say.short(f.value('at'))}`,
  'opened-before': () => 'a { or [ before it, or the sign twice',
  'no-part-in-part': () => 'a ] before another [, or the sign twice',
  'fhir-bundle': () => 'a FHIR bundle (JSON), or a table that evenfall export wrote (CSV)',
  'closed-quote': () => 'a quote that is closed',
  'heading-of-chart': () => 'the headings of a table that evenfall export --as csv wrote',
  'schema-of-chart': (f, say) => `evenfall-chart-${say.short(f.value('newest'))} or older`,
  'cells-as-headings': (f, say) => `${say.short(f.value('wanted'))} cells, as many as there are headings`,
  'fhir-resource': () => 'a resource with its type',
  'vital-sign-code': () =>
    'a LOINC code of a pressure, pulse, breaths, temperature, saturation, weight or height',
  'systolic-component': () => 'a component with a systolic pressure',
  quantity: () => 'a quantity with its value and unit',
  'one-of-each': () => 'one systolic and at most one diastolic, so that it is clear which is the pressure',
  'what-it-corrects': () =>
    'a history of the source that tells which measurement this corrects: it is kept beside those under its name, at the times that came',
  'not-corrected': () =>
    'a history of the source that tells whether this was corrected: it is kept beside a later correction under its name, at the time that came',
  'no-modifier': () =>
    'an Observation that nothing changes the meaning of: this program does not know the extension',
  'no-comparator': () => 'a number, not more or less than one',
  'one-effective': () => 'one time: a moment or a period',
  'one-subject': () => 'the same person in every resource: a file of several people is nobody’s chart',
  'person-of-bundle': () => 'the person whom the file is of, or no --person at all',
  'book-of-care-or-practice': () => 'a file of one book; what a class read of each other is brought nowhere',
  'identity-in-bundle': () =>
    'who the person is, since they are not here yet: write the file with --with-identity',
  'number-as-written': () =>
    'the person’s number as it was written, guarded as a text: a spreadsheet takes zeros off a bare one. Take the bundle of this person instead, or name a person who is here already',
  'same-birth-date': () => 'a file of the same person: the birth date in it is another',
  'no-test-data': () => 'data of real people: what is marked as test data goes into no chart',
  'json-line': () => 'a line of JSON',
  trailer: () => 'the last line of a whole backup',
  'trailer-last': () => 'nothing after the last line of a backup',
  'whole-record': () => 'a backup in which everything that is named is there, once',
  'empty-record': () => 'a record that holds nothing yet: restore into a new folder or database',
  'header-first': () => 'the header line first',
  'header-once': () => 'one header line',
  'backup-version-known': (f, say) => `a backup of version ${say.short(f.value('newest'))} or older`,
  'same-purpose': () => 'a backup of the same purpose: invented people stay apart from real ones',
  'hash-of-lines': () =>
    'the checksum of the lines above: this file was changed after it was written, so use another copy',
  'count-of-lines': () =>
    'as many lines as were written: this file was changed after it was written, so use another copy',
} as const satisfies Record<string, Expectation>;
