import { account } from './account.js';
import { category } from './category.js';
import { classSession } from './classSession.js';
import { commandLine } from './commandLine.js';
import { counting } from './counting.js';
import { protocol } from './protocol.js';
import { record } from './record.js';
import { run } from './run.js';
import { score } from './score.js';
import { series } from './series.js';
import { sign } from './sign.js';

export { expectedByCode } from './byCode.js';

/** What each rule of input would have taken, by the rule's name (a refusal's `expected`). */
export const expected = {
  ...account,
  ...category,
  ...classSession,
  ...counting,
  ...protocol,
  ...record,
  ...run,
  ...score,
  ...series,
  ...sign,
  ...commandLine,
} as const;
