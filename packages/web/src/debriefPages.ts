/** What is about practice and not the room itself: what came of exercises. Fetched when it is asked for. */
import './styles/away.css';
import './styles/awayFigure.css';
import './styles/awayTables.css';
import './styles/awayPrint.css';
import './styles/debrief.css';
import './styles/simulated.css';

export { AfterPracticeRoutes } from './debrief/AfterPracticeRoutes.js';
