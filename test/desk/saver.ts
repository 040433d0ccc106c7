/** Saves a record again and again at a desk, and says the number of each save that was acknowledged: to be killed. `FOLDER FIRST LAST` */
import { writeSync } from 'node:fs';
import { actOn } from '../../src/desk/act.js';
import { digestOfText, type Standing, type Watched } from '../../src/desk/standing.js';
import { readHouseFolder } from '../../src/disk/store/index.js';
import { savedRecord, savedText } from './saved-text.js';

const [dir = '', first = '0', last = '0'] = process.argv.slice(2);

const refresh = async (): Promise<Standing> => {
  const { files, problems } = await readHouseFolder(dir);
  return {
    number: 1,
    on: '2026-04-20',
    sources: files,
    problems,
    handouts: () => [],
    isEarlier: false,
    file: () => undefined,
  };
};
const watched: Watched = {
  now: () => {
    throw new Error('nobody asks for it');
  },
  refresh,
  onChange: () => () => undefined,
  close: () => Promise.resolve(),
};
const not = { isDone: false, words: '' };
const act = actOn(dir, watched, {
  run: () => Promise.resolve(not),
  commit: () => Promise.resolve(not),
  withFile: (_, use) => use(''),
  slip: () => Promise.resolve(not),
  difference: () => Promise.resolve(undefined),
});

for (let number = Number(first); number <= Number(last); number += 1) {
  const { sources } = await refresh();
  const { text = '' } = sources.find(({ path }) => path === savedRecord) ?? {};
  const form = new URLSearchParams({ ask: 'save', path: savedRecord, digest: digestOfText(text) });
  form.set('text', savedText(number));
  const { said } = await act.perform(form);
  if (!said.isDone) throw new Error(said.words);
  writeSync(1, `${number}\n`);
}
