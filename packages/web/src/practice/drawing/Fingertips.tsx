type TipsProps = {
  /** The middle of the tips. */
  readonly x: number;
  readonly y: number;
  readonly count: 2 | 3;
  /** How far down the fingers are drawn. */
  readonly toY: number;
  readonly apart?: number;
};

/** Fingertips laid side by side along an artery, as a pulse is felt. */
export function Fingertips({ x, y, count, toY, apart = 17 }: TipsProps) {
  const first = x - ((count - 1) * apart) / 2;
  return (
    <>
      {Array.from({ length: count }, (_, at) => {
        const cx = first + at * apart;
        // The middle one of three is the longest; they come together towards the hand.
        const top = y - (count === 3 && at === 1 ? 5 : 0);
        const root = x + (cx - x) * 0.9 + 10;
        return (
          <g key={cx}>
            <path
              className="scene-finger"
              d={`M${root - 9} ${toY} C ${cx - 8} ${top + 60} ${cx - 9} ${top + 30} ${cx - 7.5} ${top + 6} C ${cx - 7} ${top - 6} ${cx + 7} ${top - 6} ${cx + 7.5} ${top + 6} C ${cx + 9} ${top + 30} ${cx + 9} ${top + 60} ${root + 9} ${toY} Z`}
            />
            <path
              className="scene-nail"
              d={`M${cx - 4.2} ${top + 9} C ${cx - 4.6} ${top - 1} ${cx + 4.6} ${top - 1} ${cx + 4.2} ${top + 9} Z`}
            />
          </g>
        );
      })}
    </>
  );
}
