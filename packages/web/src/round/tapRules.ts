/** What is made of taps, with the distributions that it needs: a part of its own, since no round that is typed needs them. */
export { tapResult } from '@evenfall/clinical';
export { chartTaps } from '@evenfall/record';
