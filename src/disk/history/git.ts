import { execFile } from 'node:child_process';
import process from 'node:process';
import { once } from '../../base/units/index.js';

/** What git said, or why it could not be asked. */
type GitAnswer = { readonly ok: true; readonly out: Buffer } | { readonly ok: false; readonly why: string };

interface GitOptions {
  /** Written to its input. */
  readonly input?: string;
  /** Exit code 1 means that things differ, as `diff` has it, and is no failure. */
  readonly differs?: boolean;
}

/** Bytes of an answer: many times what a house's records have. */
const longestAnswer = 1024 ** 3;

/** Runs git in a folder, without a shell, without asking for anything. Paths come as git stores them, in bytes. */
export function git(dir: string, args: readonly string[], options: GitOptions = {}): Promise<GitAnswer> {
  const { input = '', differs = false } = options;
  const env = { ...process.env, GIT_OPTIONAL_LOCKS: '0', GIT_TERMINAL_PROMPT: '0', LC_ALL: 'C' };
  return new Promise((answer) => {
    const child = execFile(
      'git',
      ['-C', dir, '-c', 'core.quotePath=false', ...args],
      { encoding: 'buffer', maxBuffer: longestAnswer, env },
      (error, out, said) => {
        if (!error || (differs && error.code === 1)) answer({ ok: true, out });
        else if (error.code === 'ENOENT') answer({ ok: false, why: 'the git program is not installed' });
        else answer({ ok: false, why: firstLine(said.toString('utf8')) });
      },
    );
    // A git that stops before it has read everything says why itself.
    child.stdin?.on('error', () => undefined);
    child.stdin?.end(input);
  });
}

/** The version of git, or why there is none. */
export const gitVersion = once(async (): Promise<string> => {
  const answer = await git('.', ['--version']);
  return answer.ok ? answer.out.toString('utf8') : answer.why;
});

function firstLine(text: string): string {
  return text.split('\n')[0]?.replace(/^(fatal|error): /, '') ?? '';
}
