import { type CountOf, isLowCondition, type Recheck, rechecksBeside } from '@evenfall/clinical';
import { pressureWritten, type RoundValueKept } from '@evenfall/record';
import { readingTexts } from '@evenfall/words';
import type { ReactNode } from 'react';
import { useApp } from '../app/context.js';
import { rangeText } from '../app/figuresText.js';
import { signText } from '../app/signText.js';
import { Flags } from '../parts/Flags.js';
import { faceFlags } from '../parts/faceFlags.js';
import { rateText } from '../parts/ValueFigures.js';
import { notesOf } from '../pressure/notesOf.js';
import { placeText } from '../pressure/placeText.js';
import { measureText } from '../signs/measureText.js';
import { shownContent } from './content.js';
import { isVoidValue } from './draft.js';
import { runContentOf, signContentOf } from './entries.js';
import type { LeftOut } from './leftOut.js';
import { SIGNS_IN_ORDER } from './measuring.js';
import { notDoneText } from './NotDoneForm.js';
import { standingOf } from './standing.js';
import type { Round } from './useRound.js';

/** How long they stood or lay is told on the review. */
const NO_POSTURE = { uprightMinutes: null, unwellUpright: null, lyingMinutes: null };

type SoFarProps = {
  readonly round: Round;
  readonly leftOut: readonly LeftOut[];
  /** The reading of the pressure that the page shows itself. */
  readonly shown?: string | null;
};

/** What was taken in a round so far, with its flags and what is to be looked at again: beside a step, where there is room. */
export function SoFar({ round, leftOut, shown = null }: SoFarProps) {
  const { words, program } = useApp();
  const rechecks = leftOut.includes('pressure')
    ? []
    : rechecksHere(standingOf(round.draft, { ...round, program }).content.value, shown !== null);
  const { repeat } = notesOf(round.draft, { ...round, program });
  if (rechecks.length === 0 && !isAnythingSaid(round, leftOut, shown)) return null;
  const lines = [
    ...SIGNS_IN_ORDER.filter((sign) => !leftOut.includes(sign)).map((sign) => (
      <CountLines key={sign} round={round} sign={sign} />
    )),
    ...(leftOut.includes('pressure') ? [] : [<PressureLines key="pressure" round={round} shown={shown} />]),
    ...(leftOut.includes('measures') ? [] : [<MeasureLines key="measures" round={round} />]),
  ];
  return (
    <aside className="so-far" aria-label={words.sentence('review.soFar')}>
      <h2>{words.sentence('review.soFar')}</h2>
      <dl>
        {lines}
        {rechecks.length === 0 ? null : (
          <Line name={words.sentence('result.rechecks')}>
            <Flags flags={rechecksBeside(rechecks as readonly Recheck[], repeat)} />
          </Line>
        )}
      </dl>
    </aside>
  );
}

/** What is to be looked at again; not what the alert of a low pressure says already on the page of a reading. */
function rechecksHere(value: RoundValueKept | null, isBesideAlert: boolean): RoundValueKept['rechecks'] {
  const isSaid = isBesideAlert && value?.actNow.some(({ condition }) => isLowCondition(condition)) === true;
  return (value?.rechecks ?? []).filter(({ code }) => !(isSaid && code === 'recheck-at-once'));
}

function isAnythingSaid({ draft }: Round, leftOut: readonly LeftOut[], shown: string | null): boolean {
  const signs = SIGNS_IN_ORDER.filter((sign) => !leftOut.includes(sign)).map((sign) => draft[sign]);
  const isCounted = signs.some(({ values, notDone }) => notDone !== null || !values.every(isVoidValue));
  const { values, notDone } = draft.pressure;
  const isRead =
    !leftOut.includes('pressure') && (values.some(({ entry }) => entry !== shown) || notDone !== null);
  return isCounted || isRead || (!leftOut.includes('measures') && draft.measures.length > 0);
}

function Line({ name, children }: { readonly name: string; readonly children: ReactNode }) {
  return (
    <div>
      <dt>{name}</dt>
      <dd>{children}</dd>
    </div>
  );
}

function CountLines({ round, sign }: { readonly round: Round; readonly sign: CountOf }) {
  const { words, program } = useApp();
  const { values, notDone } = round.draft[sign];
  const name = signText(sign, words);
  if (notDone !== null)
    return (
      <Line name={name}>{words.sentence('review.notDoneIs', { text: notDoneText(notDone, words) })}</Line>
    );
  return (
    <>
      {values
        .filter((value) => !isVoidValue(value))
        .map((value) => {
          const given = shownContent(round.draft, sign, value, { ...round, program });
          const { value: made } = given.content;
          return (
            <Line key={value.entry} name={name}>
              <p>
                <span className="so-far-number">{rateText(given, words)}</span>{' '}
                {words.sentence('app.perMinute')} <span className="soft small">{rangeText(made, words)}</span>
              </p>
              <Flags flags={faceFlags(given)} />
            </Line>
          );
        })}
    </>
  );
}

function PressureLines({ round, shown }: { readonly round: Round; readonly shown: string | null }) {
  const { words, program } = useApp();
  const { values, notDone } = round.draft.pressure;
  const name = words.sentence('app.pressure');
  if (notDone !== null)
    return (
      <Line name={name}>{words.sentence('review.notDoneIs', { text: notDoneText(notDone, words) })}</Line>
    );
  return (
    <>
      {values
        .filter(({ entry }) => entry !== shown)
        .map((reading) => {
          const content = runContentOf(round.draft, reading, { ...round, program });
          return (
            <Line key={reading.entry} name={name}>
              <p>
                <span className="so-far-number">{pressureWritten(content)}</span>{' '}
                {words.sentence('pressure.mmHg')}{' '}
                <span className="soft small">
                  {[
                    placeText(reading.place, words),
                    ...readingTexts(reading.run.pulsePerMinute, NO_POSTURE, words),
                  ].join(' · ')}
                </span>
              </p>
              <Flags flags={content.value.flags} />
            </Line>
          );
        })}
    </>
  );
}

function MeasureLines({ round }: { readonly round: Round }) {
  const { words, program } = useApp();
  return (
    <>
      {round.draft.measures.map((measure) => (
        <Line key={measure.entry} name={signText(measure.sign.of, words)}>
          <p className="so-far-number">{measureText(measure.sign, words)}</p>
          <Flags flags={signContentOf(round.draft, measure, { ...round, program }).value.flags} />
        </Line>
      ))}
    </>
  );
}
