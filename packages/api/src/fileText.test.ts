import { expect, test } from 'vitest';
import { fileText } from './fileText.js';

// Byte-order marks: The Unicode Standard 15.0, table 23-5 (from memory); RFC 3629 section 6 for UTF-8.
test.each([
  [[0x64, 0xc2, 0xb0], 'd°'],
  [[0xef, 0xbb, 0xbf, 0x64], 'd'],
  [[0xff, 0xfe, 0x64, 0x00, 0xb0, 0x00], 'd°'],
  [[0xfe, 0xff, 0x00, 0x64, 0x00, 0xb0], 'd°'],
  [[], ''],
])('bytes %j are read as %s', (bytes, text) => {
  expect(fileText(new Uint8Array(bytes))).toBe(text);
});
