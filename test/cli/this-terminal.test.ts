import { describe, expect, test } from 'vitest';
import { run } from '../../src/cli/main.js';
import { bytesOf, isColored, progressLine } from '../../src/cli/this-terminal.js';
import { makeConsole } from './make-console.js';
import { HouseUnderGit } from './house-under-git.js';

/** What a terminal of so many columns shows after all that was written to it. */
function screen(columns: number) {
  let written = '';
  const stream = { isTTY: true, columns, write: (text: string) => void (written += text) };
  const shown = (): string => written.replace(/[^\n]*\r\u001B\[K/gu, '');
  return { stream, shown };
}

describe('what a pipe hands over', () => {
  const pipe = async function* (): AsyncGenerator<string> {
    yield* ['slip1:', 'AAAA', 'BBBB.'];
    await Promise.resolve();
  };

  test('is read to its end', async () => {
    expect(Buffer.from(await bytesOf(pipe(), 100)).toString()).toBe('slip1:AAAABBBB.');
  });

  test('is read no further than one byte past what may be', async () => {
    expect(Buffer.from(await bytesOf(pipe(), 8)).toString()).toBe('slip1:AAA');
  });
});

describe('progress', () => {
  test('one line says what is being done, and is gone when all is said', () => {
    const { stream, shown } = screen(80);
    const line = progressLine(stream);
    line.show('reading the records');
    expect(shown()).toBe('reading the records …');
    line.show('printing the book');
    expect(shown()).toBe('printing the book …');
    line.clear();
    line.clear();
    expect(shown()).toBe('');
  });

  test('a narrow terminal cuts it off rather than wrap it', () => {
    const { stream, shown } = screen(12);
    progressLine(stream).show('reading the records');
    expect(shown()).toBe('reading the');
  });

  test('nothing is written into a pipe or a file', () => {
    const write = (text: string): never => expect.unreachable(`wrote ${text}`);
    const line = progressLine({ write });
    line.show('reading the records');
    line.clear();
  });

  test('is of each handout that is printed', async () => {
    const doing: string[] = [];
    const house = new HouseUnderGit();
    const silent = (): undefined => undefined;
    const console = makeConsole({ out: silent, error: silent, doing: (what) => void doing.push(what) });
    await run(['handout', 'carpentry', '--house', house.dir], console);
    house.remove();
    expect(doing).toEqual([
      'reading the records',
      'making the pages of the handout: Carpentry',
      'printing the handout: Carpentry',
    ]);
  });
});

describe('color', () => {
  const write = (): undefined => undefined;
  test.each([
    ['a terminal', { isTTY: true, write }, {}, true],
    ['a terminal, with NO_COLOR', { isTTY: true, write }, { NO_COLOR: '1' }, false],
    ['a terminal, with an empty NO_COLOR', { isTTY: true, write }, { NO_COLOR: '' }, true],
    ['a pipe', { write }, {}, false],
  ])('on %s', (_, stream, environment, expected) => {
    expect(isColored(stream, environment)).toBe(expected);
  });
});
