/** The practice room: fetched last of all, since nothing of a bedside needs it. */
import './styles/practice.css';
import './styles/simulated.css';

export { PracticePage } from './practice/PracticePage.js';
export { RoomModePage } from './practice/RoomModePage.js';
export { RoomPage } from './practice/RoomPage.js';
