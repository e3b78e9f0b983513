import { MODEL, playsAlike } from '@evenfall/physiology';
import {
  asOfEach,
  type Debrief,
  type DebriefRules,
  debriefEach,
  type Reported,
  reportedOf,
  roundOf,
} from '@evenfall/practice';
import type { ExerciseContent } from '@evenfall/record';
import { exerciseFigure } from '@evenfall/report';
import { useMemo, useState } from 'react';
import { useApp } from '../app/context.js';
import { FigureShown } from '../away/FigureShown.js';
import { FigureTable } from '../away/FigureTable.js';
import { Choices } from '../parts/Choices.js';
import { Flags } from '../parts/Flags.js';
import { VersionMention } from '../protocol/VersionMention.js';
import { AidsSay } from './AidsSay.js';
import { ArteryLesson } from './ArteryLesson.js';
import { bedsideFlags } from './bedsideFlags.js';
import { ConductList } from './ConductList.js';
import { CostsTable } from './CostsTable.js';
import { CountsShown } from './CountsShown.js';
import { FeltBackSays } from './FeltBackSays.js';
import type { JudgedUnder } from './judgedUnder.js';
import { LedgerShown } from './LedgerShown.js';
import { OneThing } from './OneThing.js';
import { pressureText } from './pressureText.js';
import { ReplaySound } from './ReplaySound.js';
import { ReportedShown } from './ReportedShown.js';
import { ResultTable } from './ResultTable.js';
import { RoundTable } from './RoundTable.js';
import { RUN_FIGURE, runDrawn } from './runFigure.js';
import { TemperatureShown } from './TemperatureShown.js';
import { useJudgedUnder } from './useJudgedUnder.js';
import { chanceTexts, flagText, limitText, partsTexts, verdictText } from './verdict.js';

/** What came of an exercise. One that was practised with another model cannot be played again as it was: then it says so. */
export function DebriefShown({ exercise }: { readonly exercise: ExerciseContent }) {
  const { words } = useApp();
  if (playsAlike(exercise.model, exercise.scenario)) return <Played exercise={exercise} />;
  const wrote = [...exercise.earlier.map(({ entered }) => entered), exercise.entered]
    .map((entered) => pressureText(entered, words))
    .filter((one) => one !== null);
  return (
    <div className="debrief">
      <p className="debrief-verdict">
        {words.sentence('debrief.otherModel', { model: exercise.model, now: MODEL })}
      </p>
      {wrote.length === 0 ? null : <p>{words.sentence('debrief.wroteSays', { text: wrote.join(', ') })}</p>}
    </div>
  );
}

/** Played again from its data alone, at once, and judged by the protocol of its day. */
function Played({ exercise }: { readonly exercise: ExerciseContent }) {
  const { words } = useApp();
  const under = useJudgedUnder(exercise.judgedBy);
  if (under === null) return <p className="soft">{words.sentence('app.loading')}</p>;
  return <Judged exercise={exercise} under={under} />;
}

type JudgedProps = { readonly exercise: ExerciseContent; readonly under: JudgedUnder };

function Judged({ exercise, under }: JudgedProps) {
  const { words } = useApp();
  const { rules } = under;
  const results = useMemo(() => debriefEach(exercise, rules), [exercise, rules]);
  const round = useMemo(() => roundOf(exercise, results, rules), [exercise, results, rules]);
  const [chosen, setChosen] = useState(results.length - 1);
  const result = results[chosen];
  const asOf = asOfEach(exercise)[chosen];
  if (result === undefined || asOf === undefined) return null;
  const reported = reportedOf(exercise, results);
  const flag = flagText(result, exercise.evidence.saysActNow, words);
  // Counts are of the visit, whichever reading is looked at.
  const counts = (
    <CountsShown
      judged={result}
      conduct={results.flatMap(({ conduct }) => conduct)}
      scenario={exercise.scenario}
      rules={rules}
      aids={exercise.aids}
    />
  );
  return (
    <div className="debrief">
      {round === null ? null : (
        <section aria-labelledby="debrief-round">
          <h2 id="debrief-round">{words.sentence('debrief.round')}</h2>
          {flag === null ? null : <FlagSays flag={flag} />}
          <RoundTable round={round} rules={rules} />
          <Choices
            legend={words.sentence('debrief.roundWhich')}
            choices={round.readings.map(({ number }) => ({
              id: String(number),
              text: words.sentence('debrief.roundReading', { number }),
            }))}
            chosen={String(chosen + 1)}
            onChoose={(id) => setChosen(Number(id) - 1)}
          />
        </section>
      )}
      <OneReading
        key={chosen}
        exercise={{ ...exercise, ...asOf }}
        result={result}
        reported={reported}
        rules={rules}
        flag={round === null ? flag : null}
      />
      {counts}
      <TemperatureShown exercise={exercise} />
      <ReportedShown exercise={exercise} judged={results} />
      <JudgedBySays exercise={exercise} by={under.by} />
    </div>
  );
}

type Flagged = NonNullable<ReturnType<typeof flagText>>;

function FlagSays({ flag }: { readonly flag: Flagged }) {
  return <p className={flag.isMissed ? 'notice debrief-missed' : 'notice'}>{flag.text}</p>;
}

type ReadingProps = {
  /** As of this reading. */
  readonly exercise: ExerciseContent;
  readonly result: Debrief;
  /** What of this person was reported in the whole visit. */
  readonly reported: readonly Reported[];
  readonly rules: DebriefRules;
  /** Null: said already, or nothing to say. */
  readonly flag: Flagged | null;
};

/** What came of one reading. */
function OneReading({ exercise, result, reported, rules, flag }: ReadingProps) {
  const { words } = useApp();
  const { fall, entered } = result;
  const limit = limitText(result, exercise.scenario, words);
  const hasPressure = entered.systolic !== null || entered.diastolic !== null;
  return (
    <>
      <section aria-label={words.sentence('debrief.reading')}>
        <p className="debrief-verdict">{verdictText(result, words)}</p>
        {[...partsTexts(result, words), ...chanceTexts(result, words)].map((text) => (
          <p key={text} className="debrief-chance">
            {text}
          </p>
        ))}
        {limit === null ? null : <p className="debrief-chance">{limit}</p>}
        <Flags flags={bedsideFlags(result).first} />
        {flag === null ? null : <FlagSays flag={flag} />}
        <OneThing
          result={result}
          scenario={exercise.scenario}
          reported={reported}
          rules={rules}
          aids={exercise.aids}
        />
        {hasPressure || fall !== null ? <ResultTable result={result} /> : null}
        <FeltBackSays feltBack={result.feltBack} />
        <AidsSay exercise={exercise} />
      </section>
      {fall === null ? null : (
        <section>
          <h2>{words.sentence('debrief.figure')}</h2>
          <FigureShown
            name="run"
            draw={(how) => exerciseFigure(runDrawn({ ...result, fall }), words, { ...how, showsKey: false })}
            {...RUN_FIGURE}
          />
          <p className="small soft">{words.sentence('debrief.figureKey')}</p>
          {result.gap !== null && result.isArmRaised ? <p>{words.sentence('debrief.raisedSays')}</p> : null}
          <ReplaySound exercise={exercise} result={{ ...result, fall }} />
          <FigureTable
            title={words.sentence('debrief.table')}
            table={exerciseFigure(runDrawn({ ...result, fall }), words).table}
          />
        </section>
      )}
      <CostsTable result={result} rules={rules} aids={exercise.aids} />
      <ConductList conduct={result.conduct} rules={rules} aids={exercise.aids} />
      <LedgerShown result={result} />
      <BedsideSays result={result} />
      {fall === null ? null : <ArteryLesson result={{ ...result, fall }} />}
    </>
  );
}

/** By which protocol all of it is judged. */
function JudgedBySays({
  exercise: { judgedBy },
  by,
}: {
  readonly exercise: ExerciseContent;
  readonly by: JudgedUnder['by'];
}) {
  const { words } = useApp();
  const version = judgedBy?.presetVersion ?? null;
  const says = {
    none: 'judgedByNone',
    now: 'judgedByNow',
    'not-here': 'judgedByNotHere',
    'not-reached': 'judgedByNotReached',
  } as const;
  return (
    <p className="small soft">
      {by === 'version' && version !== null ? (
        <>
          {words.sentence('debrief.judgedByVersion')} <VersionMention version={version} />
        </>
      ) : (
        words.sentence(`debrief.${says[by === 'version' ? 'none' : by]}`)
      )}
    </p>
  );
}

/** What the bedside's own rules say of the run besides. */
function BedsideSays({ result }: { readonly result: Debrief }) {
  const { words } = useApp();
  const { besides, isNoGap } = bedsideFlags(result);
  if (besides.length === 0) return null;
  return (
    <section>
      <h2>{words.sentence('debrief.bedsideSays')}</h2>
      <Flags flags={besides} />
      {isNoGap ? <p>{words.sentence('debrief.noGapHere')}</p> : null}
    </section>
  );
}
