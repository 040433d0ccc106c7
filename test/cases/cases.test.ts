import { afterAll, describe, expect, test } from 'vitest';
import { readFileSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import process from 'node:process';
import { here, pages, readPage } from './read-page.js';
import { runCase, removeHouses } from './run-case.js';

/** Each page in this folder is a trade example: what is changed in the small house, a command, and what it prints.
 *  `RECORD=1 npx vitest run test/cases` writes what is printed now into the pages; read the difference before keeping it. */
afterAll(removeHouses);

for (const page of pages) {
  const { head, cases } = readPage(readFileSync(join(here, page), 'utf8'));
  describe(page, () => {
    const recorded: string[] = [];
    test.each(cases)('$title', async (each) => {
      const outputs = await runCase(each);
      recorded.push(each.rewrite(outputs));
      if (process.env['RECORD'] !== undefined) return;
      expect(outputs.length).toBeGreaterThan(0);
      expect(outputs).toEqual(each.steps.flatMap((step) => (step.does === 'run' ? [step.output] : [])));
    });
    afterAll(() => {
      if (process.env['RECORD'] !== undefined && recorded.length === cases.length)
        writeFileSync(join(here, page), head + recorded.join(''));
    });
  });
}
