import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { describe, expect, test } from 'vitest';
import { codesByPage } from '../../src/base/problem/index.js';
import { here, pages, readPage, type Case } from './read-page.js';

/** The pages in `messages/` are the manual of messages: a code that cannot be looked up there, or is shown without a word,
 *  is a fault of the program. */

/** Codes that no change of a text brings about, each with the test that raises it. */
const elsewhere: Readonly<Record<string, string>> = {
  // Whoever runs the tests as root may read everything.
  'file-unreadable': '../store/unreadable.test.ts',
};

const codes = Object.entries(codesByPage);
const shown = codes.map(([page, all]) => [page, all.filter((code) => !Object.hasOwn(elsewhere, code))] as const);

test('each group of codes has its page, and each page its codes', () => {
  const found = pages.flatMap((page) => /^messages\/(.+)\.md$/u.exec(page)?.[1] ?? []);
  expect(found).toEqual(codes.map(([page]) => page).sort());
});

test('no code stands in two groups', () => {
  const all = codes.flatMap(([, group]) => group);
  expect(all.filter((code, index) => all.indexOf(code) !== index)).toEqual([]);
});

test.each(Object.entries(elsewhere))('%s is raised by its own test', (code, file) => {
  expect(codes.flatMap(([, group]): readonly string[] => group)).toContain(code);
  expect(readFileSync(join(here, file), 'utf8')).toContain(`'${code}'`);
});

describe.each(shown)('%s', (page, group) => {
  const text = readFileSync(join(here, 'messages', `${page}.md`), 'utf8');
  const { cases } = readPage(text);

  test('has a head for each code, in order', () => {
    expect([...text.matchAll(/^## (.+)$/gmu)].map(([, title]) => title)).toEqual(group);
  });

  test('says of each code what it means, and prints it', () => {
    const sections = text.split(/^## /mu).slice(1);
    expect(
      sections.filter((section) => !/^\S+\n\n[A-Z`]/u.test(section)).map((section) => section.slice(0, 40)),
    ).toEqual([]);
    const ofCodes = cases.filter(({ title }) => group.some((code) => code === title));
    expect(ofCodes.filter((each) => !printsOf(each).includes(`  ${each.title}  `)).map(({ title }) => title)).toEqual(
      [],
    );
  });

  test('shows one cause at a time', () => {
    // One wrong tape shows at every wall around it, and names itself.
    const isOne = (found: ReadonlySet<string>): boolean =>
      page === 'laying' ? [...found].every((code) => group.some((own) => own === code)) : found.size === 1;
    expect(cases.filter((each) => !isOne(codesIn(printsOf(each)))).map(({ title }) => title)).toEqual([]);
  });

  test('says with each message what to do', () => {
    expect(cases.filter((each) => /\|\s*\^?$/mu.test(printsOf(each))).map(({ title }) => title)).toEqual([]);
  });
});

function printsOf({ steps }: Case): string {
  return steps.flatMap((step) => (step.does === 'run' ? [step.output] : [])).join('');
}

/** Codes in the first lines of printed problems. */
function codesIn(printed: string): ReadonlySet<string> {
  return new Set([...printed.matchAll(/^\S.*:\d+:\d+ {2}(\S+) {2}/gmu)].map(([, code = '']) => code));
}
