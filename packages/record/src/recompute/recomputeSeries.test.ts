import { overrideFields, presetProtocol, protocolVersion } from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { answeredHome, answeredRecording } from '../chart/answeredSeries.js';
import { chartSeries } from '../chart/chartSeries.js';
import { inForceUnder } from '../content/inForce.js';
import type { SeriesContent } from '../content/series.js';
import { NOT_BY_HAND, valueOfSeries, valueStandingOf } from '../content/seriesMade.js';
import type { Entry } from '../entry/entry.js';
import { H1, homeEvidence, keptReading, seriesContentOf } from '../testing/series.js';
import { frame, idOf, kept, NO_PROTOCOL } from '../testing/work.js';
import { recomputeSeries } from './recomputeSeries.js';

/** Readings at 09:00 and 10:30, and two with exactly two hours between them, the first so many minutes after 09:00. */
const evidenceAt = (minute: number) => {
  const at = (minutes: number) => new Date(Date.UTC(2026, 6, 1, 9, minutes)).toISOString();
  const readings = [0, 90, minute, minute + 120].map((one) => keptReading(at(one), '136/84 72'));
  return homeEvidence(readings, { of: 'ambulatory' });
};

const again = (content: SeriesContent) =>
  recomputeSeries({ kind: 'series', content } as Extract<Entry, { kind: 'series' }>, () => NO_PROTOCOL).state;

// By the first rule a gap of two hours was told of or not by the minute at which it began.
test('a recording of the first rule is made again as it was, and one of now by the rule of now', () => {
  let told = 0;
  for (let minute = 120; minute < 180; minute++) {
    const evidence = evidenceAt(minute);
    const now = seriesContentOf(evidence);
    const value = valueOfSeries(evidence, NO_PROTOCOL, NOT_BY_HAND, 'ambulatory-1');
    const then = { ...now, value, computedBy: { ...now.computedBy, rule: 'ambulatory-1' } };
    expect([again(now), again(then)]).toEqual(['same', 'same']);
    expect(now.value.flags.map(({ code }) => code)).not.toContain('longest-gap');
    const asked = { byHand: NOT_BY_HAND, rules: NO_PROTOCOL, office: null };
    const answered = answeredRecording({ ...asked, content: then });
    expect(answered.result.flags.map(({ code }) => code)).toEqual(value.flags.map(({ code }) => code));
    if (!value.flags.some(({ code }) => code === 'longest-gap')) continue;
    told++;
    expect(again({ ...then, computedBy: now.computedBy })).toBe('differs');
  }
  expect(told).toBeGreaterThan(0);
});

// By the first rule a mean below the place's own limit of high could have the name of a stage that begins lower.
test('a week at home of the first rule is made again as it was, and one of now by the rule of now', () => {
  const protocol = presetProtocol({ home: 'nice-ng136' });
  if (!protocol.ok) throw new Error('nice-ng136');
  const changed = overrideFields(protocol.value, [
    { section: 'home', key: 'highSystolic', value: { comparison: '>=', limit: 155 } },
  ]);
  if (!changed.ok) throw new Error(JSON.stringify(changed.refusals));
  const inForce = inForceUnder(changed.value, protocolVersion(changed.value));
  const evidence = homeEvidence(
    H1.map((one) => ({ ...one, systolic: Number(one.systolic) + 15, diastolic: 70 })),
  );
  const now = seriesContentOf(evidence, inForce);
  const value = valueOfSeries(evidence, inForce, NOT_BY_HAND, 'home-1');
  const then = { ...now, value, computedBy: { ...now.computedBy, rule: 'home-1' } };
  const state = (content: SeriesContent) =>
    recomputeSeries({ kind: 'series', content } as Extract<Entry, { kind: 'series' }>, () => inForce).state;
  expect([now.value.category, value.category]).toEqual(['below-stage-1', 'stage-2']);
  expect([state(now), state(then)]).toEqual(['same', 'same']);
  expect(state({ ...then, computedBy: now.computedBy })).toBe('differs');
  // The page, its PDF and what is left once a hand took a reading out have the name that was kept.
  const none = { ...NOT_BY_HAND, rejected: new Set([28]) };
  for (const content of [now, then]) {
    const { category, mean } = content.value;
    const entry = kept(frame('series', content, { id: idOf(1), round: idOf(501) }), 0);
    const out = { series: idOf(1), decision: 'out', indexes: [28], reason: 'talking' };
    const [charted] = chartSeries(
      [entry, kept(frame('series-decided', out, { id: idOf(2) }), 1)],
      () => inForce,
    );
    expect(charted?.value).toMatchObject({ category, used: content.value.used - 1 });
    expect(charted?.value).toEqual(valueStandingOf(content, inForce, none));
    const answered = answeredHome({
      content,
      byHand: NOT_BY_HAND,
      rules: inForce,
      office: null,
      diary: null,
    });
    expect(answered.result).toMatchObject({ category, mean });
  }
});

test('a rule that nobody here knows cannot be told', () => {
  const now = seriesContentOf(evidenceAt(130));
  const by = { ...now.computedBy, rule: 'ambulatory-99' };
  expect(again({ ...now, computedBy: by })).toBe('unknown-rule');
  expect(
    again({
      ...seriesContentOf({ ...evidenceAt(130), of: 'home' }),
      computedBy: { ...by, rule: 'ambulatory-1' },
    }),
  ).toBe('unknown-rule');
});
