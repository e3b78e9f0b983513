import type { Parsed } from '@evenfall/clinical';
import type { AccountRole } from '@evenfall/record';
import { type Answer, refused } from '../answer.js';
import type { Context } from '../command.js';
import { type Record, withKeeper } from '../keeper/withKeeper.js';
import { problemText } from '../output/problems.js';
import { write } from '../output/stream.js';
import { actOnAccounts } from './account.js';
import { newPassPhrase } from './newPassPhrase.js';

/** What the first one may do: whoever sets a clinic up runs it and works in it. Source: decision. */
const ROLES: readonly AccountRole[] = ['owner', 'clinician', 'supervisor'];
/** How often it is asked again after what was given was refused. Source: decision. */
const TRIES = 3;

/**
 * Asks whoever sits at the terminal for the first owner's account of a record, and makes it. The pass phrase is never shown
 * and never an argument. Whether there is one now: not where a line was left empty, it was interrupted, or it was refused
 * to the last.
 */
export async function firstOwner(record: Record, context: Context): Promise<boolean> {
  const { askLine, interrupted, words, stderr } = context;
  if (askLine === null) return false;
  await write(stderr, `${words.sentence('commandLine.firstOwner')}\n`);
  for (let tried = 0; tried < TRIES; tried++) {
    const name = (await askLine(words.sentence('commandLine.firstOwnerName'))).trim();
    if (name === '' || interrupted.aborted) return false;
    const signIn = (await askLine(words.sentence('commandLine.firstOwnerSignIn'))).trim();
    if (signIn === '' || interrupted.aborted) return false;
    // Asked for before the keeper starts, which takes seconds: what is typed meanwhile would stand on the screen.
    const phrase = await newPassPhrase(context);
    if (interrupted.aborted) return false;
    if (phrase.ok) await write(stderr, `${words.sentence('commandLine.firstOwnerMade')}\n`);
    const answer = phrase.ok
      ? await withKeeper(record, context, (socket) => made(socket, { name, signIn }, phrase, context), {
          makes: true,
        })
      : refused(phrase.refusals.map((one) => words.problem(one)));
    if (interrupted.aborted) return false;
    if (answer.kind === 'one') {
      await write(stderr, answer.lines.map((line) => `${line}\n`).join(''));
      return true;
    }
    if (answer.kind !== 'refused') return false;
    await write(stderr, problemText(answer.problems, false, words));
  }
  return false;
}

function made(
  socket: string,
  { name, signIn }: { readonly name: string; readonly signIn: string },
  phrase: Parsed<string>,
  context: Context,
): Promise<Answer> {
  return actOnAccounts(socket, { doing: 'add', name, signIn, roles: ROLES }, context, async () => phrase);
}
