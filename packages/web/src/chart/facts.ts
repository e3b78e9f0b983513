import type { Circumstances } from '@evenfall/clinical';
import type { TapsContent } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { rangeText } from '../app/figuresText.js';
import { type Content, evidenceText, rangeName, windowTypedText } from '../parts/ValueFigures.js';

/** One line of a value's story: what it is, and what it is here. */
export type Fact = readonly [name: string, text: string];

const STARTS = {
  pulse: { beat0: 'count.isBeat0', beat1: 'count.isBeat1', any0: 'count.isAny0', any1: 'count.isAny1' },
  breaths: {
    beat0: 'count.isBeat0Breaths',
    beat1: 'count.isBeat1Breaths',
    any0: 'count.isAny0',
    any1: 'count.isAny1',
  },
} as const;
const SOURCES = { touch: 'chart.tappedTouch', key: 'chart.tappedKey', file: 'chart.tappedFile' } as const;

/** What was done: the count and its window, or the taps; and what was noticed with it. */
export function evidenceFacts(given: Content, words: Words): Fact[] {
  const done: Fact[] = [];
  const evidence = evidenceText(given, words);
  if (given.kind === 'count') {
    const { count } = given.content.evidence;
    const window = windowTypedText(given, words);
    if (window !== null) done.push([words.sentence('chart.typed'), `${evidence ?? ''}; ${window}`]);
    else {
      if (evidence !== null) done.push([words.sentence('chart.counted'), evidence]);
      done.push([
        words.sentence('chart.windowStart'),
        words.sentence(STARTS[count.of][`${count.clock}${count.first}`]),
      ]);
    }
    if ('interrupted' in count) {
      done.push([words.sentence('count.why'), words.sentence(`count.${count.interrupted.reason}`)]);
    }
  } else if (evidence !== null) {
    done.push([words.sentence(SOURCES[given.content.evidence.taps.source]), evidence]);
  }
  const noticed = noticedText(given.content.evidence.circumstances, words);
  return noticed === null ? done : [...done, [words.sentence('chart.circumstances'), noticed]];
}

function noticedText({ rhythmFelt, strength, site }: Circumstances, words: Words): string | null {
  const parts = [
    rhythmFelt === null ? null : words.title('rhythmFelt', rhythmFelt),
    strength === null ? null : words.title('strength', strength),
    site === null ? null : words.title('site', site),
  ].filter((part) => part !== null);
  return parts.length === 0 ? null : parts.join(' · ');
}

/** What was made of it, and what was set by hand over it. */
export function valueFacts(given: Content, words: Words): Fact[] {
  const { value, override } = given.content;
  const { perMinute } = value;
  const rate = perMinute === null ? words.sentence('chart.noValue') : words.say.short(perMinute, 1);
  const ends =
    given.kind === 'count'
      ? given.content.value
      : { lowPerMinute: value.lowPerMinute, highPerMinute: value.highPerMinute };
  const range = rangeText(ends, words);
  return [
    [words.sentence('chart.computed'), `${rate} ${words.sentence('app.perMinute')}`],
    ...(range === null
      ? []
      : [
          [
            override === null || perMinute === null
              ? rangeName(given, words)
              : words.sentence('count.rangeOfComputed', { perMinute }),
            range,
          ] as const,
        ]),
    ...(override === null
      ? []
      : [
          [
            words.sentence('chart.byHand'),
            words.sentence('chart.byHandSays', { computed: rate, reason: override.reason }),
          ] as const,
        ]),
  ];
}

/** The statistics of the intervals between taps. What could not be told says so, and is never a zero. */
export function statisticsFacts({ value }: TapsContent, words: Words): Fact[] {
  const { say } = words;
  const unknown = words.sentence('chart.couldNotTell');
  const ms = (figure: number | null) =>
    figure === null ? unknown : words.sentence('chart.milliseconds', { ms: figure });
  const index = (figure: number | null) => (figure === null ? unknown : say.number(figure, 2));
  const repairs = value.repairs.map(({ index: at, what, added }) =>
    what === 'missed'
      ? words.sentence('taps.missed', { index: at, added })
      : words.sentence('taps.doubled', { index: at }),
  );
  return [
    [words.sentence('chart.beats'), say.number(value.beats)],
    [words.sentence('chart.rhythm'), words.title('rhythm', value.rhythm)],
    ...(repairs.length === 0 ? [] : [[words.sentence('chart.repaired'), repairs.join(' ')] as const]),
    [words.sentence('chart.meanInterval'), ms(value.meanIntervalMs)],
    [words.sentence('chart.sdInterval'), ms(value.sdIntervalMs)],
    [words.sentence('chart.cv'), index(value.cv)],
    [words.sentence('chart.rmssd'), ms(value.rmssdMs)],
    [words.sentence('chart.nrmssd'), index(value.nrmssd)],
    [words.sentence('chart.turningPointRatio'), index(value.turningPointRatio)],
    [words.sentence('chart.shannonEntropy'), index(value.shannonEntropy)],
    [words.sentence('chart.tapJitter'), ms(value.tapJitterMs)],
  ];
}
