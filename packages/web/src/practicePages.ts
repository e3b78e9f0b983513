/** The practice room: fetched last of all, since nothing of a bedside needs it. */
import './styles/practice.css';
import './styles/practiceScene.css';
import './styles/practiceHands.css';
import './styles/practiceWriting.css';
import './styles/practiceRoom.css';
import './styles/roomMode.css';
import './styles/practiceSizes.css';
import './styles/simulated.css';

export { PracticePage } from './practice/PracticePage.js';
export { RoomModePage } from './practice/RoomModePage.js';
export { RoomPage } from './practice/RoomPage.js';
