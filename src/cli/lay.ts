import { Command } from 'commander';
import { join, resolve } from 'node:path';
import { svgText } from '../base/svg/index.js';
import { codesByPage, printProblems } from '../base/problem/index.js';
import { keyLevels, lookUp, type Book, type KeyLevel } from '../core/book/index.js';
import { writeAtomically } from '../disk/store/index.js';
import { drawKeyPlan, printPalette } from '../draw/index.js';
import { houseSheet } from '../table/index.js';
import { blocksText } from '../write/index.js';
import type { Console } from './console.js';
import { loadFor, reportProblems, withHouseOptions, type HouseOptions } from './house-options.js';

/** `bookmatch lay`: where the rooms' tapes place them, and what of them does not fit. */
export function lay(console: Console, done: (code: number) => void): Command {
  return withHouseOptions(new Command('lay'))
    .option('--svg <dir>', 'write one drawing a level as well')
    .action(async (options: HouseOptions & { readonly svg?: string }) => {
      const loaded = await loadFor(options, console);
      if (!loaded.book) {
        reportProblems(loaded, '', console);
        return done(1);
      }
      console.out(blocksText(houseSheet(lookUp(loaded.book)).blocks));
      const laying: readonly string[] = codesByPage.laying;
      const disagreeing = loaded.problems.filter(({ code }) => laying.includes(code));
      console.out(
        disagreeing.length === 0
          ? '\nThe tapes agree with each other.\n'
          : `\n${printProblems(disagreeing, { color: false, outcome: '' })}`,
      );
      if (options.svg !== undefined) await writeLevels(loaded.book, options.svg, console);
      done(0);
    });
}

/** One file a level: `main.svg`, of rooms apart `main-2.svg`. */
async function writeLevels(book: Book, folder: string, console: Console): Promise<void> {
  const levels = keyLevels(lookUp(book));
  for (const level of levels) {
    const name = `${fileName(level, levels)}.svg`;
    const { svg } = drawKeyPlan(level, {
      id: 'key-plan',
      palette: printPalette,
      detail: 'whole',
      box: paper,
      layers: [],
    });
    await writeAtomically(join(resolve(folder), name), `${svgText(svg)}\n`);
    console.tell(`${join(folder, name)}  ${level.name}\n`);
  }
}

/** Inches: a sheet for a wall. */
const paper = { width: 34, height: 22 };

function fileName(level: KeyLevel, levels: readonly KeyLevel[]): string {
  const before = levels.slice(0, levels.indexOf(level)).filter((other) => other.level === level.level).length;
  return before === 0 ? level.level : `${level.level}-${before + 1}`;
}
