export type { AccountRow, SignedInHere, SignInState } from './accountShapes.js';
export { newAccount } from './accountShapes.js';
export type { ClassDeleted, ClassPerson, ClassSession, ClassSessionRecord } from './classShapes.js';
export type { Answer, Gives, Send, Takes } from './client.js';
export { call } from './client.js';
export type { EquipmentRecord, GaugeReadings } from './equipmentShapes.js';
export type { ExerciseKept, ExerciseList, ExerciseRow, ScenarioList } from './exerciseShapes.js';
export { fileText } from './fileText.js';
export type { ImportedFile } from './importShapes.js';
export { LARGEST_BODY_BYTES } from './limits.js';
export { linesOf } from './linesOf.js';
export type { Marking, MarkingState, SecondMark } from './markingShapes.js';
export { PATHS, type RouteName } from './paths.js';
export type { Lan, LanSettings, Settings, Told } from './process.js';
export { ROUTES, type Routes } from './routes.js';
export type {
  About,
  AgentHere,
  PersonRecord,
  PersonRow,
  Problem,
  ProblemDetails,
  ProtocolRow,
  TakenEntries,
} from './shapes.js';
export * as shapes from './shapes.js';
