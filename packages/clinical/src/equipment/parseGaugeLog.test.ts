import { describe, expect, test } from 'vitest';
import { parseGaugeLog } from './parseGaugeLog.js';

const places = (input: unknown) => {
  const read = parseGaugeLog(input);
  return read.ok ? [] : read.refusals.map(({ field, code }) => `${field} ${code}`);
};

describe('what was done with a gauge', () => {
  test('is read from text as from numbers', () => {
    expect(parseGaugeLog({ of: 'zero', restMmHg: '-2' })).toEqual({
      ok: true,
      value: { of: 'zero', restMmHg: -2 },
    });
    expect(parseGaugeLog({ of: 'leak', fromMmHg: '200', toMmHg: '196', seconds: 60 })).toEqual({
      ok: true,
      value: { of: 'leak', fromMmHg: 200, toMmHg: 196, seconds: 60 },
    });
    expect(parseGaugeLog({ of: 'dropped' })).toEqual({ ok: true, value: { of: 'dropped' } });
  });

  test('leaves out points of which nothing was read, and asks for the other half of one', () => {
    const points = [
      { referenceMmHg: '100', gaugeMmHg: '104' },
      { referenceMmHg: '', gaugeMmHg: '' },
    ];
    expect(parseGaugeLog({ of: 'comparison', reference: ' column ', points })).toEqual({
      ok: true,
      value: { of: 'comparison', reference: 'column', points: [{ referenceMmHg: 100, gaugeMmHg: 104 }] },
    });
    const half = [...points, { referenceMmHg: '150', gaugeMmHg: '' }];
    expect(places({ of: 'comparison', reference: 'column', points: half })).toEqual([
      '/points/2/gaugeMmHg missing',
    ]);
  });

  test.each([
    [{ of: 'zero' }, ['/restMmHg missing']],
    [{ of: 'zero', restMmHg: '' }, ['/restMmHg missing']],
    [{ of: 'zero', restMmHg: '0,5' }, ['/restMmHg not-a-number']],
    [{ of: 'zero', restMmHg: 401 }, ['/restMmHg out-of-range']],
    [{ of: 'zero', restMmHg: 400 }, []],
    [{ of: 'zero', restMmHg: -401 }, ['/restMmHg out-of-range']],
    [{ of: 'leak', fromMmHg: 100, toMmHg: 101, seconds: 60 }, ['/toMmHg out-of-order']],
    [{ of: 'leak', fromMmHg: 100, toMmHg: 100, seconds: 0 }, ['/seconds out-of-range']],
    [{ of: 'leak', fromMmHg: 100, toMmHg: 100, seconds: 3600 }, []],
    [{ of: 'leak', fromMmHg: 100, toMmHg: 100, seconds: 3601 }, ['/seconds out-of-range']],
    [{ of: 'comparison', reference: ' ', points: [] }, ['/reference missing', '/points missing']],
    [{ of: 'polished' }, ['/of unknown-id']],
    [{}, ['/of missing']],
  ])('%j: %j', (input, refused) => {
    expect(places(input)).toEqual(refused);
  });
});
