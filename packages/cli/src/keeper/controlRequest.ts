import { type IncomingMessage, request } from 'node:http';
import { Readable } from 'node:stream';
import { pipeline } from 'node:stream/promises';

/** A request to whoever keeps the record, through its socket. The body of the answer is read by the caller. */
export async function controlRequest(
  controlSocket: string,
  method: string,
  path: string,
  body?: { readonly type: string; readonly bytes: AsyncIterable<Uint8Array> },
): Promise<IncomingMessage> {
  const asking = request({
    socketPath: controlSocket,
    method,
    path,
    headers: { host: 'localhost', ...(body === undefined ? {} : { 'content-type': body.type }) },
  });
  const answer = new Promise<IncomingMessage>((resolve, reject) => {
    asking.once('response', resolve);
    asking.once('error', reject);
  });
  if (body === undefined) asking.end();
  // A refusal may come before everything was sent, and the socket then closes: the answer is what counts.
  else pipeline(Readable.from(body.bytes), asking).catch(() => undefined);
  return await answer;
}

/** The whole body of an answer, as text. */
export async function textOf(answer: IncomingMessage): Promise<string> {
  const chunks: Uint8Array[] = [];
  for await (const chunk of answer) chunks.push(chunk as Uint8Array);
  return Buffer.concat(chunks).toString('utf8');
}
