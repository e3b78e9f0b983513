/** What not every guided round comes to: other signs, beats or breaths that are tapped, moments that were marked in time. Fetched after the rest of a round, and ahead of its use. */

export { ReadBackPanel } from './pressure/ReadBackPanel.js';
export { TappingPanel } from './round/TappingPanel.js';
export { SignsPage } from './signs/SignsPage.js';
