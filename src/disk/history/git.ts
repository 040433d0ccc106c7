import { execa } from 'execa';

/** What git said, or why it could not be asked. */
type GitAnswer = { readonly ok: true; readonly out: Buffer } | { readonly ok: false; readonly why: string };

interface GitOptions {
  /** Written to its input. */
  readonly input?: string;
  /** Exit code 1 means that things differ, as `diff` has it, and is no failure. */
  readonly differs?: boolean;
}

/** Runs git in a folder, without a shell, without asking for anything. Paths come as git stores them, in bytes. */
export async function git(dir: string, args: readonly string[], options: GitOptions = {}): Promise<GitAnswer> {
  const { input, differs = false } = options;
  const result = await execa('git', ['-C', dir, '-c', 'core.quotePath=false', ...args], {
    encoding: 'buffer',
    reject: false,
    stripFinalNewline: false,
    env: { GIT_OPTIONAL_LOCKS: '0', GIT_TERMINAL_PROMPT: '0', LC_ALL: 'C' },
    ...(input !== undefined && { input }),
  });
  if (result.failed && result.code === 'ENOENT') return { ok: false, why: 'the git program is not installed' };
  if (result.exitCode !== 0 && !(differs && result.exitCode === 1))
    return { ok: false, why: firstLine(Buffer.from(result.stderr).toString('utf8')) };
  return { ok: true, out: Buffer.from(result.stdout) };
}

function firstLine(text: string): string {
  return text.split('\n')[0]?.replace(/^(fatal|error): /, '') ?? '';
}
