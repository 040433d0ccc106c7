import { mkdtemp, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import process from 'node:process';
import { execa } from 'execa';
import { beforeAll, describe, expect, it } from 'vitest';
import { programPath } from '../../src/disk/program/index.js';
import { makeBookPdf, openPress } from '../../src/print/index.js';
import { makeFixture } from './fixture.js';

describe('A press', () => {
  const book = makeFixture();
  let here: Uint8Array;
  beforeAll(async () => {
    here = (await makeBookPdf(book)).pdf;
  });

  it('makes the same bytes in another process, one job after the other', async () => {
    const press = openPress();
    const made = await Promise.all([makeBookPdf(book, undefined, press), makeBookPdf(book, undefined, press)]);
    for (const { pdf } of made) expect(Buffer.compare(pdf, here)).toBe(0);
  });

  it('tells a fault of the templates as it is told here', async () => {
    await expect(openPress()({ kind: 'book', sheets: '{}' })).rejects.toThrow('page layout failed');
  });

  it.each([
    ['ends in the midst', `process.on('message', () => process.exit(1));`],
    ['ends before it is asked', 'process.exit(1);'],
    ['does not run', 'import "no-such-package";'],
  ])('whose process %s leaves nothing undone', async (_, code) => {
    const file = join(await mkdtemp(join(tmpdir(), 'bookmatch-press-')), 'press.mjs');
    await writeFile(file, code);
    const press = openPress({ file, execArgv: [] });
    const made = await Promise.all([makeBookPdf(book, undefined, press), makeBookPdf(book, undefined, press)]);
    for (const { pdf } of made) expect(Buffer.compare(pdf, here)).toBe(0);
  });

  it('is not waited for once it has nothing to do', async () => {
    const dir = await mkdtemp(join(tmpdir(), 'bookmatch-press-'));
    const pidFile = join(dir, 'pid');
    const file = join(dir, 'press.mjs');
    await writeFile(
      file,
      `import { writeFileSync } from 'node:fs';
       writeFileSync(${JSON.stringify(pidFile)}, String(process.pid));
       process.on('message', ({ number }) => process.send({ number, pdf: new Uint8Array([1]) }));
       process.on('disconnect', () => process.exit());`,
    );
    const asked = join(dir, 'asked.ts');
    const from = JSON.stringify(join(import.meta.dirname, '../../src/print/press.ts'));
    await writeFile(
      asked,
      `import { openPress } from ${from};
       openPress({ file: ${JSON.stringify(file)}, execArgv: [] })({ kind: 'book', sheets: '{}' }).then((pdf) => console.log(pdf.length));`,
    );
    const { stdout } = await execa('node', ['--import', 'tsx', asked], { cwd: programPath('.') });
    expect(stdout).toBe('1');
    const pid = Number(await readFile(pidFile, 'utf8'));
    await expect.poll(() => isRunning(pid), { timeout: 15_000 }).toBe(false);
  });
});

function isRunning(pid: number): boolean {
  try {
    process.kill(pid, 0);
    return true;
  } catch {
    return false;
  }
}
