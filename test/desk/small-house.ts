import { cp, mkdtemp, readFile, realpath, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { afterAll, beforeAll } from 'vitest';
import { openDesk, type OpenDesk } from '../../src/cli/desk.js';
import { run } from '../../src/cli/main.js';
import { plainConsole } from '../../src/cli/plain-console.js';
import { makeConsole } from '../cli/make-console.js';
import { visit, type Visitor } from './visit.js';

/** A copy of the small house in a folder of its own. */
export async function smallHouse(): Promise<string> {
  const dir = await realpath(await mkdtemp(join(tmpdir(), 'bookmatch-desk-')));
  await cp(join(import.meta.dirname, '../cases/small-house'), dir, { recursive: true });
  return dir;
}

type VisitedDesk = Pick<Visitor, 'ask' | 'formOf' | 'send'> & {
  readonly dir: string;
  readonly desk: OpenDesk;
  readonly own: Visitor;
  /** Of a record; of the study where none is named. */
  readonly textOf: (path?: string) => Promise<string>;
};

export const study = 'content/rooms/study.md';

/** A desk at the small house that somebody opened, for all tests of a file. */
export function visitedDesk(): VisitedDesk {
  let dir = '';
  let desk: OpenDesk;
  let own: Visitor;
  beforeAll(async () => {
    dir = await smallHouse();
    desk = await quietDesk(dir);
    own = await visit(desk.address);
  });
  afterAll(async () => {
    await desk.close();
    await rm(dir, { recursive: true, force: true });
  });
  return {
    get dir() {
      return dir;
    },
    get desk() {
      return desk;
    },
    get own() {
      return own;
    },
    ask: (...asked) => own.ask(...asked),
    formOf: (...asked) => own.formOf(...asked),
    send: (...asked) => own.send(...asked),
    textOf: (path = study) => readFile(join(dir, path), 'utf8'),
  };
}

/** A desk on 20 April 2026 that says nothing; at a port that is free, but for one that is named, or the last one of the house. */
export function quietDesk(dir: string, port: number | 'last' = 0): Promise<OpenDesk> {
  const console = plainConsole(makeConsole({ out: () => undefined, error: () => undefined }));
  const at = { dir, today: () => '2026-04-20', ...(port !== 'last' && { port }) };
  return openDesk(at, run, { ...console, tell: () => undefined });
}
