export { actFirst } from './category/actFirst.js';
export type {
  CategoryFlagCode,
  CategoryReasonCode,
  CategoryResult,
  Measured,
} from './category/categoryIn.js';
export { categoryIn } from './category/categoryIn.js';
export type { Category, CategoryQuestion, GuidelineId } from './category/categoryOf.js';
export { CATEGORY_RULE, categoryOf } from './category/categoryOf.js';
export { CATEGORY_COMPARISONS } from './category/comparisons.js';
export { CATEGORY_FIGURES } from './category/figures.js';
export { isChild } from './category/isChild.js';
export { GUIDELINE_IDS, parseCategoryQuestion } from './category/parseCategoryQuestion.js';
export type { CategoryRules, ChildSchemeId } from './category/rules.js';
export { CHILD_SCHEME_IDS, NO_CATEGORIES, NO_SCHEME } from './category/rules.js';
export type { Band, Bound, CategoryScheme, Component, Level, Pressure } from './category/scheme.js';
export { bandOf, isRaised, isSevere, LEVELS, limitsOf } from './category/scheme.js';
export type { AdultSchemeId, PregnancySchemeId } from './category/schemes.js';
export {
  ADULT_SCHEME_IDS,
  ADULT_SCHEMES,
  adultScheme,
  PREGNANCY_SCHEME,
  PREGNANCY_SCHEME_IDS,
} from './category/schemes.js';
export type { ChildCategory, ScreenedCategory } from './child/aap2017.js';
export { AAP_2017, aap2017 } from './child/aap2017.js';
export type { FastLimit } from './child/breathing.js';
export { breaths95thCentile, fastBreathingLimit, isFastBreathing } from './child/breathing.js';
export type { ChildFlagCode, ChildQuestion, ChildResult } from './child/childResult.js';
export { CHILD_RULE, childResult, FOURTH_REPORT_ID, fourthReportScheme } from './child/childResult.js';
export type { ChildLimits } from './child/childSevere.js';
export { isChildSevere } from './child/childSevere.js';
export { CHILD_COMPARISONS } from './child/comparisons.js';
export { CHILD_FIGURES } from './child/figures.js';
export type { Centiles, Grown, Standing } from './child/fourthReport.js';
export { centilesOf, expectedPressure, standingOf } from './child/fourthReport.js';
export { FOURTH_REPORT } from './child/fourthReportTable.js';
export { heightZ } from './child/heightZ.js';
export type { LowLimit } from './child/lowSystolic.js';
export { isLowSystolic, lowSystolicLimit } from './child/lowSystolic.js';
export { parseChildQuestion } from './child/parseChildQuestion.js';
export type { RangeSet, ReferenceRange } from './child/ranges.js';
export { besideRange, RANGE_SETS, rateCentiles, referenceRange } from './child/ranges.js';
export type { Screening } from './child/screening.js';
export { screeningLimits, screeningOf } from './child/screening.js';
export type { Sex } from './child/sex.js';
export { SEXES } from './child/sex.js';
export { completedYears } from './child/years.js';
export type { ComputedBy } from './contract/computedBy.js';
export type { FieldReader, NumberFault } from './contract/fields.js';
export { readFields } from './contract/fields.js';
export type { Figure, Sureness } from './contract/figure.js';
export { figures } from './contract/figure.js';
export type { Flag } from './contract/flag.js';
export { isBlank, numberFrom, pointer } from './contract/numberText.js';
export type { Parsed, Refusal, RefusalCode } from './contract/refusal.js';
export { refusal } from './contract/refusal.js';
export { roundedText, roundTo } from './contract/rounding.js';
export type { SidedLimit } from './contract/shownPressure.js';
export { shownPressure } from './contract/shownPressure.js';
export type { Table } from './contract/table.js';
export type { Comparison } from './contract/threshold.js';
export { passes, settled } from './contract/threshold.js';
export type { AmplitudeScale, AmplitudeWord } from './count/amplitude.js';
export { AMPLITUDE_SCALES, amplitudeWord } from './count/amplitude.js';
export type { Circumstances, PulseSite } from './count/circumstances.js';
export { PULSE_SITES, UNKNOWN_CIRCUMSTANCES } from './count/circumstances.js';
export { COUNT_COMPARISONS } from './count/comparisons.js';
export type { Count, CountClock, CountFirst, CountOf } from './count/count.js';
export { COUNT_RULE } from './count/count.js';
export type { HowCounted } from './count/countOfRate.js';
export { countOfRate } from './count/countOfRate.js';
export type { CountResult } from './count/countResult.js';
export { countResult } from './count/countResult.js';
export type { PulseDeficit } from './count/deficit.js';
export { pulseDeficit } from './count/deficit.js';
export { COUNT_FIGURES } from './count/figures.js';
export type { FirstWindow } from './count/firstWindow.js';
export { firstWindow } from './count/firstWindow.js';
export type { LikelyRange } from './count/likelyRange.js';
export { likelyRange } from './count/likelyRange.js';
export { mayBeRate } from './count/mayBeRate.js';
export type { NextWindow } from './count/nextWindow.js';
export { nextWindow } from './count/nextWindow.js';
export { parseCount } from './count/parseCount.js';
export { isReachable } from './count/reachable.js';
export type { CountRules } from './count/rules.js';
export { DEFAULT_COUNT_RULES } from './count/rules.js';
export type { Interruption, VoidCount, VoidResult } from './count/voidCount.js';
export { INTERRUPTIONS, isVoid, parseCountOrVoid, voidResult } from './count/voidCount.js';
export type { ArmChoice, ArmLevel, ArmState, PlaceReasonCode } from './cuff/arms.js';
export { armChoice, armState } from './cuff/arms.js';
export { CUFF_COMPARISONS } from './cuff/comparisons.js';
export type { CuffBias } from './cuff/cuffBias.js';
export { cuffBias } from './cuff/cuffBias.js';
export type { CuffChoice, CuffFlagCode, CuffQuestion, CuffReasonCode } from './cuff/cuffChoice.js';
export { CUFF_RULE, cuffChoice, smallestBladderCm } from './cuff/cuffChoice.js';
export type { NamedCuff } from './cuff/cuffsFor.js';
export { carriedCuff, cuffRulesFor, isCuffOf } from './cuff/cuffsFor.js';
export type { ArmFact, ArmFactKind, Dated, PersonFact, PlaceFacts } from './cuff/facts.js';
export { ARM_FACTS, holdsOn, NEVER_FACTS } from './cuff/facts.js';
export { CUFF_FIGURES } from './cuff/figures.js';
export type { HeightEffect } from './cuff/heightEffect.js';
export { heightEffect } from './cuff/heightEffect.js';
export { parseCuffQuestion } from './cuff/parseCuffQuestion.js';
export type { ArmOverride, PlaceCheck, PlaceFlagCode } from './cuff/placeCheck.js';
export { isAveragedSite, placeCheck, placeFlags } from './cuff/placeCheck.js';
export type { CuffSite, CuffSize, Posture, Side } from './cuff/places.js';
export { CUFF_SITES, CUFF_SIZES, POSTURES, SIDES } from './cuff/places.js';
export type { PostureChoice, PostureReasonCode } from './cuff/posture.js';
export { postureChoice } from './cuff/posture.js';
export type { CuffRules } from './cuff/rules.js';
export { DEFAULT_CUFF_RULES } from './cuff/rules.js';
export type { Bladder, CuffScheme, CuffSchemeId, SchemeCuff, TrialSize } from './cuff/schemes.js';
export { CUFF_SCHEME_IDS, CUFF_SCHEMES, cuffScheme } from './cuff/schemes.js';
export type { PreviousInflation, RunCircumstances } from './deflation/circumstances.js';
export { UNKNOWN_RUN_CIRCUMSTANCES } from './deflation/circumstances.js';
export { isCoarserThanThumb, MARK_SCATTER_MS } from './deflation/clocksWithin.js';
export type { RunFlagCode, RunReasonCode } from './deflation/codes.js';
export { DEFLATION_COMPARISONS } from './deflation/comparisons.js';
export type { EndDigits } from './deflation/endDigits.js';
export { endDigits } from './deflation/endDigits.js';
export { DEFLATION_FIGURES } from './deflation/figures.js';
export { gaugeRead, isOnGraduation } from './deflation/graduation.js';
export { type InflateTo, inflateTo, isFeltOn, type KnownOfArm } from './deflation/inflateTo.js';
export { parseRun } from './deflation/parseRun.js';
export { parseShorthand } from './deflation/parseShorthand.js';
export { isLetDownPerBeat } from './deflation/perBeat.js';
export type { Gap, Pressures } from './deflation/pressures.js';
export { pressuresOf } from './deflation/pressures.js';
export type { PressureRange, Ranges } from './deflation/ranges.js';
export { REPEAT_SCATTER_MMHG } from './deflation/ranges.js';
export type { Rates } from './deflation/rates.js';
export type {
  DeflationRules,
  GaugeReading,
  InflationRules,
  PerBeatWhen,
  RunRules,
} from './deflation/rules.js';
export {
  DEFAULT_DEFLATION_RULES,
  DEFAULT_INFLATION_RULES,
  DEFAULT_RUN_RULES,
} from './deflation/rules.js';
export type { Method, Moment, MomentOf, Palpated, Peak, Run } from './deflation/run.js';
export { METHODS, MOMENTS, RUN_RULE } from './deflation/run.js';
export type { RunResult } from './deflation/runResult.js';
export { runResult } from './deflation/runResult.js';
export type { Beside, Shorthand } from './deflation/shorthand.js';
export { NOTHING_BESIDE, numbersText, printShorthand, shorthandOf } from './deflation/shorthand.js';
export { runOfShorthand, shorthandResult } from './deflation/shorthandRun.js';
export { dayAfter } from './equipment/calendar.js';
export { comparedAtMmHg } from './equipment/comparedAt.js';
export { EQUIPMENT_COMPARISONS } from './equipment/comparisons.js';
export { EQUIPMENT_FIGURES } from './equipment/figures.js';
export type { GaugeFlag, GaugeResult, GaugeVerdict, GaugeWhy } from './equipment/gaugeCheck.js';
export { GAUGE_RULE, gaugeResult } from './equipment/gaugeCheck.js';
export type { ComparisonPoint, GaugeCheckOf, GaugeEvent, GaugeLog, GaugeType } from './equipment/gaugeLog.js';
export { GAUGE_CHECKS, GAUGE_EVENTS, GAUGE_TYPES } from './equipment/gaugeLog.js';
export type {
  CheckStanding,
  CheckState,
  GaugeDone,
  GaugeDoubt,
  GaugeStanding,
  GaugeState,
} from './equipment/gaugeStanding.js';
export { gaugeStanding } from './equipment/gaugeStanding.js';
export { parseGaugeLog } from './equipment/parseGaugeLog.js';
export type { EquipmentRules } from './equipment/rules.js';
export { COMPARISONS, FIGURES, TABLES } from './figures.js';
export type { ActFirstGroup, AlertedRow } from './outOfOffice/actFirstGroups.js';
export { actFirstGroups } from './outOfOffice/actFirstGroups.js';
export type { ActFirstIn } from './outOfOffice/actFirstOf.js';
export { actFirstIn, upright } from './outOfOffice/actFirstOf.js';
export type { AmbulatoryCircumstances } from './outOfOffice/ambulatoryCircumstances.js';
export type {
  AmbulatoryFlagCode,
  AmbulatoryReasonCode,
  AmbulatoryResult,
  AmbulatoryRuleName,
} from './outOfOffice/ambulatoryResult.js';
export { AMBULATORY_RULE, ambulatoryResult } from './outOfOffice/ambulatoryResult.js';
export type { AmbulatoryRules, Period, WholeMean } from './outOfOffice/ambulatoryRules.js';
export { DEFAULT_AMBULATORY_RULES, PERIODS, WHOLE_MEANS } from './outOfOffice/ambulatoryRules.js';
export { APART_BY_THEMSELVES, changeBetween, type PublishedApart } from './outOfOffice/apartByThemselves.js';
export type { ArtefactCode, EditingRule } from './outOfOffice/artefacts.js';
export { artefactOf, EDITING_RULES } from './outOfOffice/artefacts.js';
export type { ByMeasure, PressurePair } from './outOfOffice/byMeasure.js';
export type { ClockRange } from './outOfOffice/clock.js';
export { doOverlap } from './outOfOffice/clock.js';
export { combinedLoad } from './outOfOffice/combinedLoad.js';
export { OUT_OF_OFFICE_COMPARISONS } from './outOfOffice/comparisons.js';
export type { Cosinor, Harmonic } from './outOfOffice/cosinor.js';
export { cosinor } from './outOfOffice/cosinor.js';
export {
  DERIVED,
  type Derived,
  type DerivedSpread,
  type DerivedSpreads,
  derivedSpreads,
} from './outOfOffice/derivedSpread.js';
export type { DipBeside, DipClass } from './outOfOffice/dipping.js';
export { DIP_CLASSES, dipBeside } from './outOfOffice/dipping.js';
export { OUT_OF_OFFICE_FIGURES } from './outOfOffice/figures.js';
export { followsOn } from './outOfOffice/followsOn.js';
export type { AskedAtHome, HomeAsked, HomeGap } from './outOfOffice/homeAsked.js';
export { homeAsked } from './outOfOffice/homeAsked.js';
export { dayPartOf, homeDayOf, sittingsOf } from './outOfOffice/homeDays.js';
export type { HomeParts } from './outOfOffice/homeParts.js';
export { homeParts } from './outOfOffice/homeParts.js';
export type {
  DropCode,
  Dropped,
  HomeCircumstances,
  HomeFlagCode,
  HomeReasonCode,
  HomeResult,
  HomeRuleName,
} from './outOfOffice/homeResult.js';
export { HOME_RULE, homeResult, NOTHING_BY_HAND } from './outOfOffice/homeResult.js';
export type { HomeRules } from './outOfOffice/homeRules.js';
export { DEFAULT_HOME_RULES, HOME_AVERAGED, HOME_JUDGED, SITTING_USES } from './outOfOffice/homeRules.js';
export type { HomeSchemeId } from './outOfOffice/homeSchemes.js';
export { HOME_SCHEME_IDS, homeScheme } from './outOfOffice/homeSchemes.js';
export type { Hour } from './outOfOffice/hourly.js';
export { hourlyMeans } from './outOfOffice/hourly.js';
export type { GroupVariability, MeanAndSd, VariabilityFit } from './outOfOffice/indexToMean.js';
export { groupVariability, VARIABILITY_FITS, VARIABILITY_RULE } from './outOfOffice/indexToMean.js';
export type { IntakeLimits } from './outOfOffice/intakeLimits.js';
export { INTAKE_LIMITS } from './outOfOffice/intakeLimits.js';
export type { AmbulatoryPattern } from './outOfOffice/judgedPeriods.js';
export type { Lone, LoneReading } from './outOfOffice/loneReadings.js';
export { loneOf, loneReadings } from './outOfOffice/loneReadings.js';
export type { MarksBeside } from './outOfOffice/marksBeside.js';
export { marksBeside } from './outOfOffice/marksBeside.js';
export type { OfficeBeside } from './outOfOffice/officeBeside.js';
export { officeBeside } from './outOfOffice/officeBeside.js';
export type { OfficePressure, OfficeVisit, OfficeVisits } from './outOfOffice/officeVisits.js';
export { isNearSeries, officeVisits } from './outOfOffice/officeVisits.js';
export { ofSchedule } from './outOfOffice/ofSchedule.js';
export { outOfLine } from './outOfOffice/outOfLine.js';
export type { PeriodCategories } from './outOfOffice/periodCategories.js';
export { periodCategories } from './outOfOffice/periodCategories.js';
export type { PeriodCounts } from './outOfOffice/periodCounts.js';
export { periodCounts } from './outOfOffice/periodCounts.js';
export type { Load } from './outOfOffice/periodLoad.js';
export type { PeriodResult } from './outOfOffice/periodResult.js';
export type { DayNight, DayNightBy, PeriodOf } from './outOfOffice/periods.js';
export { periodOf, sleepOf } from './outOfOffice/periods.js';
export type { Held, Phenotype, PhenotypeResult, WhiteCoatEffect } from './outOfOffice/phenotype.js';
export {
  phenotypeOf,
  TREATED_PHENOTYPES,
  UNTREATED_PHENOTYPES,
  whiteCoatEffect,
} from './outOfOffice/phenotype.js';
export type { EditCode, Edited } from './outOfOffice/recordingKept.js';
export type { RecordingNoteCode } from './outOfOffice/recordingNotes.js';
export { recordingNotes } from './outOfOffice/recordingNotes.js';
export type { LeftForGood } from './outOfOffice/restorable.js';
export { leftForGood } from './outOfOffice/restorable.js';
export type { SeriesAlert, SeriesPressure } from './outOfOffice/seriesAlerts.js';
export { seriesAlerts } from './outOfOffice/seriesAlerts.js';
export type { DayPart, Measure, SeriesReading, SeriesSite } from './outOfOffice/seriesReading.js';
export { DAY_PARTS, inTimeOrder, MEASURES } from './outOfOffice/seriesReading.js';
export type { Spread } from './outOfOffice/spread.js';
export { SURGE_CAUTION, SURGES, type Surge, type SurgeDefinition } from './outOfOffice/surge.js';
export type { TargetBeside, TreatmentTarget } from './outOfOffice/treatmentTarget.js';
export { targetBeside } from './outOfOffice/treatmentTarget.js';
export { cvPercent } from './outOfOffice/variability.js';
export { canonicalJson } from './protocol/canonicalJson.js';
export type { FieldChange, PresetChange, ProtocolDiff } from './protocol/diff.js';
export { protocolDiff } from './protocol/diff.js';
export { protocolDocument } from './protocol/document.js';
export { equipmentFields } from './protocol/equipmentFields.js';
export type { Field, FieldValue, Replaced } from './protocol/field.js';
export { LOCAL_SOURCE } from './protocol/field.js';
export { keptProtocol } from './protocol/keptProtocol.js';
export type { LocalField } from './protocol/localFields.js';
export { localFields } from './protocol/localFields.js';
export type { Override } from './protocol/override.js';
export { overrideFields, restoreField } from './protocol/override.js';
export { parseProtocol } from './protocol/parseProtocol.js';
export type { PresetRow } from './protocol/presetProtocol.js';
export { listPresets, presetProtocol } from './protocol/presetProtocol.js';
export type { Preset } from './protocol/presets.js';
export { PRESETS } from './protocol/presets.js';
export type { Presets, Protocol } from './protocol/protocol.js';
export { PROTOCOL_SCHEMA } from './protocol/protocol.js';
export { protocolVersion } from './protocol/protocolVersion.js';
export {
  actNowOrigins,
  actNowRules,
  ambulatoryRules,
  armsRules,
  categoryRules,
  countRules,
  cuffRules,
  equipmentRules,
  homeRules,
  planRules,
  readingsRules,
  recheckRules,
  roundRules,
  runRules,
  scoreRules,
  signingRules,
} from './protocol/rules.js';
export type { FieldsOf, LaterSection, SectionName, SectionRules } from './protocol/sections.js';
export { SECTION_NAMES, SECTIONS } from './protocol/sections.js';
export type { FieldKind, FieldShape, Section, SectionShape } from './protocol/shape.js';
export type { ActNowAlert, FeaturesToAsk } from './round/actNow.js';
export { ACT_NOW_RULE, actNow, featuresToAsk } from './round/actNow.js';
export type { ActNowCondition } from './round/actNowConditions.js';
export { ACT_NOW_CONDITIONS } from './round/actNowConditions.js';
export type { ActNowLimit } from './round/actNowLimits.js';
export { ACT_NOW_LIMITS } from './round/actNowLimits.js';
export type { ActNowId, ActNowOrigins, ActNowRules, LimitOrigin } from './round/actNowRules.js';
export {
  ACT_NOW_IDS,
  DEFAULT_ACT_NOW_ORIGINS,
  DEFAULT_ACT_NOW_RULES,
  pregnancyLimits,
  SEVERE_AWAY,
  SWITCHABLE_IDS,
  severeLimits,
} from './round/actNowRules.js';
export type { ArmDifference, ArmPair, ArmsCode } from './round/armDifference.js';
export { armDifference, armPairs } from './round/armDifference.js';
export type { ArmsBesideCode } from './round/armsBeside.js';
export { armsBeside } from './round/armsBeside.js';
export type { ArmsRules } from './round/armsRules.js';
export { DEFAULT_ARMS_RULES } from './round/armsRules.js';
export type { AskCode, Asked } from './round/ask.js';
export { isAtOnceAfter } from './round/atOnce.js';
export type { AverageFlagCode, AverageReasonCode, ReadingsAverage } from './round/averageReadings.js';
export { AVERAGE_RULE, averageReadings } from './round/averageReadings.js';
export type { AveragingOrigin } from './round/averagingOrigins.js';
export { AVERAGING_ORIGINS } from './round/averagingOrigins.js';
export type { AveragingMethod, AveragingRule, AveragingRuleId, Difference } from './round/averagingRules.js';
export { AVERAGING_RULE_IDS, AVERAGING_RULES, averagingRule } from './round/averagingRules.js';
export { isCategoryHeldBack, isCategoryOfLow } from './round/categoryBeside.js';
export type { RoundCategory } from './round/categoryOfRound.js';
export type { Estimate, RoundEvent, RoundMeasure, RoundRate, RoundValue, Wanted } from './round/event.js';
export { ROUND_FIGURES } from './round/figures.js';
export { firstStep } from './round/firstStep.js';
export type { Reading } from './round/fullReadings.js';
export type { FurtherReading, FurtherReadingCode, ReadingsCircumstances } from './round/furtherReading.js';
export { furtherReading, UNKNOWN_READINGS_CIRCUMSTANCES } from './round/furtherReading.js';
export type { EmergencyFeature, KnownScore, KnownSigns } from './round/knownSigns.js';
export { EMERGENCY_FEATURES, NOTHING_KNOWN } from './round/knownSigns.js';
export type { LieDownCode, UprightAsk } from './round/lieDown.js';
export { isToLieDown, lieDownFlags, uprightAsk } from './round/lieDown.js';
export { isSameLimb } from './round/limb.js';
export type { LyingCode } from './round/lyingBefore.js';
export { lyingDue, lyingFlags, minutesLying } from './round/lyingBefore.js';
export { mostUrgent } from './round/mostUrgent.js';
export { needsBeside } from './round/needsBeside.js';
export type { NextStep, NextStepCode, StepReasonCode, StepRules } from './round/nextStep.js';
export {
  isOtherArmOpen,
  missingSigns,
  nextPressureStep,
  nextStep,
  postureLaidDown,
  wantedSigns,
} from './round/nextStep.js';
export { DAY_OF_ROUND, placeFactsOf } from './round/placeFacts.js';
export type { PlanRules } from './round/planRules.js';
export { DEFAULT_PLAN_RULES } from './round/planRules.js';
export type { Preparation } from './round/preparation.js';
export {
  areCuffPointsKnown,
  isOfCuff,
  PREPARATION,
  PREPARATION_OF_CUFF,
  PREPARATION_TIMES,
} from './round/preparation.js';
export { type ReadAgainCode, readAgain } from './round/readAgain.js';
export { isUpright, readingsOf, seriesOf } from './round/readingsOf.js';
export type { IrregularAverage, ReadingsRules } from './round/readingsRules.js';
export { DEFAULT_READINGS_RULES, readingsRulesOf } from './round/readingsRules.js';
export type { LeftOutReason, ReadingsToAverage } from './round/readingsToAverage.js';
export { readingsToAverage } from './round/readingsToAverage.js';
export type { Recheck, RecheckClass, RecheckCode } from './round/recheckAfter.js';
export { RECHECK_CLASSES, recheckAfter, recheckUrgency } from './round/recheckAfter.js';
export type { RecheckCircumstances } from './round/recheckClass.js';
export { recheckClass } from './round/recheckClass.js';
export { recheckFlag } from './round/recheckFlag.js';
export type { RecheckRules } from './round/recheckRules.js';
export { DEFAULT_RECHECK_RULES } from './round/recheckRules.js';
export type { RecheckBesideCode, RepeatAtOnce } from './round/repeatAtOnce.js';
export { alertsBeside, rechecksBeside, repeatAtOnce } from './round/repeatAtOnce.js';
export type { Rest, RestSkippedReason } from './round/rest.js';
export { exceptionsWithRest, isRestKnown, isRestWhole, REST_SKIPPED_REASONS } from './round/rest.js';
export type { RoundCategoryReasonCode } from './round/roundCategory.js';
export type { ArmOfDay, RoundFacts } from './round/roundFacts.js';
export { NO_ROUND_FACTS } from './round/roundFacts.js';
export type { JudgedReading, RoundInput } from './round/roundInput.js';
export type { NoteCode, NotedReading, RoundNotes } from './round/roundNotes.js';
export { NO_ROUND_NOTES, roundNotes } from './round/roundNotes.js';
export type { ReadingPlace, RoundReading } from './round/roundReading.js';
export type { RoundPressure, RoundResult, RoundRuleId } from './round/roundResult.js';
export {
  ROUND_RULE,
  ROUND_RULES,
  readingsCircumstances,
  roundResult,
} from './round/roundResult.js';
export type { RoundRules } from './round/roundRules.js';
export { DEFAULT_ROUND_RULES } from './round/roundRules.js';
export type { RoundScore } from './round/roundScores.js';
export type { RoundState } from './round/roundState.js';
export { after, EMPTY_ROUND, hasNumber, isAnswered, roundState, valuesOf } from './round/roundState.js';
export type { KnownPressure, PressureLimit, SevereLimits } from './round/severe.js';
export { isPressureSevere } from './round/severe.js';
export type { SigningRules } from './round/signingRules.js';
export { DEFAULT_SIGNING_RULES } from './round/signingRules.js';
export { standingBeside } from './round/standingBeside.js';
export type { NotDoneReason, RoundSign, RoundStep } from './round/step.js';
export { NOT_DONE_REASONS, ROUND_SIGNS, ROUND_STEPS } from './round/step.js';
export { isLowCondition, worstAlerts } from './round/worstAlerts.js';
export { bodyMassIndex } from './score/bodyMassIndex.js';
export { SCORE_COMPARISONS } from './score/comparisons.js';
export type { DerivedFlagCode, DerivedReasonCode, DerivedUnit, DerivedValue } from './score/derivedValue.js';
export type {
  EarlyWarning,
  EarlyWarningAlertCode,
  EarlyWarningFlagCode,
  EarlyWarningPart,
} from './score/earlyWarning.js';
export { EARLY_WARNING_PARTS, earlyWarning } from './score/earlyWarning.js';
export type { EarlyWarningBand, EarlyWarningResponseCode } from './score/earlyWarningResponse.js';
export type { Fall } from './score/falls.js';
export { wholeMinutes } from './score/falls.js';
export { SCORE_FIGURES } from './score/figures.js';
export type { GlasgowTotal } from './score/glasgowTotal.js';
export { glasgowTotal } from './score/glasgowTotal.js';
export { isLowForScore } from './score/isLowForScore.js';
export type { MeanPressure } from './score/meanPressure.js';
export { meanPressure } from './score/meanPressure.js';
export { paediatricShockIndex } from './score/paediatricShockIndex.js';
export { parseScoreInputs } from './score/parseScoreInputs.js';
export { parseStandingTest } from './score/parseStandingTest.js';
export { pulsePressure } from './score/pulsePressure.js';
export { ratePressureProduct } from './score/ratePressureProduct.js';
export type { ScoreRules } from './score/rules.js';
export { DEFAULT_SCORE_RULES } from './score/rules.js';
export type { ScoreInput, ScoreInputs } from './score/scoreInputs.js';
export { NO_SCORE_INPUTS } from './score/scoreInputs.js';
export type { Score, ScoreId } from './score/scores.js';
export { SCORE_IDS, SCORE_RULE, SCORES } from './score/scores.js';
export type { SepsisScreen } from './score/sepsisScreen.js';
export { sepsisScreen } from './score/sepsisScreen.js';
export { ageShockIndex, modifiedShockIndex, shockIndex } from './score/shockIndex.js';
export type { StandingNumbers, StandingReading, StandingTest } from './score/standing.js';
export type { StandingAsk, StandingDue } from './score/standingDue.js';
export {
  isNoneToCome,
  minutesUpright,
  missedUpright,
  standingAsk,
  standingDue,
} from './score/standingDue.js';
export type { StandingMissing, StandingResult } from './score/standingResult.js';
export { standingResult } from './score/standingResult.js';
export { celsiusOf, centimetresOf, fahrenheitOf, kilogramsOf, kiloPascalsOf } from './score/units.js';
export type { SignCircumstances } from './sign/circumstances.js';
export { UNKNOWN_SIGN_CIRCUMSTANCES } from './sign/circumstances.js';
export type { SignFlagCode } from './sign/codes.js';
export { SIGN_COMPARISONS } from './sign/comparisons.js';
export { SIGN_FIGURES } from './sign/figures.js';
export { isSaturationDoubtful } from './sign/oxygenSaturation.js';
export { lineOfScore, scoreOfLine } from './sign/painLine.js';
export { parseSign } from './sign/parseSign.js';
export type {
  Consciousness,
  ConsciousnessLevel,
  GlasgowPart,
  GlasgowParts,
  Height,
  HowKnown,
  OxygenSaturation,
  OxygenScale,
  Pain,
  PainTool,
  PainWord,
  ProbeSite,
  Sign,
  SignOf,
  Temperature,
  TemperatureSite,
  Weight,
} from './sign/sign.js';
export {
  CONSCIOUSNESS_LEVELS,
  HOW_KNOWN,
  PAIN_TOOLS,
  PAIN_WORDS,
  PROBE_SITES,
  SIGN_RULE,
  SIGNS,
  TEMPERATURE_SITES,
} from './sign/sign.js';
export type { SignResult } from './sign/signResult.js';
export { signResult } from './sign/signResult.js';
export { mean } from './statistics/mean.js';
export { median } from './statistics/median.js';
export { TAP_COMPARISONS } from './taps/comparisons.js';
export { TAP_FIGURES } from './taps/figures.js';
export { parseTapLines } from './taps/parseTapLines.js';
export { parseTaps } from './taps/parseTaps.js';
export type { Repair } from './taps/repair.js';
export type { Rhythm } from './taps/rhythm.js';
export type { TapAdvice } from './taps/tapAdvice.js';
export { tapAdvice } from './taps/tapAdvice.js';
export type { TapOptions, TapResult } from './taps/tapResult.js';
export { tapResult } from './taps/tapResult.js';
export type { TapSource, Taps } from './taps/taps.js';
export { TAPS_RULE } from './taps/taps.js';
export type { TapsEnough } from './taps/tapsEnough.js';
export { tapsEnough } from './taps/tapsEnough.js';
export { UNIT_FIGURES } from './unit/figures.js';
export type { HowToType, MeasureTyped } from './unit/readMeasure.js';
export { askedUnit, howToType, limitsIn, readMeasure } from './unit/readMeasure.js';
export type { Quantity, Unit } from './unit/unit.js';
export { inUnit, keptFrom, UNITS } from './unit/unit.js';
export type { AssumptionCode } from './usual/assumptions.js';
export { assumptionsOf } from './usual/assumptions.js';
export type { ChanceOver, ChancePrior, VisitsMean } from './usual/chancesOver.js';
export { chancesOver, chancesWithVisits, withOfficeVisits } from './usual/chancesOver.js';
export type { OwnSds } from './usual/components.js';
export { componentsOf, ownSds } from './usual/components.js';
export { USUAL_FIGURES } from './usual/figures.js';
export type { Belief } from './usual/normalNormal.js';
export { agePrior, assessmentSd } from './usual/prior.js';
export { US_ADULTS_2009_2012 } from './usual/priorsTable.js';
export type { UsualKnown } from './usual/usualOf.js';
export { dayAsked, homeMeanKnown, homeThresholds, usualOf } from './usual/usualOf.js';
export type { MoreDays, UsualQuestion, UsualResult, UsualScale } from './usual/usualResult.js';
export { HOME_OFFSET, USUAL_RULE, usualResult } from './usual/usualResult.js';
