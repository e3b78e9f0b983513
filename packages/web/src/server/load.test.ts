import type { Answer } from '@evenfall/api';
import {
  ambulatoryRules,
  DEFAULT_COUNT_RULES,
  DEFAULT_ROUND_RULES,
  DEFAULT_RUN_RULES,
  equipmentRules,
  homeRules,
  listPresets,
  overrideFields,
  presetProtocol,
  protocolVersion,
} from '@evenfall/clinical';
import { expect, test } from 'vitest';
import { createStore } from '../store/store.js';
import { afterAsking, loadAbout, loadPeople, loadRecord, loadRules } from './load.js';
import type { Server } from './server.js';

const here = { is: 'here', value: 1 } as const;

test('what was here stays here while the server is silent, and says so', () => {
  expect(afterAsking(here, { ok: true, status: 200, value: 2 })).toEqual({ is: 'here', value: 2 });
  const refused = (status: number, offline: boolean) =>
    afterAsking(here, { ok: false, status, offline, problem: null });
  expect(refused(0, true)).toEqual({ is: 'unreachable', value: 1 });
  expect(refused(404, false)).toEqual({ is: 'missing', value: 1 });
  expect(refused(422, false)).toEqual({ is: 'missing', value: 1 });
  expect(refused(500, false)).toEqual({ is: 'failed', value: 1 });
});

test('what the server could not read is counted, and no word of it where it read everything', () => {
  const answer = { ok: true, status: 200, value: 2 } as const;
  expect(afterAsking(here, answer, 3)).toEqual({ is: 'here', value: 2, unreadable: 3 });
  expect(afterAsking(here, answer, 0)).toEqual({ is: 'here', value: 2 });
  expect(afterAsking(here, { ok: false, status: 500, offline: false, problem: null }, 3)).toEqual({
    is: 'failed',
    value: 1,
  });
});

test('the list of people and a chart say how many entries are left out', async () => {
  const store = createStore(null, () => 'device');
  const server = serverWith({ listPersons: { persons: [], unreadable: 2 }, readPerson: { unreadable: 1 } });
  await loadPeople({ store, server });
  await loadRecord({ store, server }, 'somebody');
  const { people, records } = store.get().known;
  expect(people).toEqual({ is: 'here', value: [], unreadable: 2 });
  expect(Object.values(records)).toMatchObject([{ is: 'here', unreadable: 1 }]);
});

/** A server with these answers, by the name of the route. */
function serverWith(answers: Record<string, unknown>): Server {
  const call = async (name: string): Promise<Answer<unknown>> =>
    name in answers
      ? { ok: true, status: 200, value: answers[name] }
      : { ok: false, status: 0, offline: true, problem: null };
  return { call } as unknown as Server;
}

test('a place that chose no protocol counts by the conventions', async () => {
  const store = createStore(null, () => 'device');
  await loadAbout({ store, server: serverWith({ about: { protocolVersion: null } }) });
  expect(store.get().known.inForce.value).toEqual({
    presets: {},
    presetVersion: null,
    countRules: DEFAULT_COUNT_RULES,
    runRules: DEFAULT_RUN_RULES,
    roundRules: DEFAULT_ROUND_RULES,
    homeRules: homeRules(null),
    ambulatoryRules: ambulatoryRules(null),
    equipmentRules: equipmentRules(null),
    equipmentSection: undefined,
  });
});

test('the rules in force are never taken from anywhere but the protocol in force', async () => {
  const store = createStore(null, () => 'device');
  await loadAbout({ store, server: serverWith({ about: { protocolVersion: 'abc' } }) });
  expect(store.get().known.inForce).toEqual({ is: 'unreachable', value: null });
  const others = serverWith({ about: { protocolVersion: 'abc' }, listProtocols: { protocols: [] } });
  await loadAbout({ store, server: others });
  expect(store.get().known.inForce).toEqual({ is: 'missing', value: null });
});

test('a local rule is the one that is counted by, under the version that the server names', async () => {
  const id = listPresets()[0]?.id ?? '';
  const preset = presetProtocol({ count: id });
  if (!preset.ok) throw new Error(`no preset ${id}`);
  const local = overrideFields(preset.value, [{ section: 'count', key: 'pulseWindowSeconds', value: 60 }]);
  if (!local.ok) throw new Error(JSON.stringify(local.refusals));
  const version = protocolVersion(local.value);
  const store = createStore(null, () => 'device');
  const protocols = [{ version, content: JSON.parse(JSON.stringify(local.value)), recordedAt: '' }];
  await loadAbout({
    store,
    server: serverWith({ about: { protocolVersion: version }, listProtocols: { protocols } }),
  });
  expect(store.get().known.inForce.value).toMatchObject({
    presets: { count: id },
    presetVersion: version,
    countRules: { pulseWindowSeconds: 60, breathsWindowSeconds: 60 },
  });
});

test('a chart is judged by the protocols that its rounds name; one that cannot be read is not at hand', async () => {
  const chosen = presetProtocol({ category: 'esc-2024' });
  if (!chosen.ok) throw new Error('esc-2024');
  const version = protocolVersion(chosen.value);
  const protocols = [
    { version, content: chosen.value },
    { version: 'newer', content: { schema: 99 } },
  ];
  const store = createStore(null, () => 'device');
  await loadRules({ store, server: serverWith({ listProtocols: { protocols } }) });
  const { value } = store.get().known.rules;
  expect(Object.keys(value ?? {})).toEqual([version]);
  expect(value?.[version]?.roundRules.category.adultScheme).toBe('esc-2024');
});
