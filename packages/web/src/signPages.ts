/** The signs of a round that are neither counted nor heard: fetched after the pages of a round. */
export { SignsPage } from './signs/SignsPage.js';
