type WaitLineProps = {
  readonly text: string;
  /** Whether the wait is over: only that is announced, not every second before it. */
  readonly isOver: boolean;
};

/** How long is to be waited, for the eye as it runs, for the ear when it is over. */
export function WaitLine({ text, isOver }: WaitLineProps) {
  return (
    <p className="pump-wait">
      <span role="timer">{isOver ? null : text}</span>
      <span role="status">{isOver ? text : null}</span>
    </p>
  );
}
