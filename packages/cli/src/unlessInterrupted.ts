/** What comes of it, or null if the program is interrupted first. */
export function unlessInterrupted<Value>(work: Promise<Value>, signal: AbortSignal): Promise<Value | null> {
  const interruption = new Promise<null>((interrupted) => {
    if (signal.aborted) interrupted(null);
    signal.addEventListener('abort', () => interrupted(null), { once: true });
  });
  return Promise.race([work, interruption]);
}
