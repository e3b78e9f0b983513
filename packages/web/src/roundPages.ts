/** The pages of a guided round but its other signs: fetched after the start page, and ahead of their use. */
export { PressurePage } from './pressure/PressurePage.js';
export { MeasurePage } from './round/MeasurePage.js';
export { PreparePage } from './round/PreparePage.js';
export { RoundPage } from './round/RoundPage.js';
