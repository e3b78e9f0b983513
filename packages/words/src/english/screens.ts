export { screens } from './screens/index.js';
