/** Something that hands take up or put away. */
export function Tool(props: { readonly text: string; readonly isOn: boolean; readonly onUse: () => void }) {
  return (
    <button type="button" className="room-tool" aria-pressed={props.isOn} onClick={props.onUse}>
      {props.text}
    </button>
  );
}
