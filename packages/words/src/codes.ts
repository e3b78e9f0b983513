import type {
  ActNowId,
  AmbulatoryResult,
  ArmsBesideCode,
  ArmsCode,
  AskCode,
  AssumptionCode,
  Category,
  ChildResult,
  CountResult,
  CuffChoice,
  DerivedValue,
  DropCode,
  EarlyWarning,
  EarlyWarningResponseCode,
  EditCode,
  Flag,
  GaugeResult,
  GlasgowTotal,
  HomeResult,
  NextStepCode,
  NoteCode,
  PlaceFlagCode,
  PlaceReasonCode,
  PostureReasonCode,
  PulseDeficit,
  ReadAgainCode,
  ReadingsAverage,
  RecheckBesideCode,
  RoundCategory,
  RunResult,
  SepsisScreen,
  SignResult,
  StandingResult,
  TapResult,
  VoidResult,
} from '@evenfall/clinical';

type Explained = { readonly flags: readonly Flag[]; readonly why: readonly Flag[] };

/** The codes a result may carry, where its type names them; none where it only says "a code". */
type CodesOf<Result extends Explained> = Named<
  Result['flags'][number]['code'] | Result['why'][number]['code']
>;

type Named<Code extends string> = string extends Code ? never : Code;

/** Every code that counting and tapping can return: the catalogue does not compile without a sentence for each. */
export type ClinicalCode =
  | ActNowId
  | ArmsBesideCode
  | ArmsCode
  | AssumptionCode
  | AskCode
  | CodesOf<AmbulatoryResult>
  | DropCode
  | EditCode
  | CodesOf<HomeResult>
  | CodesOf<Category>
  | CodesOf<ChildResult>
  | CodesOf<CountResult>
  | CodesOf<VoidResult>
  | CodesOf<PulseDeficit>
  | CodesOf<ReadingsAverage>
  | CodesOf<GaugeResult>
  | NextStepCode
  | NoteCode
  | RecheckBesideCode
  | CodesOf<RoundCategory>
  | CodesOf<RunResult>
  | CodesOf<CuffChoice>
  | PlaceFlagCode
  | PlaceReasonCode
  | PostureReasonCode
  | ReadAgainCode
  | CodesOf<EarlyWarning>
  | EarlyWarningResponseCode
  | CodesOf<SepsisScreen>
  | CodesOf<DerivedValue<string>>
  | CodesOf<GlasgowTotal>
  | (EarlyWarning | SepsisScreen | GlasgowTotal)['alerts'][number]['code']
  | CodesOf<StandingResult>
  | CodesOf<SignResult>
  | CodesOf<TapResult>;

/**
 * The codes that the start page and the keypad of three touches say: what a typed pressure brings, what comes next and why,
 * what is asked, and when to act now.
 */
export type BedsideCode = ActNowId | AskCode | NextStepCode | ReadAgainCode | CodesOf<RunResult>;
