export type { CountDebrief } from './counting/countDebrief.js';
export { countDebrief } from './counting/countDebrief.js';
export { countedBy } from './counting/countedBy.js';
export { countOf } from './counting/countOf.js';
export { type RateRow, rateRows } from './counting/rateRows.js';
export { type TapsDebrief, tapsDebrief } from './counting/tapsDebrief.js';
export { asOfEach } from './exercise/asOfEach.js';
export type { Debrief, DebriefMark, DebriefSound, Judged } from './exercise/debrief.js';
export { debrief, debriefEach, judge, judgeEach } from './exercise/debrief.js';
export { demonstrate, show, withReading } from './exercise/demonstrate.js';
export type {
  Counted,
  CountedSign,
  CountNoticed,
  EarlierReading,
  Entered,
  Evidence,
  Exercise,
  Tapped,
} from './exercise/exercise.js';
export {
  EXERCISE_SCHEMA,
  FIRST_EXERCISE_SCHEMA,
  NO_EVIDENCE,
  NOTHING_ENTERED,
  SECOND_EXERCISE_SCHEMA,
  THIRD_EXERCISE_SCHEMA,
} from './exercise/exercise.js';
export { type FallOf, LET_OUT_MMHG, MEANT_MMHG } from './exercise/fall.js';
export { type FeltBack, feltBack, isFingerOnAt } from './exercise/feltBack.js';
export { EXERCISE_FIGURES } from './exercise/figures.js';
export { type LimitWhy, limitOf } from './exercise/limitOf.js';
export { wasLookedUp } from './exercise/lookedUp.js';
export { type Manner, mannerOf } from './exercise/manner.js';
export type { ActionList } from './exercise/parseActions.js';
export { ACTION_LIMITS, parseActions } from './exercise/parseActions.js';
export { EXERCISE_LIMITS, parseExercise } from './exercise/parseExercise.js';
export type { Replay } from './exercise/replay.js';
export { replay, traceAt } from './exercise/replay.js';
export { type Reported, reportedOf } from './exercise/reportedOf.js';
export { type ResultRow, resultRows } from './exercise/resultRows.js';
export {
  type ReadingOfRound,
  type RoundAverage,
  type RoundOfReadings,
  roundOf,
} from './exercise/roundOf.js';
export { type DebriefRules, USUAL_RULES } from './exercise/rules.js';
export type { HandStep } from './exercise/show.js';
export { type Showing, type ShownStep, showing } from './exercise/showing.js';
export { type TemperatureRow, temperatureRow } from './exercise/temperatureRow.js';
export { wrapsWhileUp } from './exercise/wrapsWhileUp.js';
export type { LetDown } from './fault/base.js';
export type { Conduct, ConductCode, ConductDo } from './fault/conduct.js';
export { CONDUCT_CODES } from './fault/conduct.js';
export type { AsTheyWere, Cost, Costs, Had, Obtainable } from './fault/cost.js';
export type { DoInstead, FaultCode } from './fault/faults.js';
export { FAULT_CODES, FAULTS } from './fault/faults.js';
export { type LessonCode, lessonOf } from './fault/lesson.js';
export { type NothingToDo, nothingToDo } from './fault/nothingToDo.js';
export { type OneThing, oneThingOf } from './fault/oneThing.js';
export { properInstrument, properOf } from './fault/proper.js';
export { shapley } from './fault/shapley.js';
export { WORTH_TELLING_MMHG } from './fault/worthTelling.js';
export { PRACTICE_FIGURES } from './figures.js';
export type { Ledger, TechniqueLine, Way } from './ledger/ledger.js';
export { LEDGER_PARTS, ledgerOf, sumOfLedger } from './ledger/ledger.js';
export { observerKey } from './observer/chance.js';
export { OBSERVER_FIGURES } from './observer/figures.js';
export type { Counting, Hand, Observer, Reader } from './observer/observer.js';
export { GOOD_OBSERVER, PERFECT_OBSERVER } from './observer/observer.js';
export { COUNT_GROUPS, type CountGroup } from './plan/counts.js';
export { PLAN_FIGURES } from './plan/figures.js';
export { type Outcome, outcomeOf } from './plan/outcome.js';
export type { PlanCuff, PlanHome, PlanProtocol } from './plan/planProtocol.js';
export {
  COUNT_CLOCKS,
  CUFF_CHOICES,
  PLAN_LIMITS,
  parsePlanProtocol,
  planProtocol,
} from './plan/planProtocol.js';
export type {
  Apart,
  CountPair,
  CountResultOf,
  CountsResult,
  PairResult,
  PlanResult,
  ProtocolResult,
  SideResult,
} from './plan/planResult.js';
export { planResult } from './plan/planResult.js';
export type { Subject } from './plan/population.js';
export { scenarioAt, subjectOf } from './plan/population.js';
export { runPlan } from './plan/runPlan.js';
export type { Plan, PlanSums } from './plan/sums.js';
export { addSums, newSums, pieceOf, piecesOf } from './plan/sums.js';
export { PLAN_FAULTS, type PlanFault, type PlanFaults } from './plan/technique.js';
export type { Auscultated, Earlier, Taken } from './reading/auscultate.js';
export { auscultate, newAuscultated } from './reading/auscultate.js';
export { still } from './reading/still.js';
