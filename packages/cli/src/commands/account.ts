import type { AccountRow } from '@evenfall/api';
import { type Parsed, type Refusal, refusal } from '@evenfall/clinical';
import { ACCOUNT_ROLES, type AccountRole, type Agent } from '@evenfall/record';
import type { Problem } from '@evenfall/words';
import { v7 } from 'uuid';
import { type Answer, refused } from '../answer.js';
import { type Context, command } from '../command.js';
import { controlRequest, textOf } from '../keeper/controlRequest.js';
import { RECORD_OPTIONS, type Record, recordOf, withKeeper } from '../keeper/withKeeper.js';
import type { Given } from '../options/option.js';
import { newPassPhrase } from './newPassPhrase.js';

const DOING = ['add', 'list', 'roles', 'pass-phrase', 'close', 'reopen'] as const;
type Doing = (typeof DOING)[number];

/** What is to be done with whose account. */
type Act = {
  readonly doing: Doing;
  readonly name: string;
  readonly signIn: string;
  readonly roles: readonly AccountRole[];
};
type Asked = Record & Act;

const DONE = {
  add: 'commandLine.accountAdd',
  roles: 'commandLine.accountRoles',
  'pass-phrase': 'commandLine.accountPassPhrase',
  close: 'commandLine.accountClose',
  reopen: 'commandLine.accountReopen',
} as const satisfies { [doing in Exclude<Doing, 'list'>]: string };

/** What each way of using it needs beside the record. */
const NEEDS: Readonly<{ [doing in Doing]: readonly ('name' | 'sign-in' | 'role')[] }> = {
  add: ['name', 'sign-in', 'role'],
  list: [],
  roles: ['sign-in', 'role'],
  'pass-phrase': ['sign-in'],
  close: ['sign-in'],
  reopen: ['sign-in'],
};

/**
 * `evenfall account add|list|roles|pass-phrase|close|reopen`: who signs in. A pass phrase is never an argument, which other
 * programs of the machine could read: it is asked for, or comes as the first line of standard input.
 */
export const account = command<Asked>({
  name: 'account',
  summary: 'commands.account',
  options: [
    { name: 'name', kind: 'value', means: 'options.accountName', hint: 'NAME' },
    { name: 'sign-in', kind: 'value', means: 'options.signIn', hint: 'NAME', field: '/signIn' },
    { name: 'role', kind: 'value', means: 'options.role', hint: 'ROLE,...', field: '/roles' },
    ...RECORD_OPTIONS,
  ],
  operands: { hint: DOING.join('|'), least: 1, most: 1, expected: 'what-with-account' },

  parse(given, [doing = '']) {
    if (!(DOING as readonly string[]).includes(doing))
      return { ok: false, refusals: [refusal('account', 'unknown-id', 'one-of', doing, { choices: DOING })] };
    return asked(given, doing as Doing);
  },

  run: (input, context) =>
    withKeeper(recordIn(input), context, (socket) => actOnAccounts(socket, input, context), {
      makes: input.doing === 'add',
    }),
});

function asked(given: Given, doing: Doing): Parsed<Asked> {
  const refusals: Refusal[] = NEEDS[doing]
    .filter((option) => (given.text(option) ?? '').trim() === '')
    .map((option) =>
      option === 'role'
        ? refusal('/roles', 'missing', 'roles-of-account', null, { choices: ACCOUNT_ROLES })
        : refusal(option === 'name' ? '/name' : '/signIn', 'missing', 'string', null),
    );
  const roles = (given.text('role') ?? '').split(',').map((role) => role.trim());
  const unknown = roles.filter((role) => role !== '' && !(ACCOUNT_ROLES as readonly string[]).includes(role));
  refusals.push(
    ...unknown.map((role) =>
      refusal('/roles', 'unknown-id', 'roles-of-account', role, { choices: ACCOUNT_ROLES }),
    ),
  );
  if (refusals.length > 0) return { ok: false, refusals };
  const value = {
    ...recordOf(given),
    doing,
    name: given.text('name')?.trim() ?? '',
    signIn: given.text('sign-in')?.trim() ?? '',
    roles: roles.filter((role) => role !== '') as AccountRole[],
  };
  return { ok: true, value };
}

const recordIn = ({ purpose, folder, account: own }: Asked): Record => ({ purpose, folder, account: own });

/** Does it through the control socket of the server that keeps the record; a new pass phrase is asked for, as `phraseOf` says. */
export async function actOnAccounts(
  socket: string,
  input: Act,
  context: Context,
  phraseOf: (context: Context) => Promise<Parsed<string>> = newPassPhrase,
): Promise<Answer> {
  const { words } = context;
  const listed = await ask(socket, 'GET', '/api/accounts');
  const accounts = (listed.json as { accounts: AccountRow[] }).accounts;
  if (input.doing === 'list') {
    const lines = accounts.map((one) => lineOf(one, context));
    return {
      kind: 'one',
      json: { accounts },
      lines: lines.length > 0 ? lines : [words.sentence('commandLine.noAccounts')],
    };
  }
  const known = accounts.find((one) => one.signIn === input.signIn.toLowerCase());
  if (input.doing !== 'add' && known === undefined)
    return refused([words.problem(refusal('--sign-in', 'unknown-id', 'account-here', input.signIn))]);
  const needsPhrase = input.doing === 'add' || input.doing === 'pass-phrase';
  const phrase = needsPhrase ? await phraseOf(context) : null;
  if (phrase !== null && !phrase.ok) return refused(phrase.refusals.map((one) => words.problem(one)));
  const sent =
    known === undefined || input.doing === 'add'
      ? await ask(socket, 'POST', '/api/accounts', {
          id: v7(),
          agent: await agentCalled(socket, input.name, accounts),
          signIn: input.signIn,
          roles: input.roles,
          passPhrase: phrase?.value ?? '',
        })
      : await ask(socket, 'PUT', `/api/accounts/${known.id}`, changeOf(input, phrase?.value ?? ''));
  if (sent.status !== 200 && sent.status !== 201) {
    const { problems } = sent.json as { problems: Problem[] };
    if (problems.length === 0) throw new Error(`the server answered ${sent.status}`);
    return refused(problems.map((problem) => ({ ...problem, field: typedField(problem.field) })));
  }
  const kept = sent.json as AccountRow;
  const said = words.sentence(DONE[input.doing], { signIn: kept.signIn, name: kept.agent.name });
  return { kind: 'one', json: { ...kept }, lines: [said, lineOf(kept, context)] };
}

/**
 * Somebody the charts name already keeps that name in them, and what waits on their devices can be sent: the one agent who
 * is called so and has no account. Nobody, or more than one: somebody new.
 */
async function agentCalled(socket: string, name: string, accounts: readonly AccountRow[]): Promise<Agent> {
  const { agents } = (await ask(socket, 'GET', '/api/agents')).json as { agents: Agent[] };
  const called = agents.filter(
    (one) => one.name === name && !accounts.some(({ agent }) => agent.id === one.id),
  );
  const [only] = called;
  return { id: called.length === 1 && only !== undefined ? only.id : v7(), name };
}

function changeOf({ doing, roles }: Act, passPhrase: string): object {
  if (doing === 'roles') return { roles };
  if (doing === 'pass-phrase') return { passPhrase };
  return { isClosed: doing === 'close' };
}

/** What the server calls a field, as it was typed. */
function typedField(field: string | null): string | null {
  const typed: Readonly<{ [field: string]: string }> = {
    '/agent/name': '--name',
    '/signIn': '--sign-in',
    '/roles': '--role',
    '/isClosed': 'close',
  };
  return field === null ? null : (typed[field] ?? field);
}

function lineOf(one: AccountRow, { words }: Context): string {
  const roles = one.roles.map((role) => words.title('accountRole', role)).join(', ');
  const closed = one.closedAt === null ? '' : ` (${words.sentence('commandLine.closed')})`;
  return `${one.signIn}  ${one.agent.name}  ${roles}${closed}`;
}

async function ask(socket: string, method: string, path: string, body?: object) {
  const bytes = async function* () {
    yield new TextEncoder().encode(JSON.stringify(body));
  };
  const answer = await controlRequest(
    socket,
    method,
    path,
    body === undefined ? undefined : { type: 'application/json', bytes: bytes() },
  );
  return { status: answer.statusCode ?? 0, json: JSON.parse(await textOf(answer)) as unknown };
}
