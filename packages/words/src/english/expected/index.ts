import { account } from './account.js';
import { category } from './category.js';
import { classSession } from './classSession.js';
import { counting } from './counting.js';
import { record } from './record.js';
import { run } from './run.js';
import { score } from './score.js';
import { sign } from './sign.js';

export { expectedByCode } from './byCode.js';

/** What each rule of input would have taken, by the rule's name (a refusal's `expected`); of rules of later pages in `later.ts`. */
export const expected = {
  ...account,
  ...category,
  ...classSession,
  ...counting,
  ...record,
  ...run,
  ...score,
  ...sign,
} as const;
