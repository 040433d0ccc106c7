import { describe, expect, test } from 'vitest';
import { commands } from '../../src/cli/main.js';
import { bookmatch } from './command-line.js';

describe('--help', () => {
  test('lists every command with what it does', async () => {
    const { code, said } = await bookmatch(['--help']);
    expect(code).toBe(0);
    const lines = said.replace(/\s+/gu, ' ');
    for (const { name, does } of commands) expect(lines).toContain(` ${name} ${does} `);
  });

  test.each(commands)('of $name is that of its own file', async ({ name, does }) => {
    const { code, said } = await bookmatch([name, '--help']);
    expect(code).toBe(0);
    expect(said.replace(/\s+/gu, ' ')).toMatch(new RegExp(`Usage: bookmatch ${name} (?:DIR )?\\[options\\]`, 'u'));
    expect(said.replace(/\s+/gu, ' ')).toContain(does);
    expect((await bookmatch(['help', name])).said).toBe(said);
  });

  test('wrong usage says where to look', async () => {
    expect(await bookmatch(['chek'])).toMatchObject({ code: 2, said: expect.stringMatching(/Did you mean check\?/u) });
    expect(await bookmatch(['check', '--hous', 'x'])).toMatchObject({
      code: 2,
      said: expect.stringMatching(/unknown option '--hous'/u),
    });
  });
});
