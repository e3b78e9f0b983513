export type { PdfChoices } from './pagePdf.js';
export { pagePdf } from './pagePdf.js';
export type { PaperId } from './paper.js';
export { PAPER_IDS } from './paper.js';
