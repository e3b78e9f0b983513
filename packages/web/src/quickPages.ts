/** The short way to a signed set: fetched first of what the start page does not need. */
export { QuickPage } from './quick/QuickPage.js';
