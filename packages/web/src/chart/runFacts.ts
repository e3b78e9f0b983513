import { UNITS } from '@evenfall/clinical';
import type { PulseOfReading, RunContent, RunMarkedBy, SignContent } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { placeText } from '../pressure/placeText.js';
import { clocksText } from '../second/clocksText.js';
import { measureText } from '../signs/measureText.js';
import type { Fact } from './facts.js';

/**
 * What was done in a run, and what was made of it: rates, margin and what the cuff is expected to add.
 *
 * @param pulse as it stands beside the reading now; null for as the run has it
 */
export function runFacts(
  { evidence, value, override, note }: RunContent,
  words: Words,
  pulse: PulseOfReading | null = null,
): Fact[] {
  const { say } = words;
  const { run, place, circumstances, markedBy } = evidence;
  const { lostMmHg, backMmHg } = run.palpated;
  const felt = [
    lostMmHg === null ? null : words.sentence('run.feltLost', { mmHg: lostMmHg }),
    backMmHg === null ? null : words.sentence('run.feltBack', { mmHg: backMmHg }),
  ].filter((one) => one !== null);
  const above =
    value.marginMmHg === null ? null : words.sentence('run.marginAbove', { mmHg: value.marginMmHg });
  const moments = run.moments.map(({ what, mmHg, atSeconds }) => {
    const at = atSeconds === null ? '' : ` ${words.sentence('pressure.atSeconds', { seconds: atSeconds })}`;
    return `${words.title('moment', what)} ${say.short(mmHg)}${at}`;
  });
  const rates = [
    value.earlyDeflationRateMmHgPerSecond === null
      ? null
      : words.sentence('run.early', { rate: value.earlyDeflationRateMmHgPerSecond }),
    value.deflationRateMmHgPerSecond === null
      ? null
      : words.sentence('run.mean', { rate: value.deflationRateMmHgPerSecond }),
    value.dropPerBeatMmHg === null ? null : words.sentence('run.perBeat', { mmHg: value.dropPerBeatMmHg }),
  ].filter((one) => one !== null);
  return [
    [words.title('method', run.method), moments.join(', ')],
    ...(markedBy === null
      ? []
      : [[words.sentence('second.markedBy'), markedByText(run, markedBy, words)] as const]),
    [words.sentence('pressure.place'), placeText(place, words)],
    ...(run.pulsePerMinute === null
      ? []
      : [[words.sentence('app.pulse'), pulseText(run.pulsePerMinute, pulse, words)] as const]),
    ...(place.armCm === null
      ? []
      : [[words.sentence('pressure.armMeasured'), say.length(place.armCm)] as const]),
    ...(place.override === null
      ? []
      : [
          [words.sentence('pressure.overrideWhy'), `${place.override.by}: ${place.override.reason}`] as const,
        ]),
    ...(circumstances.uprightMinutes === null
      ? []
      : [[words.sentence('pressure.uprightMinutes'), say.short(circumstances.uprightMinutes, 1)] as const]),
    ...(circumstances.lyingMinutes === null
      ? []
      : [[words.sentence('pressure.lyingMinutes'), say.short(circumstances.lyingMinutes, 1)] as const]),
    ...(circumstances.unwellUpright === null
      ? []
      : [
          [
            words.sentence('pressure.askUpright'),
            words.sentence(circumstances.unwellUpright ? 'pressure.unwellUpright' : 'pressure.wellUpright'),
          ] as const,
        ]),
    ...(felt.length === 0 ? [] : [[words.sentence('run.felt'), felt.join(', ')] as const]),
    ...(run.method === 'device' ? [] : byHandFacts(run.peak?.mmHg ?? null, above, rates, words)),
    ...(value.gap === null
      ? []
      : [
          [
            words.sentence('run.gap'),
            words.sentence('run.gapBetween', { from: value.gap.fromMmHg, to: value.gap.toMmHg }),
          ] as const,
        ]),
    ...(value.biasMmHg === null
      ? []
      : [[words.sentence('run.bias'), words.sentence('run.biasOf', value.biasMmHg)] as const]),
    ...(override === null
      ? []
      : [
          [
            words.sentence('chart.byHand'),
            words.sentence('chart.byHandSays', {
              computed: `${value.systolic}/${value.diastolic ?? 'P'}`,
              reason: override.reason,
            }),
          ] as const,
        ]),
    ...(note === null ? [] : [[words.sentence('pressure.note'), note] as const]),
  ];
}

/** The pulse that a run was made with; what it was put right to since is said with it. */
function pulseText(perMinute: number, now: PulseOfReading | null, words: Words): string {
  const text = `${words.say.rate(perMinute)} ${words.sentence('app.perMinute')}`;
  if (now === null || now.was === null) return text;
  return now.perMinute === null
    ? words.sentence('chart.pulseInError', { text })
    : words.sentence('chart.pulseAmended', { text, perMinute: now.perMinute });
}

/** How far up and how fast down, by hand; what nobody wrote down or timed is said to be so. */
function byHandFacts(
  peakMmHg: number | null,
  above: string | null,
  rates: readonly string[],
  words: Words,
): Fact[] {
  const pumped = peakMmHg === null ? above : words.sentence('run.pumpedTo', { mmHg: peakMmHg, above });
  return [
    [words.sentence('run.margin'), pumped ?? words.sentence('run.notWritten')],
    [words.sentence('run.deflation'), rates.length === 0 ? words.sentence('run.notTimed') : rates.join(', ')],
  ];
}

/** Which moments a second person marked, and how far the clocks agree. */
function markedByText(
  { peak, moments }: RunContent['evidence']['run'],
  by: RunMarkedBy,
  words: Words,
): string {
  const all = [
    ...(peak === null ? [] : [{ name: words.title('mark', 'peak'), by: by.peak }]),
    ...moments.map(({ what }, at) => ({ name: words.title('moment', what), by: by.moments[at] ?? null })),
  ];
  const bySecond = all.filter((one) => one.by === 'second-person').map(({ name }) => name);
  const who = all.some((one) => one.by === 'observer')
    ? words.sentence('second.byBoth', { moments: bySecond.join(', ') })
    : words.sentence('second.bySecond');
  return `${who} ${clocksText(by.clocksWithinMs, words)}`;
}

const KEPT_UNITS = {
  temperature: UNITS.temperature[0],
  length: UNITS.length[0],
  mass: UNITS.mass[0],
} as const;

/** Whether this device shows what was typed in the unit in which it was typed. */
function isShownIn(unit: string, { say }: Words): boolean {
  const { temperature, length, mass } = say.manner;
  return [temperature, length, mass].some((one) => one === unit);
}

/** What was read of a sign; where it is shown in another unit, also in the one that is kept. */
export function signFacts({ evidence, note }: SignContent, words: Words): Fact[] {
  const { sign, typed } = evidence;
  const text = measureText(sign, words);
  const kept = measureText(sign, words.inManner(KEPT_UNITS));
  const isTypedAsKept = Object.values(KEPT_UNITS).some((unit) => unit === typed?.unit);
  return [
    [words.sentence(`app.${sign.of}`), text],
    ...(typed === null || isShownIn(typed.unit, words)
      ? []
      : [[words.sentence('signs.typedAs'), words.say.asTyped(typed)] as const]),
    ...(kept === text || isTypedAsKept ? [] : [[words.sentence('signs.keptAs'), kept] as const]),
    ...(note === null ? [] : [[words.sentence('pressure.note'), note] as const]),
  ];
}
