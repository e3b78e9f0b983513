/** Readings from away from the clinic and what they come to: fetched last, since nothing of the bedside needs them. */
import './styles/away.css';
import './styles/awayFigure.css';
import './styles/awayIntake.css';
import './styles/awayTables.css';
import './styles/awayPrint.css';

export { AwayNewPage } from './away/AwayNewPage.js';
export { SeriesPage } from './away/SeriesPage.js';
