import { Session } from 'node:inspector/promises';
import { expect, test } from 'vitest';
import { inLocale } from '../../src/base/units/index.js';
import { handoutProblems, makeHandout } from '../../src/handout/index.js';
import { composeBook, measureFiles } from '../../src/disk/load/index.js';
import { grownHouse, selectionsOfApartment } from './grown-house.js';

/** What may be asked of each pair of things, by the beginning of its file: where it lies, and why it stays. */
const pairwise: Readonly<Record<string, string>> = {
  'core/price/': 'an option is priced with every place that shares its order, or its allowance',
  'core/lay/': 'of each two rooms it is asked whether they are near; of each room, what else there is',
  'core/caution/rule/window-in-wall.ts': 'of each window and each room of its level, whether they are near',
  'core/book/make-alternatives.ts': 'each open choice says where the others on its allowance stand meanwhile',
  'core/book/look-up.ts': 'rooms of a supply are sorted',
  'table/order-lines.ts': 'the same',
};

/** A house, its Book and its handouts, all of it but pages. */
async function makeAll(apartments: number): Promise<number> {
  const sources = [...(await grownHouse(apartments))].map(([path, text]) => ({ path, text }));
  const { book, problems } = composeBook(measureFiles(sources), '2026-04-20');
  if (!book) throw new Error(JSON.stringify(problems.filter(({ severity }) => severity === 'error')));
  inLocale(book.house, () => {
    handoutProblems(book);
    // What is made when it is first asked for.
    JSON.stringify(book);
    for (const trade of book.trades) makeHandout(book, trade);
  });
  return book.selections.length;
}

/** How often each function of the program is called meanwhile: no clock, so that the same house always answers the same. */
async function callsOf(apartments: number): Promise<ReadonlyMap<string, number>> {
  const session = new Session();
  session.connect();
  try {
    await session.post('Profiler.enable');
    await session.post('Profiler.startPreciseCoverage', { callCount: true, detailed: false });
    await makeAll(apartments);
    const { result } = await session.post('Profiler.takePreciseCoverage');
    return new Map(
      result.flatMap(({ url, functions }) => {
        const [, file] = url.split('/src/');
        // What everybody calls is called as often as its callers are.
        return file === undefined || file.startsWith('base/')
          ? []
          : functions.map(
              ({ functionName, ranges: [of] }) =>
                [`${file} ${functionName} at ${of?.startOffset}`, of?.count ?? 0] as const,
            );
      }),
    );
  } finally {
    session.disconnect();
  }
}

test('twice the house is twice the work, in each function but those that are listed', async () => {
  expect(await makeAll(1)).toBe(selectionsOfApartment);
  const [one, two, four] = [await callsOf(3), await callsOf(6), await callsOf(12)];
  const growth = [...four].flatMap(([name, most]) => {
    const [first, second] = [one.get(name) ?? 0, two.get(name) ?? 0];
    // What the doubled house adds, over what the first doubling added: 2 where it is linear, 4 where it goes by the square.
    return most < 1000 ? [] : [{ name, ratio: (most - second) / (second - first) }];
  });
  expect(growth.length).toBeGreaterThan(700);
  const isListed = (name: string): boolean => Object.keys(pairwise).some((start) => name.startsWith(start));
  expect(growth.filter(({ name, ratio }) => ratio > 2.8 && !isListed(name))).toEqual([]);
  for (const start of Object.keys(pairwise))
    expect(
      growth.some(({ name, ratio }) => name.startsWith(start) && ratio > 2.8),
      start,
    ).toBe(true);
});
