import { STRIP_WIDTH, type StripMark, type StripShape } from './stripGeometry.js';

type StripProps = { readonly strip: StripShape; readonly label: string };

const EDGE = 6;
const HEIGHT = 32;
const LINE = 24;
/** Rings smaller than this are drawn with a thinner line, so that they stay open. */
const SMALL = 2;

/** The beats in their window. Each kind of mark has a shape of its own, whatever the colour. */
export function Strip({ strip, label }: StripProps) {
  const size = Math.min(3.4, strip.gap * 0.36);
  return (
    <svg
      className="strip"
      viewBox={`${-EDGE} 0 ${STRIP_WIDTH + 2 * EDGE} ${HEIGHT}`}
      role="img"
      aria-label={label}
    >
      <path
        className="strip-window"
        d={`M${-EDGE + 1} ${LINE - 8} V${LINE + 5} M${-EDGE + 1} ${LINE} H${STRIP_WIDTH + EDGE - 1} M${STRIP_WIDTH + EDGE - 1} ${LINE - 8} V${LINE + 5}`}
      />
      {strip.marks.map((mark) => (
        <Mark key={`${mark.is}-${mark.x}`} mark={mark} size={size} />
      ))}
    </svg>
  );
}

/** A line for a tap, an open ring for a counted beat, a dotted line for one put in, a cross for one taken out. */
function Mark({ mark: { x, is }, size }: { readonly mark: StripMark; readonly size: number }) {
  switch (is) {
    case 'timed':
      return <path className="strip-timed" d={`M${x} ${LINE} V6`} />;
    case 'missed':
      return <path className="strip-missed" d={`M${x} ${LINE} V6`} />;
    case 'doubled':
      return <path className="strip-doubled" d={`M${x - 3} 7 l6 6 m0 -6 l-6 6`} />;
    case 'even':
      return (
        <circle
          className={size < SMALL ? 'strip-even strip-even-small' : 'strip-even'}
          cx={x}
          cy={LINE - 8}
          r={size}
        />
      );
  }
}
