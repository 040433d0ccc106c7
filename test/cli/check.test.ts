import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { HouseUnderGit } from './house-under-git.js';

const room = (name: string, number: number): string =>
  `---\nname: ${name}\nnumber: "${number}"\nlevel: main\nuse: study\nsize: 9'-0" x 8'-0"\nceiling: flat 9'-0"\nplace: { from: study, x: ${number - 100}0'-0", y: 40'-0" }\nselections: []\n---\n`;

let house: HouseUnderGit;
beforeAll(() => {
  house = new HouseUnderGit();
  house.edit('content/house.md', 'milestones:', 'slots:\n  - { at: walls, needs: finish, in: [study] }\nmilestones:');
  for (const [name, number] of [
    ['Den', 102],
    ['Snug', 103],
    ['Nook', 104],
  ] as const)
    house.write(`content/rooms/${name.toLowerCase()}.md`, room(name, number));
});
afterAll(() => house.remove());

describe('check of many alike', () => {
  test('tells one rule once, with the places', async () => {
    const { code, error } = await house.run('check');
    expect(code).toBe(0);
    expect(error.match(/scope-never-chosen/gu)).toHaveLength(1);
    expect(error).toMatch(
      /101 Study: .* was never chosen\. The same at 3 places more: 102 Den \(.*\), 103 Snug \(.*\) and 104 Nook \(.*\)\./u,
    );
  });

  test('of one room each for itself, and says that there are more; as JSON, all of them', async () => {
    const den = await house.run('check --room den');
    expect(den.error).toMatch(/content\/rooms\/den\.md:\d+:\d+ +scope-never-chosen +warning: 102 Den: /u);
    expect(den.error).not.toContain('103 Snug');
    expect(den.error).toMatch(/^\d+ more outside of what was asked for\.$/mu);
    const all = JSON.parse((await house.run('check --json')).out) as readonly { readonly code: string }[];
    expect(all.filter(({ code }) => code === 'scope-never-chosen')).toHaveLength(4);
    expect((await house.run('check --room dne')).error).toContain("did you mean 'den'?");
  });

  test('of one severity', async () => {
    const { error } = await house.run('check --only error');
    expect(error).not.toContain('scope-never-chosen');
    expect(error).toMatch(/^\d+ more outside/mu);
  });

  test('other commands say how many there are, and which command tells them', async () => {
    const { code, error } = await house.run('takeoff');
    expect(code).toBe(0);
    expect(error).toMatch(/^\d+ warnings? .*in the records: bookmatch check tells them\.\n$/u);
  });
});
