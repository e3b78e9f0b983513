import { z } from 'zod';
import { id } from '../entry/id.js';

/** Who acts. What they were in an act (observer, supervisor, ...) stands on the act. */
export const agent = z.object({ id, name: z.string().trim().min(1).max(200) }).strict();
export type Agent = z.infer<typeof agent>;
