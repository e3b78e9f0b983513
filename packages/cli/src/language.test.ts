import { describe, expect, test } from 'vitest';
import { typedArgs } from '../testing/typed.js';

const COUNT = ['count', '--n', '19', '--window', '15'];
const SPANISH = { EVENFALL_LANGUAGE: 'es' };

describe('the language of what is said', () => {
  test.each([
    ['an option after the command', [...COUNT, '--language', 'es'], {}],
    ['an option before it', ['--language', 'es', ...COUNT], {}],
    ['an option with =', [...COUNT, '--language=es'], {}],
    ['the variable', COUNT, SPANISH],
    ['an option over the variable', [...COUNT, '--language', 'es'], { EVENFALL_LANGUAGE: 'en' }],
  ])('Spanish by %s', async (_how, args, env) => {
    const { code, stdout } = await typedArgs(args, { env });
    expect(code).toBe(0);
    expect(stdout).toMatch(/de 19 latidos en 15 s/);
  });

  test('English by nothing, by the option over the variable', async () => {
    const said = async (args: string[], env: Record<string, string>) =>
      (await typedArgs(args, { env })).stdout;
    expect(await said(COUNT, {})).toMatch(/from 19 beats in 15 s/);
    expect(await said([...COUNT, '--language', 'en'], SPANISH)).toMatch(/from 19 beats in 15 s/);
  });

  test('numbers for programs are the same in every language', async () => {
    const args = ['count', '--n', '19', '--window', '14', '--json'];
    const [english, spanish] = [await typedArgs(args), await typedArgs(args, { env: SPANISH })];
    const withoutDetails = (text: string) => text.replace(/"detail":"[^"]*"/g, '');
    expect(withoutDetails(spanish.stdout)).toBe(withoutDetails(english.stdout));
    expect(spanish.stdout).not.toBe(english.stdout);
  });

  test.each([
    [[...COUNT, '--language', 'fr'], {}, '--language'],
    [[...COUNT, '--language'], {}, '--language'],
    [COUNT, { EVENFALL_LANGUAGE: 'fr' }, 'EVENFALL_LANGUAGE'],
  ])('one that there is not is refused: %j %o', async (args, env, field) => {
    const { code, stdout, stderr } = await typedArgs(args, { env });
    expect([code, stdout]).toEqual([2, '']);
    expect(stderr).toMatch(new RegExp(`^${field}: expected `));
  });
});
