/** Something that hands take up or put away. */
export function Tool(props: {
  /** what it is called, or what it is called while it is not in hand and while it is */
  readonly text: string | readonly [off: string, on: string];
  readonly isOn: boolean;
  readonly onUse: () => void;
  /** Not to be used just now: it keeps its place, so that nothing moves under the hand. */
  readonly isHeld?: boolean;
}) {
  const isHeld = props.isHeld ?? false;
  const { text, isOn } = props;
  return (
    <button
      type="button"
      className="room-tool"
      aria-pressed={isOn}
      aria-disabled={isHeld}
      onClick={isHeld ? undefined : props.onUse}
    >
      {/* The longer of the two keeps its room, in whatever letters and language: nothing below it moves. */}
      {(typeof text === 'string' ? [text] : text).map((one, at) => (
        <span key={one} data-away={typeof text !== 'string' && at !== (isOn ? 1 : 0)}>
          {one}
        </span>
      ))}
    </button>
  );
}
