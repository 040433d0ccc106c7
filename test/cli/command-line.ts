import { run } from '../../src/cli/main.js';
import { makeConsole } from './make-console.js';

export interface Ran {
  readonly code: number;
  /** What both streams were given, in order. */
  readonly said: string;
  /** What the stream of answers alone was given. */
  readonly out: string;
  /** Questions that were asked. */
  readonly asked: readonly string[];
}

export interface Surroundings {
  readonly now?: Date;
  readonly environment?: Readonly<Record<string, string>>;
  /** What a person types when asked; absent: nobody is there. */
  readonly typed?: string;
}

/** Runs a command line of `bookmatch` in surroundings that the test chooses. */
export async function bookmatch(words: readonly string[], around: Surroundings = {}): Promise<Ran> {
  const { now = new Date('2026-05-01T10:00:00Z'), environment = {}, typed } = around;
  let [said, out] = ['', ''];
  const asked: string[] = [];
  const write = (text: string): void => void (said += text);
  const console = makeConsole({
    out: (text) => {
      out += text;
      write(text);
    },
    error: write,
    now: () => now,
    environment: (name) => environment[name],
    askSecret: (question) => {
      asked.push(question);
      return Promise.resolve(typed);
    },
  });
  const code = await run(words, console);
  return { code, said, out, asked };
}
