import type { AnyCommand } from '../command.js';
import { count } from './count.js';
import { helpCommand } from './help.js';
import { taps } from './taps.js';

/** Every command of `evenfall`, in the order in which help shows them. A new one is added here and only here. */
const ANSWERING: readonly AnyCommand[] = [count, taps];

export const commands: readonly AnyCommand[] = [...ANSWERING, helpCommand(ANSWERING)];
