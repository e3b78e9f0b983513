import { isUnwell, type Scenario } from '@evenfall/physiology';
import {
  type Conduct,
  type Cost,
  type Debrief,
  type DebriefRules,
  type LessonCode,
  lessonOf,
  nothingToDo,
  oneThingOf,
  type Reported,
} from '@evenfall/practice';
import type { Aids } from '@evenfall/record';
import type { Words } from '@evenfall/words';
import { useApp } from '../app/context.js';
import { conductText } from './conductText.js';
import { movedBack } from './costRows.js';
import { gapTexts } from './gapTexts.js';
import { insteadText } from './insteadText.js';
import { nothingText } from './nothingText.js';

type OneThingProps = {
  readonly result: Debrief;
  readonly scenario: Scenario;
  /** What of this person was reported in the whole visit, as of `reportedOf`. */
  readonly reported: readonly Reported[];
  readonly rules: DebriefRules;
  readonly aids: Aids;
};

/** The one change that would do most. Source: assessment handbook 14 (one thing to change). */
export function OneThing({ result, scenario, reported, rules, aids }: OneThingProps) {
  const { words } = useApp();
  const { costs, conduct, entered, accepted } = result;
  const one = oneThingOf(costs, conduct, lessonOf(scenario, reported));
  if (one === null) {
    if (entered.systolic === null && entered.diastolic === null) return null;
    return <p className="debrief-one">{nothingText(nothingToDo(costs, accepted), reported, words)}</p>;
  }
  const texts =
    one.kind === 'lesson'
      ? [lessonText(one.codes, scenario, words)]
      : one.kind === 'conduct'
        ? [whyText(one.conduct, rules, words, aids)]
        : [
            costText(one.cost, movedBack(one.cost, result), rules, words, aids),
            ...(one.cost.code === 'silent-gap' ? gapTexts(result, words) : []),
          ];
  return (
    <div className="debrief-one">
      <h2>{words.sentence('debrief.oneThing')}</h2>
      {texts.map((text) => (
        <p key={text}>{text}</p>
      ))}
    </div>
  );
}

function lessonText(codes: readonly LessonCode[], scenario: Scenario, words: Words): string {
  const text = codes.map((code) => words.sentence(`debrief.lesson-${code}`)).join(' ');
  return words.sentence(isUnwell(scenario) ? 'debrief.lessonUnwell' : 'debrief.lessonSays', { text });
}

function costText(
  { code, doInstead, systolic, diastolic }: Cost,
  back: ReturnType<typeof movedBack>,
  rules: DebriefRules,
  words: Words,
  aids: Aids,
): string {
  const [fault, instead] = [
    words.sentence(`debrief.fault-${code}`),
    insteadText(doInstead, rules, words, aids),
  ];
  return systolic === null && diastolic === null
    ? words.sentence('debrief.oneThingWhy', { instead, what: fault })
    : words.sentence('debrief.oneThingSays', {
        instead,
        fault,
        systolic,
        diastolic,
        systolicBack: back.systolic,
        diastolicBack: back.diastolic,
      });
}

function whyText(conduct: Conduct, rules: DebriefRules, words: Words, aids: Aids): string {
  return words.sentence('debrief.oneThingWhy', {
    instead: insteadText(conduct.doInstead, rules, words, aids),
    what: conductText(conduct, words),
  });
}
