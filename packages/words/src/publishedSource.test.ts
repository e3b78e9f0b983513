import { ACT_NOW_CONDITIONS, ACT_NOW_LIMITS } from '@evenfall/clinical';
import { describe, expect, test } from 'vitest';
import { publishedSource } from './publishedSource.js';
import { wordsFor } from './words.js';

describe('the published source alone', () => {
  test.each([
    ['NICE NG136 (bedside handbook 3.16)', 'NICE NG136'],
    [
      'ESC 2024, in Romanian J Cardiol 2026 (bedside handbook 3.5, JACC-T)',
      'ESC 2024, in Romanian J Cardiol 2026',
    ],
    ['bedside handbook 3.12 (ISH 2020, NICE NG136)', 'ISH 2020, NICE NG136'],
    ['NICE NG136, 1.1; ISH 2020 (bedside handbook 3.12)', 'NICE NG136, 1.1; ISH 2020'],
    ['JSH 2019, its grades from memory (bedside handbook 6.1)', 'JSH 2019, its grades'],
    ['CDC 2000 growth charts (bedside handbook, appendix A)', 'CDC 2000 growth charts'],
    ['docs/conventions.md section 7', null],
    [
      'docs/conventions.md section 7: no score before a place has chosen',
      'no score before a place has chosen',
    ],
    ['decision of this project (docs/conventions.md 5)', 'decision of this project'],
    ['bedside handbook 3.16', null],
    ['ISH 2020 (out-of-office handbook 5, 8)', 'ISH 2020'],
    ['not stated with these limits (out-of-office handbook 8)', 'not stated with these limits'],
    ['out-of-office handbook 13, 15', null],
    ['bedside handbook 3.4 and 3.5', null],
    ['bedside handbook 3.16; Fourth Report 2004 (bedside handbook 6.4)', 'Fourth Report 2004'],
  ])('of %s is %s', (source, published) => {
    expect(publishedSource(source)).toBe(published);
  });

  test('of every alert names nothing that only this project has', () => {
    const sources = ACT_NOW_CONDITIONS.flatMap(({ own, limits }) => [
      ...(own === null ? [] : [own.source]),
      ...limits.map((id) => ACT_NOW_LIMITS[id].figure.source),
    ]);
    expect(sources.some((source) => /bedside handbook/.test(source))).toBe(true);
    const shown = sources.map(publishedSource);
    expect(shown).toContain('NICE NG136');
    for (const one of shown) expect(one ?? 'none').not.toMatch(/bedside|from memory|^\W*$/);
  });

  test('of a rule that no published work gives says how sure it is alone', () => {
    const { sentence } = wordsFor('en');
    const of = (source: string) =>
      sentence('protocol.source', { named: publishedSource(source), sure: 'second-hand' });
    expect(of('ESC 2024 (bedside handbook 6.1)')).toBe('ESC 2024 (second-hand)');
    expect(of('bedside handbook 3.11')).toBe('second-hand');
  });
});
