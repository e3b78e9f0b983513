export type { Exported } from './csv/chartCsv.js';
export { chartCsv } from './csv/chartCsv.js';
export type { Cell } from './csv/csv.js';
export { csv } from './csv/csv.js';
