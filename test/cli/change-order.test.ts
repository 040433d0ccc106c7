import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { HouseUnderGit } from './house-under-git.js';

const room = 'content/rooms/study.md';
const order = 'content/changes/001.md';

const chosen = HouseUnderGit.after(async (house) => {
  house.edit(room, 'chosen: pine', 'chosen: oak');
  house.commit('The owner takes oak');
});

let house: HouseUnderGit;
beforeEach(async () => {
  house = await chosen();
});
afterEach(() => house.remove());

const draft = (more = '') =>
  house.run(`compare HEAD~1 HEAD --draft --reason "The sample looked better." ${more}`.trim());

describe('compare --draft', () => {
  test('writes the next change order with frozen lines that the records are checked with', async () => {
    const said = await draft('--days "2 days" --title "Oak in the study"');
    expect(said).toMatchObject({ code: 0, error: '' });
    expect(said.out).toContain('It is not committed yet: git add --all, then git commit');
    const record = house.read(order);
    const total = /^Change order 1, proposed: \+(\$[\d,.]+)$/m.exec(said.out)?.[1] ?? '';
    expect(record).toContain(
      `from: ${house.git('rev-parse', 'HEAD~1').trim()}\nto: ${house.git('rev-parse', 'HEAD').trim()}\n`,
    );
    expect(record).toContain(`title: Oak in the study\nstate: proposed\n`);
    expect(record).toContain(`days: 2 days\namount: ${total}\n`);
    expect(record).toContain('selection: study/floor/floor');
    expect(await house.run('check')).toMatchObject({ code: 0, error: '' });
  });

  test('numbers are not given twice, even after one was voided', async () => {
    await draft();
    house.edit(order, 'state: proposed', 'state: void\ndecided-on: 2026-04-21\ndecided-by: Builder');
    expect((await draft()).out).toMatch(/^Change order 2,/);
  });

  test('nor when the records on disk cannot be read', async () => {
    await draft();
    house.edit(order, 'what: Floor', 'what: The floor');
    const first = house.read(order);
    house.edit(room, 'chosen: oak', 'chosen: oka');
    expect((await draft()).out).toMatch(/^Change order 2,/);
    expect(house.read(order)).toBe(first);
  });

  test('approved, it moves the contract and leaves nothing uncovered', async () => {
    const money = async (): Promise<{ current: number; notCovered: number }> =>
      (
        JSON.parse((await house.run('build --json')).out) as {
          money: { agreed: { current: number; notCovered: number } };
        }
      ).money.agreed;
    await house.run('compare HEAD~1 HEAD --draft --reason "Oak."');
    const before = await money();
    house.edit(order, 'state: proposed', 'state: approved\ndecided-on: 2026-04-21\ndecided-by: The owner');
    const after = await money();
    const amount = Number(/^amount: -?\$([\d,.]+)$/m.exec(house.read(order))?.[1]?.replace(/[,.]/g, ''));
    expect(amount).toBeGreaterThan(0);
    expect(after.current - before.current).toBe(amount);
    expect(before.notCovered - after.notCovered).toBe(amount);
  });

  test('a line that was edited no longer agrees, and check says which', async () => {
    await draft();
    house.edit(order, 'what: Floor', 'what: The floor');
    const said = await house.run('check');
    expect(said.code).toBe(1);
    expect(said.error).toMatch(
      /changes\/001\.md:\d+:\d+ +change-disagrees  error: change order 1: 'The floor[^']*' is not so/,
    );
  });

  test('an amount that was edited with its line no longer agrees', async () => {
    await draft();
    const amount = /^amount: \$(.*)$/m.exec(house.read(order))?.[1] ?? '';
    house.edit(order, `amount: $${amount}`, 'amount: $1.00');
    house.edit(order, `    amount: $${amount}`, '    amount: $1.00');
    expect((await house.run('check')).error).toMatch(
      /change order 1 says \+\$1\.00, but from [0-9a-f]{10} to [0-9a-f]{10} it is/,
    );
  });

  test('history that is not there is a warning, not an error', async () => {
    await draft();
    house.edit(order, house.git('rev-parse', 'HEAD~1').trim(), 'ab'.repeat(20));
    const said = await house.run('check');
    expect(said.code).toBe(0);
    expect(said.error).toContain('cannot be computed again');
  });

  test('what an approved change order covers is left out of the next draft from the same version', async () => {
    await draft();
    house.commit('Proposed');
    await house.run('approve 1 --by owner');
    const again = await house.run('compare HEAD~3 HEAD --draft --reason Again');
    expect(again).toMatchObject({ code: 1, out: '' });
    expect(again.error).toMatch(
      /^Left out, as change order 1 \(.*\) is approved and has it: what lies .*, 1 line, \+\$/mu,
    );
    expect(again.error).toContain('Nothing that a change order speaks of differs');
    house.edit(room, 'chosen: oak', 'chosen: pine');
    house.commit('Pine after all');
    const next = await house.run('compare HEAD~4 HEAD --draft --reason "Another thought."');
    expect(next.out).toMatch(/^Change order 2, proposed: [−+]/mu);
    expect(house.read('content/changes/002.md')).toContain(`from: ${house.git('rev-parse', 'HEAD~3').trim()}`);
    expect(await house.run('check')).toMatchObject({ code: 0, error: '' });
  });

  test('what is proposed already is not proposed again, until that is decided', async () => {
    await draft('--title Oak');
    const again = await draft('--title Again --days 3');
    expect(again).toMatchObject({ code: 1, out: '' });
    expect(again.error).toContain(
      'Change order 1 (Oak) is proposed with the same lines: decide on it first. Nothing was written.',
    );
    house.edit(order, 'state: proposed', 'state: declined\ndecided-on: 2026-04-21\ndecided-by: The owner');
    expect((await draft('--days 3')).out).toMatch(/^Change order 2,/);
    expect(house.read('content/changes/002.md')).toContain('days: 3 days\n');
  });

  test('two drafts of one change: one is approved, the other is refused and told', async () => {
    await draft();
    house.write('content/changes/002.md', house.read(order));
    expect((await house.run('check')).error).toBe('');
    await house.run('approve 1 --by owner');
    expect((await house.run('check')).error).toMatch(
      /002\.md:\d+:\d+ +change-agreed-twice +warning: change order 2 has 1 line that change order 1/,
    );
    const before = house.read('content/changes/002.md');
    expect(await house.run('approve 2 --by owner')).toMatchObject({ code: 1, out: '' });
    expect(house.read('content/changes/002.md')).toBe(before);
    house.edit(
      'content/changes/002.md',
      'state: proposed',
      'state: approved\ndecided-on: 2026-04-21\ndecided-by: The owner',
    );
    const said = await house.run('check');
    expect(said.code).toBe(1);
    expect(said.error).toContain('so that the contract counts them twice');
  });

  test('a draft from elsewhere that has lines of an approved one is refused', async () => {
    await draft();
    house.commit('Proposed');
    await house.run('approve 1 --by owner');
    house.git('checkout', '-q', '-b', 'aside', 'HEAD~3');
    house.edit('content/house.md', 'place: Anywhere', 'place: Anywhere else');
    house.commit('Aside');
    house.git('checkout', '-q', 'main');
    const said = await house.run('compare aside HEAD --draft --reason Again');
    expect(said).toMatchObject({ code: 1, out: '' });
    expect(said.error).toMatch(
      /This draft has 1 line that change order 1, approved on .* It would be agreed twice: draft from where it begins/,
    );
  });

  test('wrong usage: no reason, the working tree, nothing to say', async () => {
    expect((await house.run('compare HEAD~1 HEAD --draft')).error).toContain('--draft wants --reason');
    house.edit(room, 'chosen: oak', 'chosen: pine');
    const onDisk = await house.run('compare HEAD --draft --reason Pine');
    expect(onDisk).toMatchObject({ code: 2, out: '' });
    expect(onDisk.error).toContain('git commit, then bookmatch compare HEAD HEAD --draft');
    expect(await house.run('compare HEAD HEAD --draft --reason Nothing')).toMatchObject({ code: 1, out: '' });
    expect((await house.run('compare HEAD~1 HEAD --draft --reason x --days soon')).error).toContain("'soon' ");
  });
});
