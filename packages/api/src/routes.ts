import { agent, book, id } from '@evenfall/record';
import { createRoute, z } from '@hono/zod-openapi';
import {
  account,
  accountChange,
  keptAccounts,
  newAccount,
  nothing,
  ownPassPhrase,
  ownPin,
  signInState,
  signInWith,
  takeOverWith,
} from './accountShapes.js';
import {
  classDeleted,
  classSession,
  classSessionRecord,
  endedClassSession,
  newClassPerson,
  newClassSession,
  withdrawal,
} from './classShapes.js';
import { equipmentRecord, gaugeReadings } from './equipmentShapes.js';
import { exerciseKept, exerciseList, exercisesBefore, scenarioList } from './exerciseShapes.js';
import { bundleOfSeries, fileToImport, importedFile, seriesTable } from './importShapes.js';
import {
  clockNow,
  joinWith,
  keptMarks,
  marking,
  markingState,
  marksOfMarker,
  newMarking,
  runUnderWay,
  waited,
} from './markingShapes.js';
import { PATHS } from './paths.js';
import {
  about,
  agentHere,
  correctedIdentity,
  erasedIdentity,
  newEntries,
  newPerson,
  personList,
  personRecord,
  problemDetails,
  protocolChoice,
  protocolRow,
  takenEntries,
} from './shapes.js';

const bookParam = z.object({ book });
const personParam = bookParam.extend({ person: id });
/** Books whose people have two identifiers; those of a class are added and taken out within its session. */
const identityBook = z.object({ book: book.exclude(['class']) });
const identityParam = identityBook.extend({ person: id });
const sessionParam = z.object({ session: id });

const seriesParam = personParam.extend({ series: id });

const withOrWithout = z.enum(['with', 'without']);
const exportQuery = z.object({
  as: z.enum(['csv', 'fhir', 'text']).default('csv'),
  /** What a text is made by: the newest signed round by one of the templates that Evenfall brings. */
  template: z.enum(['line', 'handover', 'letter']).default('handover'),
  identity: withOrWithout.default('without'),
  /** SNOMED CT codes beside the words, for which a country may need a licence. */
  snomed: withOrWithout.default('with'),
});

/** As the device of whoever asks writes: the paper in its printer, its language, its dates and hours. */
const sheetQuery = z.object({
  paper: z.enum(['a4', 'letter']).default('a4'),
  locale: z.string().max(35).default('en'),
  dates: z.enum(['day-month-year', 'month-day-year', 'year-month-day']).optional(),
  hours: z.enum(['12', '24']).default('24'),
  /** The stiffness index of a recording, which no rule set asks for by itself. */
  stiffness: withOrWithout.default('without'),
  /** Another series of the person: then the answer is one sheet with both, the earlier first. */
  beside: id.optional(),
});

const json = <S extends z.ZodType>(schema: S, description: string) => ({
  description,
  content: { 'application/json': { schema } },
});
const body = <S extends z.ZodType>(schema: S) => ({
  required: true,
  content: { 'application/json': { schema } },
});
const refused = (description: string) => ({
  description,
  content: { 'application/problem+json': { schema: problemDetails } },
});

const NOT_FOUND = { 404: refused('No such person in this book.') } as const;
const NO_SESSION = {
  404: refused('No such class session is open; of one that was ended nothing may be left.'),
} as const;
const NO_MARKING = { 404: refused('No such run is being marked; it may be over.') } as const;
const BAD_INPUT = {
  400: refused('The body could not be read.'),
  413: refused('The body is too large.'),
  415: refused('The body is not JSON.'),
  422: refused('Values were refused; `problems` names each one.'),
} as const;
const NOT_SIGNED_IN = {
  401: refused('Not the right name, pass phrase or PIN, or nobody is signed in.'),
} as const;
const NOT_YOURS = { 403: refused('This account may not do it.') } as const;
const TOO_OFTEN = { 429: refused('Too often; `Retry-After` says when to try again.') } as const;
const CONFLICT = { 409: refused('The same id with other content is already kept.') } as const;

/** Every route with its schemas: the one source of the OpenAPI document and of the client's types. */
export const ROUTES = {
  about: createRoute({
    ...PATHS.about,
    summary: 'What this server is',
    responses: { 200: json(about, 'The program, the site and the protocol in force.') },
  }),
  readSignIn: createRoute({
    ...PATHS.readSignIn,
    summary:
      'Who acts on this device, who may take it over, and which accounts it keeps something of are closed',
    request: { query: keptAccounts },
    responses: {
      200: json(signInState, 'Answered to everybody; of others than those on this device nothing.'),
    },
  }),
  signIn: createRoute({
    ...PATHS.signIn,
    summary: 'Sign in with a pass phrase',
    request: { body: body(signInWith) },
    responses: {
      200: json(signInState, 'Signed in; a cookie is set.'),
      ...BAD_INPUT,
      ...NOT_SIGNED_IN,
      ...TOO_OFTEN,
    },
  }),
  signOut: createRoute({
    ...PATHS.signOut,
    summary: 'Sign out of this device',
    request: { body: body(nothing) },
    responses: { 200: json(signInState, 'Signed out.'), ...BAD_INPUT },
  }),
  lockDevice: createRoute({
    ...PATHS.lockDevice,
    summary: 'Lock this device until a PIN or a pass phrase is given',
    request: { body: body(nothing) },
    responses: { 200: json(signInState, 'Locked.'), ...BAD_INPUT },
  }),
  takeOver: createRoute({
    ...PATHS.takeOver,
    summary: 'Go on, or take a device over, by PIN',
    description: 'Only where the pass phrase was given on this device before; wrong PINs end that.',
    request: { body: body(takeOverWith) },
    responses: { 200: json(signInState, 'Taken over.'), ...BAD_INPUT, ...NOT_SIGNED_IN, ...TOO_OFTEN },
  }),
  choosePassPhrase: createRoute({
    ...PATHS.choosePassPhrase,
    summary: 'Choose a pass phrase of one’s own',
    request: { body: body(ownPassPhrase) },
    responses: {
      200: json(signInState, 'Kept; other devices are signed out.'),
      ...BAD_INPUT,
      ...NOT_SIGNED_IN,
      ...TOO_OFTEN,
    },
  }),
  choosePin: createRoute({
    ...PATHS.choosePin,
    summary: 'Choose a PIN, or take it away',
    request: { body: body(ownPin) },
    responses: { 200: json(signInState, 'Kept.'), ...BAD_INPUT, ...NOT_SIGNED_IN, ...TOO_OFTEN },
  }),
  listAccounts: createRoute({
    ...PATHS.listAccounts,
    summary: 'Everybody who signs in here; for an owner',
    responses: {
      200: json(z.object({ accounts: z.array(account) }), 'By name, closed ones too.'),
      ...NOT_YOURS,
    },
  }),
  addAccount: createRoute({
    ...PATHS.addAccount,
    summary: 'Make an account; for an owner',
    request: { body: body(newAccount) },
    responses: {
      200: json(account, 'Made already.'),
      201: json(account, 'Made now.'),
      ...BAD_INPUT,
      ...CONFLICT,
      ...NOT_YOURS,
      ...TOO_OFTEN,
    },
  }),
  changeAccount: createRoute({
    ...PATHS.changeAccount,
    summary: 'Change what an account may do, close it, or give it a first pass phrase again; for an owner',
    request: { params: z.object({ account: id }), body: body(accountChange) },
    responses: {
      200: json(account, 'Changed.'),
      ...BAD_INPUT,
      ...NOT_FOUND,
      ...CONFLICT,
      ...NOT_YOURS,
      ...TOO_OFTEN,
    },
  }),
  listAgents: createRoute({
    ...PATHS.listAgents,
    summary: 'Who acts here',
    responses: { 200: json(z.object({ agents: z.array(agentHere) }), 'Agents by name.') },
  }),
  addAgent: createRoute({
    ...PATHS.addAgent,
    summary: 'Add an agent',
    description: 'Safe to send again: the same id with the same name is answered with what is kept.',
    request: { body: body(agent) },
    responses: {
      200: json(agent, 'Kept already.'),
      201: json(agent, 'Kept now.'),
      ...BAD_INPUT,
      ...CONFLICT,
    },
  }),
  listPersons: createRoute({
    ...PATHS.listPersons,
    summary: 'The people of a book, with the newest value of each sign',
    request: { params: bookParam },
    responses: { 200: json(personList, 'People by name.'), ...BAD_INPUT },
  }),
  addPerson: createRoute({
    ...PATHS.addPerson,
    summary: 'Add a person with two identifiers',
    request: { params: identityBook, body: body(newPerson) },
    responses: {
      200: json(takenEntries, 'Kept already.'),
      201: json(takenEntries, 'Kept now.'),
      ...BAD_INPUT,
      ...CONFLICT,
    },
  }),
  readPerson: createRoute({
    ...PATHS.readPerson,
    summary: 'Everything of one person',
    request: { params: personParam },
    responses: { 200: json(personRecord, 'Identity and entries.'), ...BAD_INPUT, ...NOT_FOUND },
  }),
  correctIdentity: createRoute({
    ...PATHS.correctIdentity,
    summary: 'Put an identity right',
    request: { params: identityParam, body: body(correctedIdentity) },
    responses: {
      200: json(takenEntries, 'Kept already.'),
      201: json(takenEntries, 'Kept now.'),
      ...BAD_INPUT,
      ...NOT_FOUND,
      ...CONFLICT,
    },
  }),
  eraseIdentity: createRoute({
    ...PATHS.eraseIdentity,
    summary: 'Erase who a person is; the entries stay, and a record that it was done',
    request: { params: identityParam, body: body(erasedIdentity) },
    responses: {
      200: json(takenEntries, 'Erased already.'),
      201: json(takenEntries, 'Erased now.'),
      ...BAD_INPUT,
      ...NOT_FOUND,
      ...CONFLICT,
    },
  }),
  addEntries: createRoute({
    ...PATHS.addEntries,
    summary: 'Sign: keep entries, all or none',
    description: 'Safe to send again: an entry with the same id and content is kept once.',
    request: { body: body(newEntries) },
    responses: {
      200: json(takenEntries, 'All were kept already.'),
      201: json(takenEntries, 'Kept now.'),
      ...BAD_INPUT,
      ...NOT_FOUND,
      ...CONFLICT,
    },
  }),
  listClassSessions: createRoute({
    ...PATHS.listClassSessions,
    summary: 'Class sessions that are open',
    responses: { 200: json(z.object({ sessions: z.array(classSession) }), 'Oldest first.') },
  }),
  beginClassSession: createRoute({
    ...PATHS.beginClassSession,
    summary: 'Begin a class session',
    description:
      'By a teacher. What is read in it is deleted when it is ended, unless both agree to keep it.',
    request: { body: body(newClassSession) },
    responses: {
      200: json(takenEntries, 'Begun already.'),
      201: json(takenEntries, 'Begun now.'),
      ...BAD_INPUT,
      ...CONFLICT,
    },
  }),
  readClassSession: createRoute({
    ...PATHS.readClassSession,
    summary: 'A class session that is open, and its people',
    request: { params: sessionParam },
    responses: { 200: json(classSessionRecord, 'People by pseudonym.'), ...BAD_INPUT, ...NO_SESSION },
  }),
  endClassSession: createRoute({
    ...PATHS.endClassSession,
    summary: 'End a class session: delete everything of it but what both agreed to keep',
    request: { params: sessionParam, body: body(endedClassSession) },
    responses: {
      200: json(classDeleted, 'How much was deleted; nothing where it was ended already.'),
      ...BAD_INPUT,
      ...NO_SESSION,
      ...CONFLICT,
    },
  }),
  addClassPerson: createRoute({
    ...PATHS.addClassPerson,
    summary: 'Add a person to a class session, under a pseudonym',
    request: { params: sessionParam, body: body(newClassPerson) },
    responses: {
      200: json(takenEntries, 'Kept already.'),
      201: json(takenEntries, 'Kept now.'),
      ...BAD_INPUT,
      ...NO_SESSION,
      ...CONFLICT,
    },
  }),
  withdrawClassPerson: createRoute({
    ...PATHS.withdrawClassPerson,
    summary: 'Delete everything of a person of a class, at any time and for no reason',
    description: 'Also what was kept of them by agreement when the session was ended.',
    request: { params: sessionParam.extend({ person: id }), body: body(withdrawal) },
    responses: { 200: json(classDeleted, 'How much was deleted.'), ...BAD_INPUT, ...NO_SESSION },
  }),
  listProtocols: createRoute({
    ...PATHS.listProtocols,
    summary: 'Protocol versions kept here',
    responses: { 200: json(z.object({ protocols: z.array(protocolRow) }), 'Oldest first.') },
  }),
  addProtocol: createRoute({
    ...PATHS.addProtocol,
    summary: 'Keep a protocol; its version is the hash of its content',
    request: { body: body(z.object({ content: z.record(z.string(), z.unknown()) })) },
    responses: { 200: json(protocolRow, 'Kept already.'), 201: json(protocolRow, 'Kept now.'), ...BAD_INPUT },
  }),
  listProtocolChoices: createRoute({
    ...PATHS.listProtocolChoices,
    summary: 'Which protocol version was put in force when, and by whom',
    responses: {
      200: json(
        z.object({ choices: z.array(protocolChoice), agents: z.array(agent) }),
        'Every choice ever made here, oldest first, and who acts here.',
      ),
    },
  }),
  listEquipment: createRoute({
    ...PATHS.listEquipment,
    summary: 'What the place measures with',
    description: 'Gauges with their log, and cuffs by room, as entries in order of recording.',
    responses: { 200: json(equipmentRecord, 'Entries about equipment, and who acts here.') },
  }),
  listGaugeReadings: createRoute({
    ...PATHS.listGaugeReadings,
    summary: 'The pressures that were read from a gauge',
    request: { params: z.object({ gauge: id }) },
    responses: {
      200: json(gaugeReadings, 'As they stand, in order of reading.'),
      ...BAD_INPUT,
      404: refused('No such gauge here.'),
    },
  }),
  listExercises: createRoute({
    ...PATHS.listExercises,
    summary: 'Exercises of the practice room, SIMULATED',
    description:
      'Of whoever asks; of everybody for whoever supervises, and where there are no accounts. A page of them; the next one is asked for by `next`.',
    request: { query: exercisesBefore },
    responses: {
      200: json(exerciseList, 'What was practised when and what was written, newest first.'),
      ...BAD_INPUT,
      404: refused('No such exercise to go on from, or not yours.'),
    },
  }),
  listScenarios: createRoute({
    ...PATHS.listScenarios,
    summary: 'Simulated persons that the place made for itself, SIMULATED',
    responses: { 200: json(scenarioList, 'The newest entry of each that is offered, by id.') },
  }),
  readExercise: createRoute({
    ...PATHS.readExercise,
    summary: 'One exercise with its action log, SIMULATED: from it the whole visit is played again',
    request: { params: z.object({ exercise: id }) },
    responses: {
      200: json(exerciseKept, 'The entry as it was kept, and who made it.'),
      ...BAD_INPUT,
      404: refused('No such exercise, or not yours.'),
    },
  }),
  readClock: createRoute({
    ...PATHS.readClock,
    summary: 'The one clock that the devices of a place are brought together by',
    responses: { 200: json(clockNow, 'Of the database, so that it is the same behind every server.') },
  }),
  openMarking: createRoute({
    ...PATHS.openMarking,
    summary: 'Let a second person mark the moments of a run on another device',
    description: 'Safe to send again. It lasts minutes, and nothing of it is of the record.',
    request: { body: body(newMarking) },
    responses: {
      200: json(marking, 'Open already.'),
      201: json(marking, 'Open now; the code joins one other device.'),
      ...BAD_INPUT,
      ...NOT_YOURS,
    },
  }),
  readMarking: createRoute({
    ...PATHS.readMarking,
    summary: 'What the second person marked; answers when there is something new, or after a few seconds',
    request: { params: z.object({ marking: id }), query: waited },
    responses: {
      200: json(markingState, 'Whether somebody joined, and their marks.'),
      ...BAD_INPUT,
      ...NO_MARKING,
    },
  }),
  sayRun: createRoute({
    ...PATHS.sayRun,
    summary: 'Say that the cuff of a run went up, or that it is down again',
    request: { params: z.object({ marking: id }), body: body(runUnderWay) },
    responses: {
      200: json(nothing, 'The other device is told when it asks next.'),
      ...BAD_INPUT,
      ...NO_MARKING,
    },
  }),
  endMarking: createRoute({
    ...PATHS.endMarking,
    summary: 'Nobody marks any more: forget what was marked',
    request: { params: z.object({ marking: id }), body: body(nothing) },
    responses: { 200: json(nothing, 'Forgotten.'), ...BAD_INPUT },
  }),
  joinMarking: createRoute({
    ...PATHS.joinMarking,
    summary: 'Join as the second person, by the code',
    description: 'Safe to send again by the same device. A code joins one device.',
    request: { body: body(joinWith) },
    responses: {
      200: json(nothing, 'Joined.'),
      ...BAD_INPUT,
      ...NO_MARKING,
      409: refused('Another device has joined by this code.'),
      ...NOT_YOURS,
      ...TOO_OFTEN,
    },
  }),
  keepMarks: createRoute({
    ...PATHS.keepMarks,
    summary: 'All that this device marked so far',
    description: 'The whole list each time, with a number that grows: sent twice or late it changes nothing.',
    request: { params: z.object({ marker: id }), body: body(marksOfMarker) },
    responses: { 200: json(keptMarks, 'The newest number that is kept.'), ...BAD_INPUT, ...NO_MARKING },
  }),
  exportPerson: createRoute({
    ...PATHS.exportPerson,
    summary: "A person's chart as a file: a table (RFC 4180), a FHIR R4 bundle, or its newest round as text",
    description:
      'Without who the person is unless asked for. A bundle carries every entry, so that another Evenfall reads the same record.',
    request: { params: personParam, query: exportQuery },
    responses: {
      200: {
        description: 'CSV has one row a value; a bundle has an Observation for each, and more.',
        content: {
          'text/csv': { schema: z.string() },
          'application/fhir+json': { schema: z.string() },
          'text/plain': { schema: z.string() },
        },
      },
      ...BAD_INPUT,
      ...NOT_FOUND,
    },
  }),
  seriesPdf: createRoute({
    ...PATHS.seriesPdf,
    summary: "What a person's series of readings comes to, as a PDF to print or hand over",
    description:
      'One sheet with who the person is, then the list of all readings. With what hands decided, the office pressure beside it and the chances, as the page shows them. `beside` asks for one sheet with another series of the person instead: both means, what each rests on, and how sure the difference is.',
    request: { params: seriesParam, query: sheetQuery },
    responses: {
      200: {
        description: 'A tagged PDF, on the paper that was asked for.',
        content: { 'application/pdf': { schema: z.string() } },
      },
      ...BAD_INPUT,
      ...NOT_FOUND,
    },
  }),
  seriesTable: createRoute({
    ...PATHS.seriesTable,
    summary: 'The pressures of a FHIR R4 bundle as a table of readings',
    description:
      'Keeps nothing. An Observation that cannot be used has a line that says its place, so that it is refused there and can be mended.',
    request: { body: body(bundleOfSeries) },
    responses: { 200: json(seriesTable, 'The table.'), ...BAD_INPUT },
  }),
  importFile: createRoute({
    ...PATHS.importFile,
    summary: 'Bring a FHIR R4 bundle or a table into a chart, or ask what it would add',
    description:
      'Values of others are kept as values from elsewhere; entries of an Evenfall as they were, which an owner alone may bring. What is refused is named by its place, and the rest is kept. A file that is brought twice adds nothing.',
    request: { params: identityParam, body: body(fileToImport) },
    responses: {
      200: json(importedFile, 'What it would add, or that it added nothing.'),
      201: json(importedFile, 'Kept now.'),
      ...BAD_INPUT,
      ...NOT_YOURS,
      ...NOT_FOUND,
    },
  }),
} as const;

export type Routes = typeof ROUTES;
