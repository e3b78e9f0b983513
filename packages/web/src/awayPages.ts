/** Readings from away from the clinic and what they come to: fetched last, since nothing of the bedside needs them. */
import './styles/away.css';

export { AwayNewPage } from './away/AwayNewPage.js';
export { SeriesPage } from './away/SeriesPage.js';
