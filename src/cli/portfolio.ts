import { existsSync } from 'node:fs';
import { join, relative, resolve, sep } from 'node:path';
import { Command } from 'commander';
import { errorsIn, printableJson } from '../base/problem/index.js';
import { counted, type IsoDate } from '../base/units/index.js';
import { bookOf, openHouse } from '../disk/load/index.js';
import { houseFolders, isHouseFolder, writeTree } from '../disk/store/index.js';
import type { HouseBlock } from '../sheet/index.js';
import { houseStanding, housesTable, housesTotals, mostUrgentFirst, type ListedHouse } from '../table/index.js';
import { tableText } from '../write/index.js';
import { typed, type Console } from './console.js';
import { checkHouseDir, dayOf, withDay } from './house-options.js';
import { shellWord } from './shell-word.js';
import { UsageError } from './usage-error.js';
import { writeOrRefuse } from './write-or-refuse.js';

interface PortfolioOptions {
  readonly on?: string;
  readonly out?: string;
  readonly json?: boolean;
}

/** `bookmatch portfolio <dir>`: many houses in one table, what is most urgent first. */
export function portfolio(console: Console, done: (code: number) => void): Command {
  return withDay(new Command('portfolio'))
    .argument('<dir>', 'the folder that holds the houses, one or two levels down')
    .option('--out <dir>', 'write them as a page that opens from disk, with links to the books that are built')
    .option('--json', 'print as JSON')
    .action(async (dir: string, options: PortfolioOptions) => {
      const [root, on] = [checkHouseDir(dir), dayOf(options.on, console)];
      const folders = await housesBelow(root, dir);
      const houses: ListedHouse[] = [];
      for (const [index, folder] of folders.entries()) {
        console.doing(`reading house ${index + 1} of ${folders.length}: ${folder}`);
        houses.push(await listed(root, folder, on));
      }
      for (const { folder, errors } of houses)
        if (errors > 0) console.error(errorLine(join(dir, folder), errors, console));
      const table = housesTable(houses);
      const answer = options.json ? `${printableJson(asData(houses, on))}\n` : tableText(table);
      if (options.out === undefined) console.out(answer);
      else {
        const page = await writePage(root, table, on, options.out);
        if (options.json) console.out(answer);
        else console.tell(`${answer}\n`);
        console.tell(`${page}  ${counted(houses.length, 'house')}\n`);
      }
      done(houses.some(({ errors }) => errors > 0) ? 1 : 0);
    });
}

/** Writes the page into a folder of its own and answers its path. */
async function writePage(root: string, table: HouseBlock, on: IsoDate, dir: string): Promise<string> {
  const out = resolve(dir);
  const { housesFiles } = await import('../site/index.js');
  const files = await housesFiles(table, on, (folder) => bookLink(out, join(root, folder)));
  await writeOrRefuse(() => writeTree(out, files));
  return join(out, 'index.html');
}

async function housesBelow(root: string, dir: string): Promise<readonly string[]> {
  const folders = await houseFolders(root);
  if (folders.length > 0) return folders;
  const why = (await isHouseFolder(root)) ? `${dir} is a house itself` : `no house in ${dir}`;
  throw new UsageError(`${why}: name the folder that holds house folders, one or two levels down`);
}

/** One house by its figures: nothing else of its Book is kept, so that fifty need no more memory than one. */
async function listed(root: string, folder: string, on: IsoDate): Promise<ListedHouse> {
  const { book, problems } = await bookOf(openHouse(join(root, folder)), on, { marked: false });
  const errors = errorsIn(problems).length;
  return { folder, errors, ...(book && { standing: houseStanding(book) }) };
}

function errorLine(dir: string, errors: number, console: Console): string {
  const told = `${dir}: ${counted(errors, 'error')} in the records`;
  return `${told}${typed(`; bookmatch check --house ${shellWord(dir)} tells them`, console)}.\n`;
}

const asData = (houses: readonly ListedHouse[], on: IsoDate) => ({
  format: 'bookmatch/houses/1',
  on,
  houses: mostUrgentFirst(houses).map(({ standing, ...house }) => ({ ...house, ...standing })),
  totals: housesTotals(houses),
});

/** From a page's folder to the book that was built of a house; undefined where none was. */
function bookLink(out: string, house: string): string | undefined {
  const book = join(house, '_site', 'book', 'index.html');
  if (!existsSync(book)) return undefined;
  return relative(out, book).split(sep).map(encodeURIComponent).join('/');
}
