/** What PostgreSQL's programs may see of this program's environment: nothing that steers or identifies. */
const PASSED_ON = ['PATH', 'LD_LIBRARY_PATH', 'DYLD_LIBRARY_PATH', 'SystemRoot', 'TEMP', 'TMP', 'TMPDIR'];

/** A plain environment: no `PG*` variable changes the server, no secret of ours can be read from its process. */
export function childEnvironment(env: NodeJS.ProcessEnv = process.env): NodeJS.ProcessEnv {
  const passed = PASSED_ON.map((name) => [name, env[name]]).filter(([, value]) => value !== undefined);
  return { ...Object.fromEntries(passed), LC_ALL: 'C', TZ: 'UTC' };
}
