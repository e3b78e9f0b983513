/** The pages of a full round: fetched after the start page and the keypad, together, and ahead of their use. */
export { PressurePage } from './pressure/PressurePage.js';
export { QuickPage } from './quick/QuickPage.js';
export { MeasurePage } from './round/MeasurePage.js';
export { PreparePage } from './round/PreparePage.js';
export { RoundPage } from './round/RoundPage.js';
export { SignsPage } from './signs/SignsPage.js';
