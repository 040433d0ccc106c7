import { execFileSync } from 'node:child_process';
import { cpSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { run } from '../../src/cli/main.js';
import { KeptFolder } from './kept-folder.js';
import { makeConsole } from './make-console.js';

const small = join(import.meta.dirname, '..', 'cases', 'small-house');

/** The small house as it is after its first commit: git is asked once, and each house is a copy. */
let asBegun: KeptFolder | undefined;

/** The small house in a git folder of its own, with commands run on it. */
export class HouseUnderGit {
  readonly dir = mkdtempSync(join(tmpdir(), 'bookmatch-house-'));

  constructor(from = asBegun) {
    if (from) {
      from.writeTo(this.dir);
      return;
    }
    cpSync(small, this.dir, { recursive: true });
    this.git('init', '-q', '--initial-branch=main', '--template=');
    this.git('config', 'user.name', 'Builder');
    this.git('config', 'user.email', 'builder@example.invalid');
    this.commit('Records as of the contract');
    asBegun = new KeptFolder(this.dir);
  }

  /** Takes steps in a house once; answers a maker of houses that stand as that one did after them. */
  static after(steps: (house: HouseUnderGit) => Promise<unknown>): () => Promise<HouseUnderGit> {
    let made: Promise<KeptFolder> | undefined;
    const make = async (): Promise<KeptFolder> => {
      const house = new HouseUnderGit();
      await steps(house);
      const kept = new KeptFolder(house.dir);
      house.remove();
      return kept;
    };
    return async () => new HouseUnderGit(await (made ??= make()));
  }

  git(...args: string[]): string {
    return execFileSync('git', ['-C', this.dir, ...args], { encoding: 'utf8', stdio: ['ignore', 'pipe', 'pipe'] });
  }

  commit(message: string): string {
    this.git('add', '-A');
    this.git('commit', '-qm', message);
    return this.git('rev-parse', 'HEAD').trim();
  }

  read(path: string): string {
    return readFileSync(join(this.dir, path), 'utf8');
  }

  /** Writes a new record. */
  write(path: string, text: string): void {
    writeFileSync(join(this.dir, path), text);
  }

  /** Replaces a text that must be there. */
  edit(path: string, from: string, to: string): void {
    const text = this.read(path);
    if (!text.includes(from)) throw new Error(`${path} has no text: ${from}`);
    writeFileSync(
      join(this.dir, path),
      text.replace(from, () => to),
    );
  }

  /** Runs a command line on this house; words in double quotes stay together. `input` is what a pipe hands it. */
  async run(
    line: string,
    on = '2026-04-20',
    input = '',
  ): Promise<{ readonly code: number; readonly out: string; readonly error: string }> {
    const printed = { out: '', error: '' };
    const code = await run(
      [...(line.match(/"[^"]*"|\S+/g) ?? []).map((word) => word.replaceAll('"', '')), '--house', this.dir, '--on', on],
      makeConsole({
        out: (text) => void (printed.out += text),
        error: (text) => void (printed.error += text),
        today: () => on,
        input: () => Promise.resolve(Buffer.from(input)),
      }),
    );
    const plain = (text: string): string => text.replaceAll(this.dir, 'HOUSE');
    return { code, out: plain(printed.out), error: plain(printed.error) };
  }

  remove(): void {
    rmSync(this.dir, { recursive: true });
  }
}
