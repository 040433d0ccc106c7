import type { Asker } from '../../src/cli/asker.js';

/** Somebody at the terminal who types these lines one after another; what cannot be taken is typed over, as a person does. `typed` counts. */
export function someone(lines: readonly string[]): { readonly asker: Asker; readonly asked: string[] } {
  const asked: string[] = [];
  const left = [...lines];
  const next = (asks: string): string => {
    asked.push(asks);
    const line = left.shift();
    if (line === undefined) throw new Error(`nothing is left to type at: ${asks}`);
    return line;
  };
  return {
    asked,
    asker: {
      text: ({ asks, usual, read }) => {
        for (;;) {
          const line = next(asks);
          const meant = line === '' && usual !== undefined ? usual : line;
          if (read(meant).ok) return Promise.resolve(meant);
        }
      },
      choice: (asks, choices, usual) => {
        const line = next(asks);
        const found = choices.find(({ value, label }) => value === line || label.startsWith(line));
        return Promise.resolve(line === '' ? (usual ?? '') : (found?.value ?? ''));
      },
    },
  };
}
