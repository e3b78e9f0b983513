import { resolve } from 'node:path';
import type { LanSettings } from '@evenfall/api';
import { type Parsed, refusal } from '@evenfall/clinical';
import { refused } from '../answer.js';
import { command, NO_OPERANDS } from '../command.js';
import { startServer } from '../keeper/serverProcess.js';
import { RECORD_OPTIONS, type Record, recordOf } from '../keeper/withKeeper.js';
import type { Given } from '../options/option.js';
import { jsonLine } from '../output/json.js';
import { lanLines } from '../output/lanLines.js';
import { write } from '../output/stream.js';
import { unlessInterrupted } from '../unlessInterrupted.js';
import { firstOwner } from './firstOwner.js';

/** Where Evenfall listens unless told otherwise; the demo has its own, so that both can run. Source: decision. */
const PORTS = { clinic: 4780, demo: 4781 } as const;
const HIGHEST_PORT = 65_535;

type Asked = Record & {
  readonly port: number;
  readonly lan: LanSettings | null;
  readonly log: boolean;
  readonly json: boolean;
};

/** `evenfall serve`: starts the server and stays until it is interrupted. */
export const serve = command<Asked>({
  name: 'serve',
  summary: 'commands.serve',
  options: [
    { name: 'port', kind: 'value', means: 'options.port', hint: 'NUMBER' },
    { name: 'lan', kind: 'switch', means: 'options.lan' },
    { name: 'host', kind: 'value', means: 'options.host', hint: 'ADDRESS' },
    { name: 'certificate', kind: 'value', means: 'options.certificate', hint: 'FILE' },
    { name: 'key', kind: 'value', means: 'options.key', hint: 'FILE' },
    ...RECORD_OPTIONS,
    { name: 'log', kind: 'switch', means: 'options.log' },
  ],
  operands: NO_OPERANDS,
  endsItself: true,

  parse(given) {
    const record = recordOf(given);
    const port = portOf(given.text('port'), record.purpose);
    if (!port.ok) return port;
    const lan = lanOf(given);
    if (!lan.ok) return lan;
    return {
      ok: true,
      value: {
        ...record,
        port: port.value,
        lan: lan.value,
        log: given.isOn('log'),
        json: given.isOn('json'),
      },
    };
  },

  async run({ json, ...asked }, context) {
    const { words, interrupted, stdout } = context;
    if (context.pages === null) {
      const missing = {
        code: 'pages-missing',
        field: null,
        expected: null,
        got: null,
        figures: {},
        names: {},
      };
      return refused([words.refusedStart(missing)]);
    }
    const { pages } = context;
    const start = () => startServer(context.serverMain, { mode: 'serve', ...asked, pages }, context.env);
    let server = await start();
    // Nobody is asked where only a program reads the answer.
    if (server.told.event === 'refused' && server.told.code === 'lan-owner-needed' && !json) {
      await server.ended;
      if (await unlessInterrupted(firstOwner(asked, context), interrupted)) server = await start();
      if (interrupted.aborted) return { kind: 'done' };
    }
    const { told } = server;
    if (told.event === 'kept-by') {
      const names = told.address === null ? {} : { address: told.address };
      const held = {
        code: 'folder-in-use',
        field: '--data',
        expected: null,
        got: null,
        figures: { pid: told.pid },
        names,
      };
      return refused([words.refusedStart(held)]);
    }
    if (told.event === 'refused') return refused([words.refusedStart(told)]);
    const { address, folder, database, site, lan = null } = told;
    if (json) await write(stdout, jsonLine({ address, lan, folder, database, site }));
    else {
      const where = folder ?? words.sentence('commandLine.sharedRecord');
      const lines = [
        `${words.sentence('commandLine.servedAt')} ${address}`,
        ...(lan === null ? [] : lanLines(lan, words)),
        ...(site.invented ? [words.sentence('commandLine.inventedClinic')] : []),
        `(${words.sentence('commandLine.record')}: ${where}. ${words.sentence('commandLine.howToStop')})`,
      ];
      await write(stdout, `${lines.join('\n')}\n`);
    }
    const stop = () => void server.stop();
    if (interrupted.aborted) stop();
    interrupted.addEventListener('abort', stop, { once: true });
    const code = await server.ended;
    if (code !== 0 && !interrupted.aborted) throw new Error(`the server ended with ${code}`);
    return { kind: 'done' };
  },
});

/** How the server is to listen in the network; null for this machine alone. What only goes with `--lan` asks for it. */
function lanOf(given: Given): Parsed<LanSettings | null> {
  const [host, certificate, key] = [given.text('host'), given.text('certificate'), given.text('key')];
  if (!given.isOn('lan')) {
    const without =
      host === null ? (certificate === null ? (key === null ? null : 'key') : 'certificate') : 'host';
    if (without === null) return { ok: true, value: null };
    return { ok: false, refusals: [refusal(`/${without}`, 'contradicts', 'with-lan', null)] };
  }
  if ((certificate === null) !== (key === null)) {
    const missing = certificate === null ? 'certificate' : 'key';
    return { ok: false, refusals: [refusal(`/${missing}`, 'missing', 'certificate-with-key', null)] };
  }
  const files =
    certificate === null || key === null ? null : { certificate: resolve(certificate), key: resolve(key) };
  return { ok: true, value: { host, given: files } };
}

function portOf(typed: string | null, purpose: Asked['purpose']): Parsed<number> {
  if (typed === null) return { ok: true, value: PORTS[purpose] };
  const figures = { minimum: 0, maximum: HIGHEST_PORT };
  const port = /^\d+$/.test(typed) ? Number(typed) : Number.NaN;
  if (port <= HIGHEST_PORT) return { ok: true, value: port };
  const code = Number.isNaN(port) ? 'not-whole' : 'out-of-range';
  return { ok: false, refusals: [refusal('/port', code, 'port-number', typed, { figures })] };
}
