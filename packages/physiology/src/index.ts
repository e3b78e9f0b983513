export { STREAMS, type Stream, uniform } from './chance/uniform.js';
