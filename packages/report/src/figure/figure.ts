import { element, escaped, type Svg } from '../svg/svg.js';
import type { Paint } from './paint.js';

/** One thing in a figure that a pointer or a key can come to, and what it says there. */
export type Mark = {
  /** Unlike every other in its figure; the class `key-KEY` of its element. */
  readonly key: string;
  /** The reading it is of (`SeriesReading.index`); null where it is of none or of several. */
  readonly index: number | null;
  /** In the figure's own units (`width`, `height`). */
  readonly x: number;
  readonly y: number;
  readonly text: string;
  /** False where a rule or a hand left it out. */
  readonly isUsed: boolean;
};

/** The data of a figure as rows, for whoever cannot see it or wants the numbers. */
export type DataTable = {
  readonly caption: string;
  readonly columns: readonly string[];
  readonly rows: readonly (readonly string[])[];
};

/** A figure: the drawing as text of SVG, what it says without being seen, its marks in order of reading, its data. */
export type Figure = {
  readonly svg: Svg;
  readonly width: number;
  readonly height: number;
  readonly title: string;
  readonly description: string;
  readonly marks: readonly Mark[];
  readonly table: DataTable;
};

/** How a figure is to be drawn. `id` begins the ids in it, so that several can stand on one page. */
export type Drawing = {
  readonly id: string;
  readonly width: number;
  readonly height: number;
  readonly paint: Paint;
};

/** A whole drawing with its text alternative. */
export function drawn(
  { id, width, height, paint }: Drawing,
  title: string,
  description: string,
  locale: string,
  parts: readonly Svg[],
): Svg {
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width,
      height,
      viewBox: `0 0 ${width} ${height}`,
      role: 'img',
      lang: locale,
      'aria-labelledby': `${id}-title ${id}-description`,
      'font-family': paint.font,
      class: 'figure',
    },
    [
      element('title', { id: `${id}-title` }, [escaped(title)]),
      element('desc', { id: `${id}-description` }, [escaped(description)]),
      ...parts,
    ],
  );
}
