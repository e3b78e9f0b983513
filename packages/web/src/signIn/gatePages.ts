/** What stands before the app: fetched only where somebody has to sign in. */
export { OwnPhrasePage } from './OwnPhrasePage.js';
export { SignInPage } from './SignInPage.js';
