/**
 * The lines of a stream of UTF-8, without their ends. Nothing is read before it is asked for, so that no line is
 * lost while whoever wants them is still getting ready.
 *
 * Errors: throws on bytes that are not UTF-8.
 */
export async function* linesOf(chunks: AsyncIterable<Uint8Array>): AsyncGenerator<string> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  let rest = '';
  for await (const chunk of chunks) {
    const lines = (rest + decoder.decode(chunk, { stream: true })).split('\n');
    rest = lines.pop() ?? '';
    for (const line of lines) yield line.replace(/\r$/, '');
  }
  rest += decoder.decode();
  if (rest !== '') yield rest;
}
