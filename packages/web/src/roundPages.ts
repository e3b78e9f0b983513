/** The pages with which a guided round begins, up to a count: fetched after the start page, and ahead of their use. */
export { MeasurePage } from './round/MeasurePage.js';
export { PreparePage } from './round/PreparePage.js';
export { RoundPage } from './round/RoundPage.js';
