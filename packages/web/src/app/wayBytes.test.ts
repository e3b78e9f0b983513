import { fileURLToPath } from 'node:url';
import { gzipSync } from 'node:zlib';
import { build, type Rolldown } from 'vite';
import { afterEach, expect, test, vi } from 'vitest';

/** Gzipped JavaScript in the way of a touch, bytes. Source: aim of this project, held by `bench/bedside.mjs` as it is served. */
const AIM_BYTES = 150_000;
const PATIENCE_MS = 180_000;

const root = fileURLToPath(new URL('../..', import.meta.url));

afterEach(() => {
  vi.unstubAllEnvs();
});

test('the way of three touches, and that into a guided round, stay small', {
  timeout: PATIENCE_MS,
}, async () => {
  // As it is served: a build within tests would be one for whoever develops.
  vi.stubEnv('NODE_ENV', 'production');
  const built = (await build({
    ...{ root, configFile: `${root}/vite.config.ts`, logLevel: 'error' },
    build: { write: false },
  })) as Rolldown.RolldownOutput;
  const files = new Map(
    built.output.flatMap((one) => (one.type === 'chunk' ? [[one.fileName, one] as const] : [])),
  );
  const named = (part: string) => {
    const found = [...files.keys()].filter((name) => name.startsWith(`assets/${part}-`));
    expect(found, part).toHaveLength(1);
    return found[0] as string;
  };
  /** The parts with everything that they import at once. */
  const bytesOf = (...parts: string[]) => {
    const all = new Set(parts.map(named));
    for (const name of all) for (const from of files.get(name)?.imports ?? []) all.add(from);
    return [...all].reduce((sum, name) => sum + gzipSync(files.get(name)?.code ?? '').length, 0);
  };
  expect(bytesOf('index', 'quickPages')).toBeLessThan(AIM_BYTES);
  expect(bytesOf('index', 'roundPages', 'round')).toBeLessThan(AIM_BYTES);
});
