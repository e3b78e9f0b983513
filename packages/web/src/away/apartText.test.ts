import { loadWords } from '@evenfall/words';
import { expect, test } from 'vitest';
import { apartText } from './apartText.js';

test('what keeps readings apart can be put right where it was said here, and too many of them cannot', async () => {
  for (const [language, said] of [
    ['en', 'put right what was said here'],
    ['es', 'corrija lo que se dijo aquí'],
  ] as const) {
    const words = await loadWords(language);
    const text = (because: Parameters<typeof apartText>[0]['because']) =>
      apartText({ series: { from: '2026-03-03', until: '2026-03-09' }, because }, 3, words);
    expect(text(['device'])).toContain(said);
    expect(text(['device', 'too-many'])).toContain(said);
    expect(text(['too-many'])).not.toContain(said);
    expect(text(['too-many'])).not.toContain('  ');
  }
});
