import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, expect, test } from 'vitest';
import { HouseUnderGit } from './house-under-git.js';

const hex = 'ab'.repeat(32);
const issue = `---
purpose: sign-off # the first
date: 2026-04-01
commit: ${'c'.repeat(40)}
digest: ${hex}
rooms: { study: ${hex} }
trades: {}
---
Issued.
`;
const order = `---
title: Oak in the study
state: proposed
from: ${'c'.repeat(40)}
to: ${'d'.repeat(40)}
proposed-on: 2026-04-02 # by mail
reason: The sample looked better.
days: 0 days
amount: $0
lines: []
---

Agreed by mail.
`;

/** As an editor on Windows saves it. */
const windows = (text: string): string => `\uFEFF${text.replaceAll('\n', '\r\n')}`;

/** Any file will do as a scan. */
const scan = join(import.meta.dirname, '../../docs/room-page.png');

let house: HouseUnderGit | undefined;
afterEach(() => house?.remove());

/** What a record becomes by a command, of either kind of file. */
async function written(path: string, text: string, line: string): Promise<readonly [plain: string, windows: string]> {
  const become = async (before: string): Promise<string> => {
    house = new HouseUnderGit();
    mkdirSync(join(house.dir, 'content', 'issues'));
    mkdirSync(join(house.dir, 'content', 'changes'));
    writeFileSync(join(house.dir, path), before);
    house.commit('A record');
    const { code, error } = await house.run(line);
    expect(error).toBe('');
    expect(code).toBe(0);
    const after = house.read(path);
    house.remove();
    house = undefined;
    return after;
  };
  return [await become(text), await become(windows(text))];
}

test('a change order that is approved keeps its line ends, its mark and its remarks', async () => {
  const [plain, ofWindows] = await written('content/changes/001.md', order, 'approve 1 --by "The builder"');
  expect(plain).toBe(
    order
      .replace('proposed-on: 2026-04-02 # by mail\n', '$&decided-on: 2026-04-20\ndecided-by: The builder\n')
      .replace('state: proposed', 'state: approved'),
  );
  expect(ofWindows).toBe(windows(plain));
});

test('an issue that is voided keeps them', async () => {
  const [plain, ofWindows] = await written(
    'content/issues/001.md',
    issue,
    'void issue-1 --by "The builder" --why Wrong',
  );
  expect(plain).toBe(issue.replace(`digest: ${hex}\n`, '$&void:\n  on: 2026-04-20\n  by: The builder\n  why: Wrong\n'));
  expect(ofWindows).toBe(windows(plain));
});

test('an issue that is signed by hand keeps them', async () => {
  const line = `accept ${scan} --by-hand --issue 1 --as owner --name "The owners"`;
  const [plain, ofWindows] = await written('content/issues/001.md', issue, line);
  expect(plain).toContain('trades: {}\nsignatures:\n  - role: owner\n    name: The owners\n');
  expect(ofWindows).toBe(windows(plain));
});
