import type { laterExpected as english } from '../../english/expected/later.js';
import type { Reworded } from '../../reworded.js';
import { commandLine } from './commandLine.js';
import { files } from './files.js';
import { protocol } from './protocol.js';
import { series } from './series.js';

/** As in `english/expected/later`. */
export const laterExpected: Reworded<typeof english> = {
  ...commandLine,
  ...files,
  ...protocol,
  ...series,
};
