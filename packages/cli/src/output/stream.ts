/** Writes and waits until the reader has taken it, so that a slow reader is not outrun. */
export function write(stream: NodeJS.WritableStream, text: string | Uint8Array): Promise<void> {
  return new Promise((done, fail) => {
    stream.write(text, (fault) => (fault ? fail(fault) : done()));
  });
}
