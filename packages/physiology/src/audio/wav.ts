/** Bytes before the samples of a file without a comment. */
const HEAD = 44;

/**
 * A WAVE file: one channel, 16 bits, linear PCM. Samples from -1 to 1; what lies beyond is cut. A comment goes into a
 * LIST INFO chunk after the samples (its ICMT), in ASCII, where every player finds it.
 * Source: Multimedia Programming Interface and Data Specifications 1.0 (IBM and Microsoft 1991), RIFF and WAVE.
 */
export function wav(samples: Float32Array, rate: number, comment: string | null = null): Uint8Array {
  const dataBytes = samples.length * 2;
  const info = comment === null ? new Uint8Array(0) : infoChunk(comment);
  const bytes = new Uint8Array(HEAD + dataBytes + info.length);
  const view = new DataView(bytes.buffer);
  putText(bytes, 0, 'RIFF');
  view.setUint32(4, bytes.length - 8, true);
  putText(bytes, 8, 'WAVEfmt ');
  view.setUint32(16, 16, true);
  view.setUint16(20, 1, true);
  view.setUint16(22, 1, true);
  view.setUint32(24, rate, true);
  view.setUint32(28, rate * 2, true);
  view.setUint16(32, 2, true);
  view.setUint16(34, 16, true);
  putText(bytes, 36, 'data');
  view.setUint32(40, dataBytes, true);
  for (let i = 0; i < samples.length; i++) {
    const scaled = Math.floor((samples[i] as number) * 32_767 + 0.5);
    view.setInt16(HEAD + 2 * i, Math.max(-32_768, Math.min(32_767, scaled)), true);
  }
  bytes.set(info, HEAD + dataBytes);
  return bytes;
}

function infoChunk(comment: string): Uint8Array {
  // Ends with a zero; chunks begin at even places.
  const length = comment.length + 1;
  const padded = length + (length % 2);
  const chunk = new Uint8Array(20 + padded);
  const view = new DataView(chunk.buffer);
  putText(chunk, 0, 'LIST');
  view.setUint32(4, 12 + padded, true);
  putText(chunk, 8, 'INFOICMT');
  view.setUint32(16, length, true);
  putText(chunk, 20, comment);
  return chunk;
}

function putText(bytes: Uint8Array, at: number, text: string): void {
  for (let i = 0; i < text.length; i++) {
    const code = text.charCodeAt(i);
    bytes[at + i] = code < 128 ? code : 63;
  }
}
