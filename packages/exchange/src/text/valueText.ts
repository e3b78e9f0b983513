import { lineOfScore, type Sign } from '@evenfall/clinical';
import {
  type AmendedEntry,
  type ChartRound,
  chartedPerMinute,
  failedGauge,
  openReasons,
  pressureWritten,
  pulseOfReading,
  type StoredEntry,
} from '@evenfall/record';
import { readingTexts, type Words } from '@evenfall/words';

/** By what a value of a round is written. */
export type ValueOf = {
  readonly round: ChartRound;
  readonly words: Words;
  /** The gauges of the place as they stand, so that what was read from one that failed since says so; null: they are not known. One of another place is in no list of this one. */
  readonly gauges: Parameters<typeof failedGauge>[1] | null;
};

export type RunEntry = StoredEntry & { readonly kind: 'run' };

/**
 * A value with what is to be known of it beside it.
 *
 * @param places where a pressure was taken, if that is to stand beside it
 */
export function valueText(
  entry: StoredEntry,
  value: AmendedEntry,
  { round, words, gauges }: ValueOf,
  places: readonly string[] = [],
): string | null {
  const text = numberText(entry, words);
  if (text === null) return null;
  const beside =
    entry.kind === 'run'
      ? [
          ...places,
          ...readingTexts(ownPulse(entry, round), entry.content.evidence.circumstances, words),
          ...gaugeTexts(entry, gauges, words),
        ]
      : doubtsOf(entry, round, words);
  return withBeside(text, [...beside, ...amendedTexts(value, text, words)]);
}

/** A value alone; null for what has no number. */
function numberText(entry: StoredEntry, words: Words): string | null {
  if (entry.kind === 'run') return pressureWritten(entry.content);
  if (entry.kind === 'sign') return signText(entry.content.evidence.sign, words);
  const perMinute = chartedPerMinute(entry);
  return perMinute === null ? null : words.say.rate(perMinute);
}

/** The pulse of a reading, per minute; null where it is the count of the round, which has a field of its own. */
function ownPulse(entry: RunEntry, round: ChartRound): number | null {
  const { perMinute, isCounted } = pulseOfReading(entry, round);
  return isCounted ? null : perMinute;
}

/** What somebody elsewhere must know of a rate: that it was felt irregular, that a longer count was asked for in vain. */
function doubtsOf(entry: StoredEntry, round: ChartRound, words: Words): readonly string[] {
  if (entry.kind !== 'count' && entry.kind !== 'taps') return [];
  const isIrregular = entry.content.evidence.circumstances.rhythmFelt === 'irregular';
  const isOpen = (entry.content.value?.nextWindowSeconds ?? null) !== null;
  return [
    ...(isIrregular ? [words.sentence('handover.feltIrregular')] : []),
    ...(isOpen && openReasons(entry, round).length > 0 ? [words.sentence('handover.longerAsked')] : []),
  ];
}

export function withBeside(text: string, beside: readonly string[]): string {
  return beside.length === 0 ? text : `${text} (${beside.join(', ')})`;
}

function signText(sign: Sign, words: Words): string {
  const { say } = words;
  switch (sign.of) {
    case 'temperature':
      return words.sentence('signs.temperatureIs', {
        celsius: sign.celsius,
        site: words.title('temperatureSite', sign.site),
      });
    case 'oxygen-saturation': {
      const percent = say.number(sign.percent);
      return words.sentence(sign.onOxygen ? 'signs.onOxygenIs' : 'signs.onAirIs', { percent });
    }
    case 'pain':
      return sign.score === null
        ? words.title('painWord', sign.word ?? 'none')
        : sign.tool === 'visual-analogue'
          ? words.sentence('signs.painOnLine', { mm: say.short(lineOfScore(sign.score), 1) })
          : words.sentence('signs.painIs', { score: say.short(sign.score, 1) });
    case 'consciousness':
      return words.title('consciousness', sign.level);
    case 'weight':
      return words.sentence('signs.weightIs', {
        kg: sign.kg,
        how: words.title('howKnown', sign.how),
      });
    case 'height':
      return words.sentence(sign.lying ? 'signs.lengthIs' : 'signs.heightIs', {
        cm: sign.cm,
        how: words.title('howKnown', sign.how),
      });
  }
}

/** That a reading was read from a gauge that failed a check, so that it is in doubt; or that nobody can say so here. */
export function gaugeTexts(entry: RunEntry, gauges: ValueOf['gauges'], words: Words): readonly string[] {
  const { gauge } = entry.content.evidence;
  if (gauge == null) return [];
  if (gauges === null || !gauges.some(({ id }) => id === gauge))
    return [words.sentence('handover.gaugeNotKnown')];
  const failed = failedGauge(entry, gauges);
  return failed === null ? [] : [words.sentence('handover.gaugeFailed', { name: failed.name })];
}

/** That a value was amended, and what it was where that was another number: whoever reads it may have heard it. */
function amendedTexts({ original, standing }: AmendedEntry, now: string, words: Words): readonly string[] {
  if (standing !== 'amended') return [];
  const was = numberText(original, words);
  return [
    was === null || was === now
      ? words.sentence('handover.amended')
      : words.sentence('handover.amendedFrom', { text: was }),
  ];
}
