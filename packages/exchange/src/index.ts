export type { Exported } from './csv/chartCsv.js';
export { chartCsv, noticesOf } from './csv/chartCsv.js';
export type { Cell } from './csv/csv.js';
export { csv } from './csv/csv.js';
