import { existsSync } from 'node:fs';
import { join, relative, sep } from 'node:path';
import { BaseSequencer, type TestSpecification } from 'vitest/node';

/** Files that start git again and again. To start a program, Linux copies the tables of the worker's memory, which takes ten times as long once the
 *  worker has printed the demo house. */
const startingMany = [
  'test/cases/cases.test.ts',
  'test/cli/contract-covered.test.ts',
  'test/cli/decide.test.ts',
  'test/cli/sign-change.test.ts',
  'test/cli/change-order.test.ts',
  'test/cli/issue.test.ts',
  'test/cli/take-over.test.ts',
  'test/cli/choose.test.ts',
  'test/cli/new-house.test.ts',
  'test/cli/compare.test.ts',
  'test/cli/line-ends.test.ts',
  'test/load/kept-drafts.test.ts',
  'test/history/read-version.test.ts',
  'test/history/git.test.ts',
  'test/outside/signoff/openssl.test.ts',
  'test/install/package.test.ts',
];

/** Files that take longest. A worker that came to one of them last would keep the other one waiting. */
const long = [
  'test/cli/demo.test.ts',
  'test/browser/site.test.ts',
  'test/browser/handout.test.ts',
  'test/browser/older-copy.test.ts',
  'test/parity/parity.test.tsx',
  'test/book/figures.test.ts',
  'test/handout/no-money.test.ts',
  'test/book/demo-layout.test.ts',
  'test/print/demo-pdfs.test.ts',
  'test/print/hostile.test.ts',
  'test/print/book-code.test.ts',
  'test/cli/verify-photo.test.ts',
  'test/signoff/sign.test.ts',
];

const first = [...startingMany, ...long];

/** The files above first, in that order; else as vitest has it. Files in a graph of their own stay before all, since a worker ends with them. */
export class LongestFirst extends BaseSequencer {
  override async sort(specs: TestSpecification[]): Promise<TestSpecification[]> {
    const { root } = this.ctx.config;
    const gone = first.filter((path) => !existsSync(join(root, path)));
    if (gone.length > 0) throw new Error(`test/longest-first.ts names what is not there: ${gone.join(', ')}`);
    const rank = ({ project, moduleId }: TestSpecification): number => {
      if (project.config.isolate) return -1;
      const at = first.indexOf(relative(root, moduleId).split(sep).join('/'));
      return at === -1 ? first.length : at;
    };
    return (await super.sort(specs)).sort((a, b) => rank(a) - rank(b));
  }
}
