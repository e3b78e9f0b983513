import type { ReportedContent } from '@evenfall/record';

/** A reading of a series under the name that it had in tables before they named it by its instant: series and place. */
const BY_PLACE = /^([0-9a-f]{8}(?:-[0-9a-f]{4}){3}-[0-9a-f]{12})\/(\d+)(\/pulse)?$/;

/**
 * The names of kept values as their source says them today: a reading of a series that was brought by its place has the
 * name of its instant, of several at one instant by their places the later ones a number as well.
 */
export class PlacedNames {
  private readonly places = new Map<string, string[]>();

  of({ source: { format, id } }: ReportedContent, atMs: number): string {
    const [, series, place, pulse = ''] = (format === 'csv' && BY_PLACE.exec(id ?? '')) || [];
    if (series === undefined || place === undefined) return `${format} ${id}`;
    const name = `${series}/${new Date(atMs).toISOString()}`;
    const places = this.places.get(name) ?? [];
    this.places.set(name, places);
    if (!places.includes(place)) places.push(place);
    const at = places.indexOf(place);
    return `${format} ${at === 0 ? name : `${name}/${at + 1}`}${pulse}`;
  }
}
