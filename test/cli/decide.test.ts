import { readdirSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { spliceKeys } from '../../src/core/records/index.js';
import { HouseUnderGit } from './house-under-git.js';

const order = 'content/changes/001.md';
const room = 'content/rooms/study.md';

const proposed = HouseUnderGit.after(async (house) => {
  house.edit(room, 'chosen: pine', 'chosen: oak');
  house.commit('The owner takes oak');
  await house.run('compare HEAD~1 HEAD --draft --reason "The sample looked better."', '2026-04-20');
  house.commit('Proposed');
});

let house: HouseUnderGit;
beforeEach(async () => {
  house = await proposed();
});
afterEach(() => house.remove());

describe('approve, decline, void', () => {
  test.each([
    ['approve 1 --by owner', 'approved', 'Change order 1 approved'],
    ['decline 1 --by "The builder"', 'declined', 'Change order 1 declined'],
    ['void 1 --by builder --why "Two lines were missing."', 'void', 'Change order 1 voided'],
  ])('%s sets these keys down and nothing else, and commits the record', async (line, state, words) => {
    house.edit(order, 'reason:', '# A remark of the builder, which stays.\nreason:');
    const before = house.read(order);
    const said = await house.run(line, '2026-04-22');
    expect(said).toMatchObject({ code: 0, error: '' });
    expect(said.out).toContain(`${words} on 22 April 2026 by `);
    expect(said.out).toContain(`Committed to git: ${words}\n`);
    const after = house.read(order);
    const name = line.includes('owner') ? 'The owner' : 'The builder';
    expect(after).toContain(`state: ${state}\n`);
    expect(after).toContain(`proposed-on: 2026-04-20\ndecided-on: 2026-04-22\ndecided-by: ${name}\n`);
    const unlike = (text: string): string => text.replace(/^(state|decided-on|decided-by|void-reason): .*\n/gmu, '');
    expect(unlike(after)).toBe(unlike(before));
    expect(house.git('show', '--name-only', '--format=%s', 'HEAD').trim()).toBe(`${words}\n\n${order}`);
    expect(await house.run('check')).toMatchObject({ code: 0 });
    expect(readdirSync(join(house.dir, 'content/changes'))).toEqual(['001.md']);
  });

  test('what is decided stays decided, and the refusal says where', async () => {
    await house.run('approve 1 --by owner');
    const before = house.read(order);
    for (const line of ['approve 1 --by owner', 'decline 1 --by owner', 'void 1 --by owner --why No']) {
      const said = await house.run(line);
      expect(said).toMatchObject({ code: 1, out: '' });
      expect(said.error).toMatch(
        /content\/changes\/001\.md:3:8 +decision-refused  error: change order 1 was approved on 20 April 2026 by The owner/,
      );
    }
    expect(house.read(order)).toBe(before);
  });

  test('not before it was proposed, and not after its last day', async () => {
    expect((await house.run('approve 1 --by owner', '2026-04-19')).error).toContain('was proposed on 20 April 2026');
    house.edit(order, 'proposed-on: 2026-04-20', 'proposed-on: 2026-04-20\nvalid-until: 2026-05-04');
    expect((await house.run('approve 1 --by owner', '2026-05-05')).error).toContain('change-expired');
    expect((await house.run('check', '2026-05-05')).error).toMatch(/change-expired +warning: .*nobody decided it/);
    expect(await house.run('approve 1 --by owner', '2026-05-04')).toMatchObject({ code: 0 });
  });

  test('wrong usage: nobody, a stranger, no such order, an issue', async () => {
    expect((await house.run('approve 1')).code).toBe(2);
    expect((await house.run('approve 1 --by ownr')).error).toContain("did you mean 'owner'?");
    expect((await house.run('approve 2 --by owner')).error).toContain('there is no change order 2; the last is 1');
    expect((await house.run('approve issue-1 --by owner')).code).toBe(2);
    expect((await house.run('void 1 --by owner')).code).toBe(2);
  });
});

describe('an issue taken back', () => {
  test('keeps its number and files, and nothing stands on it', async () => {
    await house.run('issue --for pricing');
    expect(await house.run('void issue-1 --by builder --why "Issued from the wrong branch."')).toMatchObject({
      code: 0,
    });
    const record = house.read('content/issues/001.md');
    expect(record).toContain('void:\n  on: 2026-04-20\n  by: The builder\n  why: Issued from the wrong branch.\n');
    expect(await house.run('check')).toMatchObject({ code: 0, error: '' });
    expect((await house.run('issue --for pricing')).out).toContain('Issue 2 for pricing');
    const verified = await house.run('void issue-1 --by builder --why Again');
    expect((await house.run('accept issued/001.pdf --by-hand --issue 1 --as owner --name "The owner"')).code).toBe(2);
    expect(verified.error).toMatch(/decision-refused  error: issue 1 was voided on 20 April 2026 by The builder/);
  });
});

describe('numbers', () => {
  test('are not given again after a revert, or after the commit was thrown away', async () => {
    await house.run('issue --for pricing');
    house.git('revert', '--no-edit', 'HEAD');
    expect((await house.run('issue --for pricing')).out).toContain('Issue 2 for pricing');
    house.git('reset', '-q', '--hard', 'HEAD~1');
    const said = await house.run('issue --for pricing');
    expect(said.out).toContain('Issue 3 for pricing');
    expect((await house.run('check')).error).toMatch(/number-gap +warning: issues 1 to 2 are missing/);
  });

  test('of a change order neither', async () => {
    house.git('revert', '--no-edit', 'HEAD');
    expect((await house.run('compare HEAD~3 HEAD~2 --draft --reason Anew')).out).toContain('Change order 2, proposed');
  });

  test('that two clones gave are told before the merge, and in it', async () => {
    house.git('branch', 'site-office');
    await house.run('issue --for pricing');
    house.git('checkout', '-q', 'site-office');
    house.edit(room, 'chosen: oak', 'chosen: pine');
    house.commit('Pine after all');
    // The other clone knows nothing of this one's number.
    const main = house.git('rev-parse', 'main').trim();
    house.git('update-ref', '-d', 'refs/heads/main');
    house.git('reflog', 'expire', '--expire=now', '--all');
    expect((await house.run('issue --for sign-off')).out).toContain('Issue 1 for sign-off');
    house.git('update-ref', 'refs/heads/main', main);
    house.git('checkout', '-q', 'main');
    const said = await house.run('check');
    expect(said.error).toMatch(/issues\/001\.md:1:1 +number-twice +warning: issue 1 is another one in site-office/);
    expect(said.error).toContain('git merge site-office');
    expect(() => house.git('merge', '-q', 'site-office')).toThrow();
    const met = await house.run('check');
    expect(met.code).toBe(1);
    expect(met.error).toMatch(
      /issues\/001\.md:\d+:1 +merge-conflict  error: two clones gave the number 1 to another issue each/,
    );
    house.git('checkout', '--theirs', '--', 'content/issues/001.md', 'issued/001.json', 'issued/001.pdf');
    house.commit('Merged');
    expect((await house.run('issue --for pricing')).out).toContain('Issue 2 for pricing');
    expect((await house.run('check')).error).not.toContain('number-twice');
  });
});

describe('issuing for construction', () => {
  test('names what is unsigned, open, missing, uncovered and not accepted, and asks for a reason that is recorded', async () => {
    const said = await house.run('issue --for construction');
    expect(said).toMatchObject({ code: 1, out: '' });
    expect(said.error).toContain('Not signed\n    no issue is signed by owner and builder');
    expect(said.error).toMatch(
      /Not decided\n {4}content\/rooms\/study\.md:\d+: 101 Study, Ceiling: ceiling-board is open/,
    );
    // The small house has no slots.
    expect(said.error).toContain('Missing\n    content/rooms/study.md:1: 101 Study: nothing covers its walls');
    expect(said.error).toContain('--anyway');
    expect((await house.run('issue --for pricing --anyway "No reason to ask"')).code).toBe(2);
    const issued = await house.run('issue --for construction --anyway "The framer starts on Monday."');
    expect(issued).toMatchObject({ code: 0 });
    const record = house.read('content/issues/001.md');
    expect(record).toContain('anyway:\n  why: The framer starts on Monday.\n  despite:\n    - no issue is signed');
    expect(await house.run('check')).toMatchObject({ code: 0 });
    expect((await house.run('schedule issues')).out).toContain('The framer starts on Monday.');
  });
});

describe('splicing', () => {
  const text = '---\ntitle: "A: b" # why\nlist:\n  - 1\n\n# end\nstate: x\n---\nBody\nstate: y\n';
  test('touches the keys that are named, in place or after one', () => {
    expect(spliceKeys(text, { state: 'y' }, 'title')).toBe(text.replace('state: x', 'state: y'));
    expect(spliceKeys(text, { list: [{ a: 1 }] }, 'title')).toBe(text.replace('  - 1\n', '  - a: 1\n'));
    expect(spliceKeys(text, { new: 1 }, 'title')).toBe(text.replace('# why\n', '# why\nnew: 1\n'));
    expect(spliceKeys(text, { new: 1 }, 'nowhere')).toBe(text.replace('state: x\n', 'state: x\nnew: 1\n'));
  });
  test('keeps the line ends of the file', () => {
    const windows = text.replaceAll('\n', '\r\n');
    expect(spliceKeys(windows, { state: 'z', new: 1 }, 'state')).toBe(
      windows.replace('state: x\r\n', 'state: z\r\nnew: 1\r\n'),
    );
  });
});
