export type { World } from './command.js';
export { program } from './program.js';
