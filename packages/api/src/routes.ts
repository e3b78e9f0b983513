import { agent, book, id } from '@evenfall/record';
import { createRoute, z } from '@hono/zod-openapi';
import {
  classDeleted,
  classSession,
  classSessionRecord,
  endedClassSession,
  newClassPerson,
  newClassSession,
  withdrawal,
} from './classShapes.js';
import { PATHS } from './paths.js';
import {
  about,
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
const BAD_INPUT = {
  400: refused('The body could not be read.'),
  413: refused('The body is too large.'),
  415: refused('The body is not JSON.'),
  422: refused('Values were refused; `problems` names each one.'),
} as const;
const CONFLICT = { 409: refused('The same id with other content is already kept.') } as const;

/** Every route with its schemas: the one source of the OpenAPI document and of the client's types. */
export const ROUTES = {
  about: createRoute({
    ...PATHS.about,
    summary: 'What this server is',
    responses: { 200: json(about, 'The program, the site and the protocol in force.') },
  }),
  listAgents: createRoute({
    ...PATHS.listAgents,
    summary: 'Who acts here',
    responses: { 200: json(z.object({ agents: z.array(agent) }), 'Agents by name.') },
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
  exportPerson: createRoute({
    ...PATHS.exportPerson,
    summary: "A person's values as CSV (RFC 4180)",
    request: { params: personParam, query: z.object({ as: z.enum(['csv']).default('csv') }) },
    responses: {
      200: { description: 'One row a value.', content: { 'text/csv': { schema: z.string() } } },
      ...BAD_INPUT,
      ...NOT_FOUND,
    },
  }),
} as const;

export type Routes = typeof ROUTES;
