import { readFile, stat } from 'node:fs/promises';
import { Command } from 'commander';
import { hasErrors } from '../base/problem/index.js';
import { speakAs } from '../base/units/index.js';
import { localeOfHouse } from '../core/records/index.js';
import { readHouseFolder, writeNew } from '../disk/store/index.js';
import { draftModel, modelReport, modelTooLarge, takenIn } from '../draft/index.js';
import type { Console } from './console.js';
import { checkHouseDir, reportProblems, type HouseOptions } from './house-options.js';
import { UsageError } from './usage-error.js';

/** `bookmatch rooms FILE.ifc`: records of the rooms that an architect's model has and the house does not have yet. */
export function rooms(console: Console, done: (code: number) => void): Command {
  return new Command('rooms')
    .argument('<file>', 'the model, as an IFC file in STEP text')
    .option('--house <dir>', 'the house folder: the one that holds content/', '.')
    .action(async (file: string, { house }: HouseOptions) => {
      const dir = checkHouseDir(house);
      const { files, problems } = await readHouseFolder(dir);
      if (hasErrors(problems)) {
        reportProblems({ problems }, 'Nothing was drafted.', console);
        return done(1);
      }
      speakAs(localeOfHouse(files.find(({ path }) => path === 'content/house.md')));
      const { value: draft, problems: refused } = await readModel(file, takenIn(files));
      if (!draft) {
        reportProblems({ problems: refused }, 'Nothing was drafted.', console);
        return done(1);
      }
      await writeNew(dir, draft.files);
      console.out(modelReport(draft));
      done(draft.spaces.every(({ path }) => path !== undefined) ? 0 : 1);
    });
}

/** The draft of a model on disk, which may be too large to be read at all. */
async function readModel(file: string, taken: ReturnType<typeof takenIn>): Promise<ReturnType<typeof draftModel>> {
  const facts = await stat(file).catch(() => undefined);
  if (!facts?.isFile()) throw new UsageError(`there is no file ${file}`);
  const tooLarge = modelTooLarge(file, facts.size);
  if (tooLarge) return { problems: [tooLarge] };
  return draftModel({ file, text: new TextDecoder().decode(await readFile(file)) }, taken);
}
