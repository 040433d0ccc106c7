import { cpSync, mkdirSync, mkdtempSync, readFileSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { dirname, join } from 'node:path';
import process from 'node:process';
import { afterAll, describe, expect, test } from 'vitest';
import { run } from '../../src/cli/main.js';
import { makeConsole } from '../cli/make-console.js';

/** Each page in this folder is a trade example: what is changed in the small house, a command, and what it prints.
 *  `RECORD=1 npx vitest run test/cases` writes what is printed now into the pages; read the difference before keeping it. */
const here = import.meta.dirname;
const scratch = mkdtempSync(join(tmpdir(), 'bookmatch-cases-'));
afterAll(() => rmSync(scratch, { recursive: true }));

const pages = readdirSync(here).filter((name) => name.endsWith('.md'));

interface Case {
  readonly title: string;
  readonly files: readonly { readonly path: string; readonly text: string }[];
  readonly commands: readonly { readonly line: string; readonly output: string }[];
  /** The text with each command's output replaced. */
  rewrite(outputs: readonly string[]): string;
}

/** Pages are split at `## ` heads; each has blocks ```md PATH (a file; `-PATH` removes it; `PATH s/a/b/` is one edit) and
 *  ```console blocks of `$ command` and output. */
function readCase(section: string): Case {
  const title = section.split('\n')[0]?.trim() ?? '';
  const blocks = [...section.matchAll(/^```(\S+)(?: (.*))?\n([\s\S]*?)^```$/gm)];
  const files = blocks
    .filter((block) => block[1] !== 'console')
    .map((block) => ({ path: block[2] ?? '', text: block[3] ?? '' }));
  const consoles = blocks.filter((block) => block[1] === 'console');
  const commands = consoles.map((block) => {
    const [first = '', ...rest] = (block[3] ?? '').split('\n');
    return { line: first.replace(/^\$ /, ''), output: rest.join('\n') };
  });
  const rewrite = (outputs: readonly string[]): string => {
    let index = 0;
    return section.replace(
      /^```console\n(\$ .*)\n[\s\S]*?^```$/gm,
      (_, line: string) => `\`\`\`console\n${line}\n${outputs[index++] ?? ''}\`\`\``,
    );
  };
  return { title, files, commands, rewrite };
}

async function runCase({ files, commands }: Case): Promise<string[]> {
  const house = mkdtempSync(join(scratch, 'house-'));
  cpSync(join(here, 'small-house'), house, { recursive: true });
  for (const { path, text } of files) overlay(house, path, text);
  const outputs: string[] = [];
  for (const { line } of commands) {
    let printed = '';
    const console = makeConsole({
      out: (text: string) => void (printed += text),
      error: (text: string) => void (printed += text),
    });
    const [, ...words] = line.split(' ');
    const code = await run([...words, '--house', house], console);
    outputs.push(`${printed.replaceAll(house, 'HOUSE').replace(/\n*$/, '\n')}exit ${code}\n`);
  }
  return outputs;
}

function overlay(house: string, target: string, text: string): void {
  const [path = '', ...edit] = target.split(' ');
  if (path.startsWith('-')) return rmSync(join(house, path.slice(1)));
  const file = join(house, path);
  mkdirSync(dirname(file), { recursive: true });
  if (edit.length === 0) return writeFileSync(file, text);
  // An edit: lines led by - are replaced by the lines led by + that follow.
  const from = lines(text, '-');
  const to = lines(text, '+');
  const before = readFileSync(file, 'utf8');
  if (!before.includes(from)) throw new Error(`${target}: the small house has no such lines:\n${from}`);
  writeFileSync(
    file,
    before.replace(from, () => to),
  );
}

function lines(text: string, sign: string): string {
  return text
    .split('\n')
    .filter((line) => line.startsWith(sign))
    .map((line) => `${line.slice(1)}\n`)
    .join('');
}

for (const page of pages) {
  const [head = '', ...sections] = readFileSync(join(here, page), 'utf8').split(/^(?=## )/m);
  const cases = sections.map(readCase);
  describe(page, () => {
    const recorded: string[] = [];
    test.each(cases)('$title', async (each) => {
      const outputs = await runCase(each);
      recorded.push(each.rewrite(outputs));
      if (process.env['RECORD'] !== undefined) return;
      expect(each.commands.length).toBeGreaterThan(0);
      expect(outputs).toEqual(each.commands.map((command) => command.output));
    });
    afterAll(() => {
      if (process.env['RECORD'] !== undefined && recorded.length === cases.length)
        writeFileSync(join(here, page), head + recorded.join(''));
    });
  });
}
