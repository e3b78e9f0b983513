export type { Exported } from './csv/chartCsv.js';
export { chartCsv, noticesOf } from './csv/chartCsv.js';
export type { Cell } from './csv/csv.js';
export { csv } from './csv/csv.js';
export type { BundleOf, ProtocolKept } from './fhir/chartBundle.js';
export { chartBundle } from './fhir/chartBundle.js';
export type { AsKept } from './fhir/provenanceOf.js';
