export { type Access, hasRole } from './access/access.js';
export { ACCOUNT_ROLES, type AccountRole, accountRole, accountRoles } from './access/accountRole.js';
export { barredAdding } from './access/barredAdding.js';
export { barredAmending, barredEntry } from './access/barredEntries.js';
export { barredImport } from './access/barredImport.js';
export { SIGN_IN_LIMITS } from './access/signInLimits.js';
export type { BackupLine } from './backup/backupLine.js';
export { BACKUP_VERSION, backupLine } from './backup/backupLine.js';
export type { AmendedEntry, Standing } from './chart/amendmentTree.js';
export { gatherAmendments } from './chart/amendmentTree.js';
export type { AnsweredHome, AnsweredRecording, UsualAsked } from './chart/answeredSeries.js';
export { answeredHome, answeredRecording } from './chart/answeredSeries.js';
export type { ChartedDiary, DueDiary } from './chart/chartDiaries.js';
export { chartDiaries, diariesOut, dueDiaries } from './chart/chartDiaries.js';
export type { ChartedArm } from './chart/chartedArm.js';
export { chartedArm } from './chart/chartedArm.js';
export { chartedPerMinute } from './chart/chartedPerMinute.js';
export type { ChartedPressure } from './chart/chartedPressure.js';
export { chartedPressure } from './chart/chartedPressure.js';
export type {
  ChartedSeries,
  DecidedReading,
  OpenSeriesAlert,
} from './chart/chartSeries.js';
export { byHandOf, chartSeries, isByGeneralRules } from './chart/chartSeries.js';
export type { SeriesComparison } from './chart/compareSeries.js';
export { compareSeries } from './chart/compareSeries.js';
export type { Countdown } from './chart/countdown.js';
export { countdown } from './chart/countdown.js';
export type { Duties, OpenActNow } from './chart/duties.js';
export { openIn, projectDuties } from './chart/duties.js';
export { flagsStanding } from './chart/flagsStanding.js';
export { GENERAL_RULES } from './chart/generalRules.js';
export { inOrder } from './chart/inOrder.js';
export type { Latest } from './chart/latest.js';
export { projectLatest } from './chart/latest.js';
export type { LatestValue } from './chart/newestNumbers.js';
export { projectNewest } from './chart/newestNumbers.js';
export type { LatestPressure, NewestValues } from './chart/newestValues.js';
export { notesStanding } from './chart/notesStanding.js';
export { notReliedOn } from './chart/notReliedOn.js';
export type { OfficeLeftOut, OfficeNear, SeriesDays } from './chart/officeNear.js';
export { daysApart, officeNear, officeNotTaken, visitsMean } from './chart/officeNear.js';
export { openReasons } from './chart/openReasons.js';
export { pressureWritten } from './chart/pressureWritten.js';
export type { Chart, ChartRound, Closed, Countersigned } from './chart/projectChart.js';
export { projectChart, signingsOf } from './chart/projectChart.js';
export type { TrendElsewhere, TrendPoint, TrendRound, TrendValue } from './chart/projectTrend.js';
export { projectTrend, signsOfTrend, TREND_SIGNS, trendFromElsewhere } from './chart/projectTrend.js';
export { type PulseOfReading, pulseOfReading } from './chart/pulseOfReading.js';
export { readingsAdded } from './chart/readingsAdded.js';
export { type DueRecheck, rechecksOf } from './chart/rechecks.js';
export { type RoundAverage, readingsAveraged, roundAverage } from './chart/roundAverage.js';
export type { SeriesAbout } from './chart/seriesAbout.js';
export { seriesAbout } from './chart/seriesAbout.js';
export { type DiaryAsked, seriesAsked } from './chart/seriesAsked.js';
export { mayAddTo, signersOf } from './chart/signersOf.js';
export { signOf } from './chart/signOf.js';
export type { SleepPutRight, SleepSaid } from './chart/sleepPutRight.js';
export { sleepPutRight, withSleep } from './chart/sleepPutRight.js';
export { type ActStanding, type AgentStanding, standingByRoles, standingOf } from './chart/standingOf.js';
export { type OneOfTwo, seriesLimits, twoSeries } from './chart/twoSeries.js';
export type { UnclearCorrection } from './chart/unclearCorrections.js';
export { unclearCorrections } from './chart/unclearCorrections.js';
export type { RulesOf } from './chart/valueStanding.js';
export {
  isAmendedSince,
  resultsStanding,
  signingOf,
  valueStanding,
  valuesStanding,
} from './chart/valueStanding.js';
export type { ActNowClosedContent } from './content/actNowClosed.js';
export { IDENTIFIERS } from './content/administrative.js';
export type { Beginning, RestKept } from './content/beginning.js';
export type { Chaperone, Consent, IdentifierSaid, Interpreter } from './content/beginningNames.js';
export { CHAPERONES, CONSENTS, IDENTIFIERS_SAID, INTERPRETERS } from './content/beginningNames.js';
export type { CountEvidence } from './content/chartCount.js';
export { chartCount } from './content/chartCount.js';
export type { GaugeLogEvidence } from './content/chartGaugeLog.js';
export { chartGaugeLog } from './content/chartGaugeLog.js';
export type { RoundSigned } from './content/chartRound.js';
export { chartRound, valueOfRound } from './content/chartRound.js';
export type { RunEvidence } from './content/chartRun.js';
export { chartRun } from './content/chartRun.js';
export type { SignEvidence } from './content/chartSign.js';
export { chartSign } from './content/chartSign.js';
export type { TapsEvidence } from './content/chartTaps.js';
export { chartTaps } from './content/chartTaps.js';
export type { ClassSessionContent, KeptByAgreementContent } from './content/classSession.js';
export {
  CLASS_SESSION_GRACE_HOURS,
  classSessionGoneAt,
  LONGEST_CLASS_SESSION_HOURS,
} from './content/classSession.js';
export { COMPUTED, type ComputedKind, isComputed, presetOf } from './content/computed.js';
export type { ApartBecause } from './content/continuedSeries.js';
export { addedEvidence, continuedSeries, keptApart } from './content/continuedSeries.js';
export type { CountContent, RateTyped } from './content/count.js';
export type { CountersignedContent } from './content/countersigned.js';
export type { DiaryEndedContent, DiaryHandedContent } from './content/diary.js';
export { diaryAsked } from './content/diaryAsked.js';
export type { DiaryLanguage } from './content/diaryNames.js';
export { DIARY_LANGUAGES, DIARY_LIMITS } from './content/diaryNames.js';
export type {
  CuffNamed,
  EquipmentContent,
  EquipmentEndedContent,
  GaugeLoggedContent,
  GaugeNamed,
} from './content/equipment.js';
export type { Aids, ExerciseContent, JudgedBy } from './content/exercise.js';
export { impossibleMovements, upgradeExercise } from './content/exercise.js';
export type { FactContent, FactEndedContent } from './content/fact.js';
export type { FactName, PersonFactName } from './content/factNames.js';
export { FACT_NAMES, PERSON_FACTS } from './content/factNames.js';
export type { InForce } from './content/inForce.js';
export { inForceUnder, NOTHING_CHOSEN } from './content/inForce.js';
export { KIND_NAMES, KINDS, type Kind, type KindName } from './content/kinds.js';
export { misnamed } from './content/misnamed.js';
export type { AlreadyThere } from './content/newReadings.js';
export { newReadings } from './content/newReadings.js';
export type { ReportedContent, ReportedValue } from './content/reported.js';
export { REPORTED_STATUSES, reportedContent, reportedValue } from './content/reported.js';
export type { RoundContent, RoundEvidence } from './content/round.js';
export { roundInputOf } from './content/roundInputOf.js';
export type { RoundValueKept } from './content/roundValue.js';
export type { MarkedByWhom, PressureOverride, RunContent, RunMarkedBy, RunPlace } from './content/run.js';
export type { ScenarioContent } from './content/scenario.js';
export type {
  RefusedSeriesRow,
  SeriesContent,
  SeriesDecidedContent,
  SeriesEvidence,
  SeriesReadingKept,
} from './content/series.js';
export type { ByHand } from './content/seriesMade.js';
export {
  dayNightOf,
  judgedReadings,
  NOT_BY_HAND,
  presetOfSeries,
  SERIES_RULES,
  seriesCircumstances,
  seriesMade,
  valueOfSeries,
  valueStandingOf,
} from './content/seriesMade.js';
export type { SeriesDecision, SeriesKind, SeriesWay } from './content/seriesNames.js';
export { MOST_SERIES_READINGS, SERIES_DECISIONS, SERIES_KINDS, SERIES_WAYS } from './content/seriesNames.js';
export type { SeriesValueKept } from './content/seriesValue.js';
export type { Override } from './content/shared.js';
export { LONGEST_NOTE } from './content/shared.js';
export type { SignContent, TypedNumber } from './content/sign.js';
export type { TapsContent } from './content/taps.js';
export type { Seen, WrongTelling } from './content/telling.js';
export { saysSomething, wrongTelling } from './content/telling.js';
export type { TimeSaid } from './content/timesSaid.js';
export { ABOUT, saidAt, timeSaid, timesSaid } from './content/timesSaid.js';
export { whySaid } from './content/whySaid.js';
export type { AmendmentReason, Amends } from './entry/amendment.js';
export { AMENDMENT_REASONS, amends, belongsNowhere } from './entry/amendment.js';
export type { Book } from './entry/book.js';
export { BOOKS, book } from './entry/book.js';
export { CLASS_KINDS } from './entry/classRules.js';
export type { Entry, EntryFrame, StoredEntry } from './entry/entry.js';
export { entryFrame } from './entry/entry.js';
export { id } from './entry/id.js';
export { unkeepableTexts } from './entry/keepableText.js';
export { laterBy, offsetMinutes } from './entry/offset.js';
export { EQUIPMENT_KINDS, readEntry } from './entry/readEntry.js';
export { readFrame } from './entry/readFrame.js';
export { refusalsOf } from './entry/refusals.js';
export type { Role } from './entry/role.js';
export { ROLES, role } from './entry/role.js';
export type { Stamp } from './entry/stamp.js';
export { stamp } from './entry/stamp.js';
export { type FailedGauge, failedGauge } from './equipment/failedGauge.js';
export type { Cuffs, Gauge, GaugeLine, Naming, PlaceEquipment } from './equipment/placeEquipment.js';
export { placeEquipment } from './equipment/placeEquipment.js';
export type { GaugeReading } from './equipment/readingsWith.js';
export { readingsInDoubt, readingsWith } from './equipment/readingsWith.js';
export type { Agent } from './person/agent.js';
export { agent } from './person/agent.js';
export type { ClassIdentity } from './person/classIdentity.js';
export { CLASS_IDENTIFIERS, classAgeInMonths, classIdentity } from './person/classIdentity.js';
export type { Identity } from './person/identity.js';
export { ageInMonths, identifiersOf, identity } from './person/identity.js';
export { pregnancyWeeksOn, roundFactsOf } from './person/roundFactsOf.js';
export type { StandingFact } from './person/standingFacts.js';
export { holdsThen, standingFacts } from './person/standingFacts.js';
export { PROGRAM } from './program.js';
export type { PlaceVersion, ProtocolChoiceMade } from './protocol/placeVersions.js';
export { placeVersions } from './protocol/placeVersions.js';
export { firstDifference } from './recompute/nearly.js';
export type { Recomputed } from './recompute/recompute.js';
export { recompute } from './recompute/recompute.js';
export { recomputeRound } from './recompute/recomputeRound.js';
export { recomputeSeries } from './recompute/recomputeSeries.js';
