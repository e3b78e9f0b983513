import type { Expectation } from './expectation.js';

/** Rules of the command line and of the files it is given. */
export const commandLine = {
  command: (_f, say, choices) => `a command: ${say.anyOf(choices)}`,
  'nearest-command': (_f, say, choices) => `a command (nearest: ${say.anyOf(choices)})`,
  'nearest-option': (_f, say, choices) => `an option that exists (nearest: ${say.anyOf(choices)})`,
  'value-after-it': () => 'a value after it',
  'no-value': () => 'no value; it is on when present',
  'no-argument': () => 'nothing but options',
  'fewer-arguments': () => 'fewer arguments',
  'a-file': () => 'a file or folder, or - for standard input',
  'json-text': () => 'one JSON object',
  'series-answer': () => 'an answer of evenfall home --json or ambulatory --json',
  'series-of-one-kind': () => 'answers of home alone, or of ambulatory alone',
  'readable-file': () => 'a file or folder that exists and can be read',
  'files-in-folder': () => 'at least one file in the folder',
  'one-file': () => 'one file',
  'person-id': () => 'the id of a person, as it stands in the address of their page',
  'a-scenario': () => 'the id of a simulated person (--list names them), or a file of one',
  'nearest-scenario': (_f, say, choices) =>
    `the id of a simulated person (nearest: ${say.anyOf(choices)}; --list names them), or a file of one`,
  'list-of-actions': () => 'a list of actions, 20000 at most',
  'tick-not-before': () => 'a tick that is not before that of the action ahead of it',
  'cuff-empty': (f, say) =>
    `the cuff let down first (there are ${say.number(f.value('cuffMmHg'))} mmHg in it)`,
  'wav-file': () => 'a file whose name ends in .wav',
  'new-file': () => 'a file that is not there yet (--replace writes over it)',
  'one-series-to-draw': () => 'one series: a page and a figure are drawn of one file at a time',
  'file-of-its-own': () => 'another file than --pdf names',
  'pdf-beside': () => '--pdf beside it',
  'pdf-or-svg-beside': () => '--pdf or --svg beside it',
  'writable-file': () => 'a file that can be written',
  'with-as-text': () => '--as text beside it',
  'with-lan': () => '--lan beside it',
  'certificate-with-key': () => 'a certificate with its key',
  'port-number': (f, say) => `a port from ${say.short(f.value('minimum'))} to ${f.value('maximum')}`,
} as const satisfies Record<string, Expectation>;
