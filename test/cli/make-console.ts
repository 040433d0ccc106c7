import type { Terminal } from '../../src/cli/console.js';

/** A console for a test: at the small house's usual day unless told, with an empty environment and nobody to ask. */
export function makeConsole(given: Pick<Terminal, 'out' | 'error'> & Partial<Terminal>): Terminal {
  const now = given.now ?? (() => new Date(`${given.today?.() ?? '2026-04-20'}T15:00:00Z`));
  return {
    doing: () => undefined,
    today: () => now().toISOString().slice(0, 10),
    environment: () => undefined,
    input: () => Promise.resolve(new Uint8Array()),
    askSecret: () => Promise.resolve(undefined),
    asker: () => undefined,
    takesCommands: true,
    color: false,
    ...given,
    now,
  };
}
