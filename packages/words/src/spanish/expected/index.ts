import type { expected as english } from '../../english/expected/index.js';
import type { Reworded } from '../../reworded.js';
import { account } from './account.js';
import { category } from './category.js';
import { classSession } from './classSession.js';
import { counting } from './counting.js';
import { record } from './record.js';
import { run } from './run.js';
import { score } from './score.js';
import { sign } from './sign.js';

export { expectedByCode } from './byCode.js';

/** As in `english/expected`. */
export const expected: Reworded<typeof english> = {
  ...account,
  ...category,
  ...classSession,
  ...counting,
  ...record,
  ...run,
  ...score,
  ...sign,
};
