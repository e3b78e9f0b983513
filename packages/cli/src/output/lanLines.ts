import type { Lan } from '@evenfall/api';
import type { Words } from '@evenfall/words';

/** How a phone reaches the server, as lines of a terminal: the addresses, a QR picture, and what to compare. */
export function lanLines(
  { addresses, explained, fingerprint, picture, isOpen }: Lan,
  words: Words,
): readonly string[] {
  return [
    '',
    words.sentence('reach.addresses'),
    ...addresses.map((one) => `  ${one}`),
    ...(isOpen ? [words.sentence('reach.openToAll')] : []),
    ...(explained === null ? [] : ['', `${words.sentence('reach.explainedAt')}: ${explained}phone`]),
    '',
    ...picture.map((line) => `  ${line}`),
    ...(fingerprint === null
      ? [words.sentence('reach.givenCertificate')]
      : [
          words.sentence('reach.pictureFirst'),
          `${words.sentence('reach.fingerprint')}:`,
          ...halves(fingerprint),
        ]),
    '',
  ];
}

/** Two lines of a terminal hold 32 pairs. */
function halves(fingerprint: string): readonly string[] {
  const pairs = fingerprint.split(':');
  return [pairs.slice(0, 16), pairs.slice(16)].map((half) => `  ${half.join(':')}`);
}
