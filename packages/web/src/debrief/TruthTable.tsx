import { pulseDeficit } from '@evenfall/clinical';
import { type DebriefRules, judgeEach, resultRows, roundOf } from '@evenfall/practice';
import type { ExerciseContent } from '@evenfall/record';
import { useMemo } from 'react';
import { useApp } from '../app/context.js';
import { Scrolling } from '../parts/Scrolling.js';
import { RoundTable } from './RoundTable.js';
import { useJudgedUnder } from './useJudgedUnder.js';
import { chanceTexts, limitText, partsTexts, verdictText } from './verdict.js';

type ExerciseProps = { readonly exercise: ExerciseContent };

/** At the end of an exercise: what was written, what was to be had at that moment and what is true on average; by the same judgement as the debrief. */
export function TruthTable({ exercise }: ExerciseProps) {
  const under = useJudgedUnder(exercise.judgedBy);
  return under === null ? null : <Truths exercise={exercise} rules={under.rules} />;
}

function Truths({ exercise, rules }: ExerciseProps & { readonly rules: DebriefRules }) {
  const { words } = useApp();
  const say = words.sentence;
  const all = useMemo(() => judgeEach(exercise, rules), [exercise, rules]);
  const round = useMemo(() => roundOf(exercise, all, rules), [exercise, all, rules]);
  const judged = all.at(-1);
  if (judged === undefined) return null;
  const { entered, rates } = judged;
  const { apexPerMinute = null, pulsePerMinute } = entered;
  const rate = (perMinute: number | null) =>
    perMinute === null ? say('practice.nothing') : words.say.rate(perMinute);
  const isDeficit = apexPerMinute !== null || Math.round(rates.deficitPerMinute) > 0;
  /** By what was written: none by one number alone, nor where the wrist had more than the heart. */
  const deficit =
    apexPerMinute === null || pulsePerMinute === null
      ? null
      : pulseDeficit(apexPerMinute, pulsePerMinute, false).deficitPerMinute;
  return (
    <>
      {round === null ? (
        <>
          <p className="debrief-verdict">{verdictText(judged, words)}</p>
          {[
            ...partsTexts(judged, words),
            ...chanceTexts(judged, words),
            ...[limitText(judged, exercise.scenario, words)].filter((text) => text !== null),
          ].map((text) => (
            <p key={text}>{text}</p>
          ))}
        </>
      ) : (
        <RoundTable round={round} rules={rules} />
      )}
      <Scrolling label={say('debrief.truth')}>
        <table className="truth-table">
          <thead>
            <tr>
              <td />
              <th scope="col">{say('practice.yours')}</th>
              <th scope="col">{say('debrief.had')}</th>
              <th scope="col">{say('debrief.truth')}</th>
            </tr>
          </thead>
          <tbody>
            {(round === null ? resultRows(judged) : []).map(({ of, isMuffled, written, had, truth }) => (
              <tr key={of}>
                <th scope="row">{say(isMuffled ? 'debrief.muffledRow' : `debrief.${of}`)}</th>
                <td>{written === null ? say('practice.nothing') : words.say.number(written)}</td>
                <td>{had === null ? '–' : words.say.number(had)}</td>
                <td>{words.say.number(truth)}</td>
              </tr>
            ))}
            <tr>
              <th scope="row">{say(isDeficit ? 'debrief.wristRow' : 'practice.pulse')}</th>
              <td>{rate(entered.pulsePerMinute)}</td>
              <td />
              <td>{rate(rates.wristPerMinute)}</td>
            </tr>
            {isDeficit ? (
              <tr>
                <th scope="row">{say('debrief.heartRow')}</th>
                <td>{rate(apexPerMinute)}</td>
                <td />
                <td>{rate(rates.heartPerMinute)}</td>
              </tr>
            ) : null}
            {isDeficit ? (
              <tr>
                <th scope="row">{say('debrief.deficitRow')}</th>
                <td>{deficit === null ? '–' : words.say.rate(deficit)}</td>
                <td />
                <td>{rate(rates.deficitPerMinute)}</td>
              </tr>
            ) : null}
            <tr>
              <th scope="row">{say('practice.breaths')}</th>
              <td>{rate(entered.breathsPerMinute)}</td>
              <td />
              <td>{rate(rates.breathsPerMinute)}</td>
            </tr>
          </tbody>
        </table>
      </Scrolling>
      <p className="small soft">{say('debrief.truthHint')}</p>
    </>
  );
}
