import { Command } from 'commander';
import { hasErrors } from '../base/problem/index.js';
import { speakAs } from '../base/units/index.js';
import { localeOfHouse } from '../core/records/index.js';
import { readHouseFolder, writeNew } from '../disk/store/index.js';
import { modelReport, takenIn } from '../draft/index.js';
import type { Console } from './console.js';
import { checkHouseDir, reportProblems, withHouse, type HouseOptions } from './house-options.js';
import { readModel } from './read-model.js';

/** `bookmatch rooms FILE.ifc`: records of the rooms that an architect's model has and the house does not have yet. */
export function rooms(console: Console, done: (code: number) => void): Command {
  return withHouse(new Command('rooms').argument('<file>', 'the model, as an IFC file in STEP text')).action(
    async (file: string, { house }: HouseOptions) => {
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
    },
  );
}
