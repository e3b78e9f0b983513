import {
  type CountOf,
  DEFAULT_COUNT_RULES,
  isBlank,
  parseTapLines,
  type Repair,
  TAPS_RULE,
  type TapResult,
  type Taps,
  tapAdvice,
  tapResult,
  UNKNOWN_CIRCUMSTANCES,
} from '@evenfall/clinical';
import type { Words } from '@evenfall/words';
import type { Json } from '../answer.js';
import { command } from '../command.js';
import { eachFile, ofText } from '../input/eachFile.js';
import { columns } from '../output/columns.js';
import { computedBy } from '../output/computedBy.js';

type Asked = { readonly files: readonly string[]; readonly of: CountOf; readonly repair: boolean };

/** `evenfall taps`: a file with one time a line, in seconds from any zero. */
export const taps = command<Asked>({
  name: 'taps',
  summary: 'commands.taps',
  options: [
    { name: 'no-repair', kind: 'switch', means: 'options.noRepair' },
    { name: 'of', kind: 'value', means: 'options.of', choices: ['pulse', 'breaths'] },
  ],
  operands: { hint: 'FILE|-', least: 1, most: Number.POSITIVE_INFINITY, expected: 'a-file' },

  parse(given, files) {
    const of = given.text('of');
    const repair = !given.isOn('no-repair');
    return { ok: true, value: { files, of: isBlank(of) ? 'pulse' : (of as CountOf), repair } };
  },

  run: ({ files, of, repair }, context) =>
    eachFile(
      files,
      {
        of: ofText<Taps>((text) => {
          const seconds = parseTapLines(text);
          return seconds.ok ? { ok: true, value: { of, source: 'file', seconds: seconds.value } } : seconds;
        }),
        json: (read) => jsonOf(read.of, tapResult(read, { repair }), repair, context.version, context.words),
        lines: (read) => linesOf(read, tapResult(read, { repair }), context.words),
      },
      context,
    ),
});

/** What to do next, where nothing else is known of the person. */
function adviceOn(of: CountOf, result: TapResult) {
  return tapAdvice(of, result, UNKNOWN_CIRCUMSTANCES, DEFAULT_COUNT_RULES);
}

function jsonOf(of: CountOf, result: TapResult, repair: boolean, version: string, words: Words): Json {
  const advice = adviceOn(of, result);
  return {
    perMinute: result.perMinute,
    lowPerMinute: result.lowPerMinute,
    highPerMinute: result.highPerMinute,
    beats: result.beats,
    repairs: result.repairs.map(({ index, what, added }) => ({ index, what, added })),
    meanIntervalMs: result.meanIntervalMs,
    sdIntervalMs: result.sdIntervalMs,
    cv: result.cv,
    rmssdMs: result.rmssdMs,
    nrmssd: result.nrmssd,
    turningPointRatio: result.turningPointRatio,
    shannonEntropy: result.shannonEntropy,
    tapJitterMs: result.tapJitterMs,
    rhythm: result.rhythm,
    flags: [...advice.flags, ...result.flags].map(words.flagged),
    why: result.why.map(words.flagged),
    nextWindowSeconds: advice.nextWindowSeconds,
    nextWhy: advice.nextWhy.map(words.flagged),
    noRepair: !repair,
    computedBy: computedBy(version, TAPS_RULE, null),
  };
}

function linesOf({ of, seconds }: Taps, result: TapResult, words: Words): string[] {
  const advice = adviceOn(of, result);
  const count = words.sentence('commandLine.fromTaps', { taps: seconds.length });
  const rows = [
    [rateOf(result, words), [...likelyOf(result, words), count].join(', ')],
    [words.sentence('commandLine.rhythm'), words.title('rhythm', result.rhythm)],
    ...result.repairs.map((repair) => [words.sentence('commandLine.repaired'), repairOf(repair, words)]),
    ...words
      .together([...advice.flags, ...result.flags, ...result.why, ...advice.nextWhy])
      .map(({ text }) => [words.sentence('commandLine.note'), text]),
  ];
  return columns(rows);
}

function rateOf({ perMinute }: TapResult, words: Words): string {
  if (perMinute === null) return words.sentence('commandLine.noRate');
  return `${words.say.rate(perMinute)} ${words.sentence('app.perMinute')}`;
}

function likelyOf({ lowPerMinute: low, highPerMinute: high }: TapResult, words: Words): string[] {
  return low === null || high === null ? [] : [words.sentence('commandLine.likely', { low, high })];
}

function repairOf({ index, what, added }: Repair, words: Words): string {
  return what === 'missed'
    ? words.sentence('commandLine.missedAfter', { index, added })
    : words.sentence('commandLine.doubledAt', { index });
}
