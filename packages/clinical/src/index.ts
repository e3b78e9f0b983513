export type { Figure, Sureness } from './contract/figure.js';
export { figures } from './contract/figure.js';
export type { Flag } from './contract/flag.js';
export type { Parsed, Refusal, RefusalCode } from './contract/refusal.js';
export { refusal } from './contract/refusal.js';
