import { commandLine } from './commandLine.js';
import { files } from './files.js';
import { protocol } from './protocol.js';
import { series } from './series.js';

/** What rules of input would have taken that only later pages, files and the command line know. */
export const laterExpected = {
  ...commandLine,
  ...files,
  ...protocol,
  ...series,
} as const;
