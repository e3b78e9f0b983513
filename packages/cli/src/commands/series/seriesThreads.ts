import { fileURLToPath } from 'node:url';
import type { Parsed } from '@evenfall/clinical';
import type { Json } from '../../answer.js';
import type { Context } from '../../command.js';
import { madeOf } from '../../input/fileLines.js';
import type { Threads } from '../../input/linesByThreads.js';
import { recordingMaker } from './ambulatoryAnswer.js';
import { homeMaker } from './homeAnswer.js';
import type { TypedRecording, TypedSeries } from './typedSeries.js';

/** What is asked of every file of a series: plain data, so that a thread can be given it. */
export type SeriesAsked =
  | { readonly of: 'home'; readonly typed: TypedSeries }
  | { readonly of: 'ambulatory'; readonly typed: TypedSeries; readonly recording: TypedRecording };

/** What a thread is started with. */
export type StartedWith = {
  readonly asked: SeriesAsked;
  readonly locale: string;
  readonly version: string;
};

/** The thread's program as it is built. */
const PROGRAM = fileURLToPath(new URL('./seriesWorker.js', import.meta.url));

/** The threads that answer the same of many files. */
export function seriesThreads(asked: SeriesAsked, { words, version }: Context): Threads {
  const startedWith: StartedWith = { asked, locale: words.say.locale, version };
  return { program: PROGRAM, startedWith, wanted: asked.typed.workers };
}

/** What is made of a file that was read, for programs. */
export function seriesMaker(
  asked: SeriesAsked,
  context: Pick<Context, 'words' | 'version'>,
): (bytes: Parsed<Uint8Array>) => Parsed<Json> {
  if (asked.of === 'home') {
    const maker = homeMaker(asked.typed, context);
    return (bytes) => madeOf(maker, bytes);
  }
  const maker = recordingMaker(asked.typed, asked.recording, context);
  return (bytes) => madeOf(maker, bytes);
}
