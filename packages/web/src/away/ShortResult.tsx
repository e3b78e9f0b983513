import type { HomeAsked } from '@evenfall/clinical';
import { type InForce, type SeriesContent, seriesLimits } from '@evenfall/record';
import { homeGapsText } from '@evenfall/report';
import { useApp } from '../app/context.js';
import { Flags } from '../parts/Flags.js';
import { isNothingLeftOut } from './LeftOut.js';
import { RulesNamed } from './RulesNamed.js';
import { NO_LIMITS, pairText } from './readingText.js';

type ShortProps = {
  readonly content: Pick<SeriesContent, 'of' | 'value' | 'computedBy' | 'readings' | 'refused'>;
  readonly rules: InForce | null;
  /** What was asked for at home and came; null where nothing asks for readings. */
  readonly asked: HomeAsked | null;
};

/** The mean, what it is called by the rule set, and how many readings it is of. */
export function ShortResult({ content, rules, asked }: ShortProps) {
  const { words } = useApp();
  const { of, value, readings, refused } = content;
  const limits = (part: 'mean' | 'day' | 'night') =>
    rules === null ? NO_LIMITS : seriesLimits(of, part, rules);
  const pulse = value.mean.pulse;
  const gaps = homeGapsText(asked, words);
  return (
    <>
      <p className="away-mean">
        <strong>{pairText(value.mean, limits('mean'), words)}</strong>{' '}
        <span>
          {words.sentence(of === 'home' ? 'away.meanOf' : 'away.wholeMeanOf', {
            used: value.used,
            // Whatever came and is not in the mean is counted below as left out.
            readings: readings.length + refused.length,
          })}
          {pulse === null ? null : `, ${words.sentence('away.pulseIs', { pulse })}`}
          {isNothingLeftOut(content) && gaps === null ? `. ${words.sentence('away.nothingLeftOut')}` : null}
        </span>
      </p>
      {gaps === null ? null : <p>{gaps}.</p>}
      {of === 'home' ? <HomeCategory value={value} /> : null}
      {of === 'ambulatory' ? (
        <p>
          {words.sentence('away.dayNight', {
            day: value.day === null ? '–' : pairText(value.day, limits('day'), words),
            night: value.night === null ? '–' : pairText(value.night, limits('night'), words),
          })}
        </p>
      ) : null}
      {of === 'ambulatory' && value.category !== null ? (
        <p>
          {words.sentence('away.patternIs', {
            text: words.sentence('series.consistentWith', {
              names: words.title('ambulatoryPattern', value.category),
            }),
          })}
        </p>
      ) : null}
      <Flags flags={value.why} />
      <Flags flags={value.flags} />
      <RulesNamed of={of} computedBy={content.computedBy} />
    </>
  );
}

/** The rule set's own name for the mean; it stands before any chance. */
export function HomeCategory({ value }: { readonly value: SeriesContent['value'] }) {
  const { words } = useApp();
  const category =
    value.category === null
      ? words.sentence('series.noCategory')
      : words.sentence('series.categoryOf', { category: words.title('homeCategory', value.category) });
  return (
    <p className="away-category">
      {words.sentence('away.categoryIs', { text: category })}
      {value.high === null ? null : ` ${words.sentence(value.high ? 'away.high' : 'away.notHigh')}`}
    </p>
  );
}
