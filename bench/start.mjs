// Start-up: from the command to the first answered page, against the database alone (the part that is not ours).
import { spawn } from 'node:child_process';
import { performance } from 'node:perf_hooks';
import { freshFolder, startServer } from '../packages/server/prove/serverUnderTest.mjs';
import { openEmbeddedIn } from './embedded.mjs';
import { median, repeated } from './measure.mjs';

const RUNS = 7;
const { folder, remove } = freshFolder();
(await startServer(folder)).child.stdin.end(); // the first start makes the cluster and is not counted
await new Promise((resolve) => setTimeout(resolve, 1500));

const whole = [];
const database = [];
await repeated(RUNS, async () => {
  let began = performance.now();
  const server = await startServer(folder);
  const answer = await fetch(`${server.address}/api/about`);
  if (answer.status !== 200) throw new Error(`answered ${answer.status}`);
  whole.push(performance.now() - began);
  await server.stop();

  began = performance.now();
  const open = await openEmbeddedIn(folder);
  await open.pool.query('select 1');
  database.push(performance.now() - began);
  await open.close();
});
remove();

const bare = await nodeAlone();
console.log(`start to first answer: median ${median(whole).toFixed(0)} ms`);
console.log(
  `  the embedded PostgreSQL alone, in a running process: ${median(database).toFixed(0)} ms (ratio ${(median(whole) / median(database)).toFixed(2)})`,
);
console.log(`  an empty Node process: ${bare.toFixed(0)} ms`);
console.log(`  aim: a second start under 2000 ms; measured ${(median(whole) / 2000).toFixed(2)} of it`);

async function nodeAlone() {
  const times = [];
  await repeated(RUNS, async () => {
    const began = performance.now();
    await new Promise((resolve) => spawn(process.execPath, ['-e', '0']).once('close', resolve));
    times.push(performance.now() - began);
  });
  return median(times);
}
