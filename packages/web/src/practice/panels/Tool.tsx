/** Something that hands take up or put away. */
export function Tool(props: {
  readonly text: string;
  readonly isOn: boolean;
  readonly onUse: () => void;
  /** Not to be used just now: it keeps its place, so that nothing moves under the hand. */
  readonly isHeld?: boolean;
}) {
  const isHeld = props.isHeld ?? false;
  return (
    <button
      type="button"
      className="room-tool"
      aria-pressed={props.isOn}
      aria-disabled={isHeld}
      onClick={isHeld ? undefined : props.onUse}
    >
      {props.text}
    </button>
  );
}
