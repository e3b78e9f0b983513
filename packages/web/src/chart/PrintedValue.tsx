import { type AmendedEntry, type ChartRound, pulseOfReading, type StoredEntry } from '@evenfall/record';
import { readingTexts, type Words } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { signText } from '../app/signText.js';
import { chartedText, signOfCharted } from '../parts/charted.js';
import { placeText } from '../pressure/placeText.js';
import { contentOfEntry } from './contentOfEntry.js';

type ValuesProps = { readonly values: readonly AmendedEntry[]; readonly round: ChartRound };

/** The values of a sign in their order. */
export function PrintedValues({ values, round }: ValuesProps) {
  return values.map((value) => <PrintedValue key={value.original.id} value={value} round={round} />);
}

type ValueProps = { readonly value: AmendedEntry; readonly round: ChartRound };

/** A value as it stands; struck through where it was entered in error. */
function PrintedValue({ value, round }: ValueProps) {
  const { words } = useApp();
  const { original, current, standing } = value;
  const { isInError } = round;
  if (isInError || current.length === 0) {
    return (
      <span className="print-value">
        <del>{textOf(original, words)}</del>{' '}
        {isInError ? null : <span>{words.sentence('chart.enteredInError')}</span>}
      </span>
    );
  }
  return current.map((entry, at) => (
    <span key={entry.id} className={besideOf(entry, round, words) === '' ? 'print-value' : 'print-line'}>
      {at > 0 ? null : replacedTexts(value, words).map((text) => <Replaced key={text} text={text} />)}
      {textOf(entry, words)}
      {standing === 'amended' ? <PrintedMark text={words.sentence('chart.printedAmended')} /> : null}
      {standing === 'contested' ? <PrintedMark text={words.sentence('trend.contested')} /> : null}
      {isByHand(entry) ? <PrintedMark text={words.sentence('people.byHand')} /> : null}{' '}
      {besideOf(entry, round, words) === '' ? null : (
        <span className="print-beside">{besideOf(entry, round, words)}</span>
      )}
    </span>
  ));
}

/** What stood before, struck through as on paper charts. */
function Replaced({ text }: { readonly text: string }) {
  return (
    <>
      <del>{text}</del>{' '}
    </>
  );
}

/** What a value was before it was amended, oldest first, each once; what stands now is none of them. */
function replacedTexts({ story, current }: AmendedEntry, words: Words): readonly string[] {
  const now = current.map((entry) => textOf(entry, words));
  const before = story.map((entry) => textOf(entry, words));
  return [...new Set(before)].filter((text) => text !== '' && !now.includes(text));
}

/** A word about a value, in brackets; it never breaks within. */
function PrintedMark({ text }: { readonly text: string }) {
  return <span className="print-mark"> ({text})</span>;
}

export function PrintedOther({ value, round }: ValueProps) {
  const { words } = useApp();
  const given = contentOfEntry(value.original);
  if (given === null) return null;
  return (
    <span className="print-other">
      <b>{signText(signOfCharted(given), words)}:</b> <PrintedValue value={value} round={round} />
    </span>
  );
}

/**
 * Where a pressure was taken, its pulse, that it was read off a display, how long somebody had stood or lain at it, and how
 * they felt: with each, so that none seems to be of another arm; else empty.
 */
function besideOf(entry: StoredEntry, round: ChartRound, words: Words): string {
  if (entry.kind !== 'run') return '';
  const { run, place, circumstances } = entry.content.evidence;
  const method = run.method === 'device' ? [words.title('method', run.method)] : [];
  return [
    placeText(place, words),
    ...method,
    ...readingTexts(pulseOfReading(entry, round), circumstances, words),
  ].join(' · ');
}

function textOf(entry: StoredEntry, words: Words): string {
  const given = contentOfEntry(entry);
  return given === null ? '' : chartedText(given, words);
}

function isByHand({ content }: StoredEntry): boolean {
  return 'override' in content && content.override !== null;
}
