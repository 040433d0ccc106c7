import { programPath } from './folder.js';

/** A file of the program that is run by itself, and what Node needs to run it. */
export interface OwnProcess {
  readonly file: string;
  readonly execArgv: readonly string[];
}

/** By its source, from the program's folder, such as `src/print/press-process.ts`: a built program has it as `dist/press-process.js`. */
export function ownProcess(source: string): OwnProcess {
  const name = source.replace(/^.*\/|\.ts$/gu, '');
  return typeof builtFrom === 'string'
    ? { file: programPath(`dist/${name}.js`), execArgv: [] }
    : { file: programPath(source), execArgv: ['--import', 'tsx'] };
}
