import type { CountContent, TapsContent } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { rangeText } from '../app/figuresText.js';
import { Strip } from './Strip.js';
import { countStrip, tapsStrip } from './stripGeometry.js';

export type Content =
  | { readonly kind: 'count'; readonly content: CountContent }
  | { readonly kind: 'taps'; readonly content: TapsContent };

/** A rate as charted: set by hand if it was, else computed; a dash where there is none. */
export function rateText({ content }: Content, { say }: Words): string {
  const perMinute = content.override?.perMinute ?? content.value.perMinute;
  return perMinute === null ? '–' : say.rate(perMinute);
}

/** What was done, in a few words: "19 in 15 s", "31 taps in 24.6 s". Null for a void count. */
export function evidenceText(given: Content, words: Words): string | null {
  if (given.kind === 'taps') {
    const { seconds } = given.content.evidence.taps;
    return words.sentence('taps.tapsInSeconds', { n: seconds.length, seconds: spanOf(seconds) });
  }
  const { count, rateTyped } = given.content.evidence;
  if (!('n' in count)) return null;
  // What a window would hold of a rate that was typed is no count that anybody made.
  if (rateTyped !== null)
    return words.sentence('count.rateTyped', { perMinute: given.content.value.perMinute ?? 0 });
  return words.sentence('count.inSeconds', { n: count.n, seconds: count.windowSeconds });
}

/** Of a rate that was typed, over how long it was counted as far as that is known; null of anything else. */
export function windowTypedText(given: Content, words: Words): string | null {
  if (given.kind === 'taps') return null;
  const { count, rateTyped } = given.content.evidence;
  if (rateTyped === null) return null;
  const key = rateTyped === 'window-said' ? 'count.windowSaid' : 'count.windowPresumed';
  return words.sentence(key, { seconds: count.windowSeconds });
}

/** Whether it was broken off: it gives no number, and none was ever set over it. */
export function isVoidContent(given: Content): boolean {
  return (
    given.kind === 'count' && 'interrupted' in given.content.evidence.count && given.content.override === null
  );
}

/** The big numeral with its unit. */
export function Rate({ given, isStruck = false }: { readonly given: Content; readonly isStruck?: boolean }) {
  const { words } = useApp();
  const number = rateText(given, words);
  return (
    <p className="rate">
      {isStruck ? <s className="rate-number">{number}</s> : <span className="rate-number">{number}</span>}
      <span className="rate-unit">{words.sentence('app.perMinute')}</span>
      {given.content.override === null ? null : (
        <span className="small rate-hand">{words.sentence('chart.byHand')}</span>
      )}
    </p>
  );
}

/** The likely range, where there is one. */
export function RangeLine({ given }: { readonly given: Content }) {
  const { words } = useApp();
  const { value } = given.content;
  const ends =
    given.kind === 'count'
      ? given.content.value
      : { lowPerMinute: value.lowPerMinute, highPerMinute: value.highPerMinute };
  const text = rangeText(ends, words);
  if (text === null) return null;
  // A rate set by hand has no range: the one there is belongs to what was computed.
  const computed = given.content.override === null ? null : value.perMinute;
  return (
    <p className="rate-range">
      <span className="soft">
        {computed !== null
          ? words.sentence('count.rangeOfComputed', { perMinute: computed })
          : rangeName(given, words)}
      </span>{' '}
      {text}
    </p>
  );
}

/** What a range is called: of a rate whose window was presumed, under what it holds. */
export function rangeName(given: Content, words: Words): string {
  if (given.kind === 'taps' || given.content.evidence.rateTyped !== 'window-presumed')
    return words.sentence('count.range');
  const { windowSeconds } = given.content.evidence.count;
  return words.sentence('count.rangePresumed', { seconds: windowSeconds });
}

/** The strip of beats with what it shows in words: times are drawn only where times were recorded. */
export function EvidenceStrip({ given }: { readonly given: Content }) {
  const { words } = useApp();
  const evidence = evidenceText(given, words);
  if (evidence === null) return <p className="soft small">{voidText(given, words)}</p>;
  const isTimed = given.kind === 'taps';
  const window = windowTypedText(given, words);
  // Nothing is drawn of beats that nobody is known to have counted.
  if (window !== null) {
    return (
      <p className="small">
        {evidence} <span className="soft">· {window}</span>
      </p>
    );
  }
  return (
    <figure className="evidence">
      {given.kind === 'taps' ? <TapsStrip content={given.content} /> : <CountStrip content={given.content} />}
      <figcaption className="small">
        {evidence}
        <span className="soft">
          {' '}
          · {words.sentence(isTimed ? 'taps.recorded' : 'count.timesNotRecorded')}
        </span>
      </figcaption>
    </figure>
  );
}

function TapsStrip({ content }: { readonly content: TapsContent }) {
  const { words } = useApp();
  const { seconds } = content.evidence.taps;
  const label = words.sentence('chart.stripTaps', { n: seconds.length, seconds: spanOf(seconds) });
  return <Strip strip={tapsStrip(seconds, content.value.repairs)} label={label} />;
}

function CountStrip({ content }: { readonly content: CountContent }) {
  const { words } = useApp();
  const { count } = content.evidence;
  if (!('n' in count)) return null;
  const label = words.sentence('chart.stripCount', { n: count.n, seconds: count.windowSeconds });
  return <Strip strip={countStrip(count.n)} label={label} />;
}

function voidText({ content }: Content, words: Words): string {
  const count = 'count' in content.evidence ? content.evidence.count : null;
  if (count === null || 'n' in count || count.interrupted.atSeconds === null)
    return words.sentence('chart.voidSays');
  return words.sentence('chart.voidAfter', { seconds: count.interrupted.atSeconds });
}

function spanOf(seconds: readonly number[]): number {
  return (seconds.at(-1) ?? 0) - (seconds[0] ?? 0);
}
