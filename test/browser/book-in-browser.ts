import { build } from 'esbuild';
import type { Page } from 'playwright-core';
import type { PackedHouse, Pick } from '../../src/try/index.js';

/** Composes Books in a browser from a packed house, by what pages bring along; answers each as JSON. */
export async function booksInBrowser(
  page: Page,
  house: PackedHouse,
  sets: readonly (readonly Pick[])[],
): Promise<readonly string[]> {
  const { outputFiles } = await build({
    stdin: {
      resolveDir: import.meta.dirname,
      contents: `
        import { tryPicks, unpackHouse } from '../../src/try/index.js';
        let compose;
        window.openHouse = (house) => { compose = tryPicks(unpackHouse(house)); };
        window.book = (picks, on) => JSON.stringify(compose(picks, on).value);
      `,
    },
    bundle: true,
    write: false,
    format: 'iife',
    platform: 'browser',
    target: 'es2022',
    logLevel: 'warning',
  });
  await page.addScriptTag({ content: outputFiles.map(({ text }) => text).join('') });
  await page.evaluate((packed) => (window as unknown as InBrowser).openHouse(packed), house);
  const books: string[] = [];
  for (const picks of sets)
    books.push(
      await page.evaluate(([own, on]) => (window as unknown as InBrowser).book(own, on), [picks, house.on] as const),
    );
  return books;
}

interface InBrowser {
  readonly openHouse: (house: PackedHouse) => void;
  readonly book: (picks: readonly Pick[], on: string) => string;
}
