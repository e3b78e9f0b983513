export type { PdfChoices } from './pagePdf.js';
export { pagePdf } from './pagePdf.js';
