import { mkdirSync, writeFileSync } from 'node:fs';
import { join } from 'node:path';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { HouseUnderGit } from './house-under-git.js';

const study = 'content/rooms/study.md';
let house: HouseUnderGit;

beforeEach(() => {
  house = new HouseUnderGit();
  alternative('fir', 'Fir overhead', 'choices: { study/ceiling-board/ceiling: fir-tg-1x6, study/floor/floor: none }');
  house.commit('An alternative');
});
afterEach(() => house.remove());

function alternative(slug: string, name: string, choices: string): void {
  mkdirSync(join(house.dir, 'content/alternatives'), { recursive: true });
  writeFileSync(join(house.dir, `content/alternatives/${slug}.md`), `---\nname: ${name}\n${choices}\n---\n\nWords.\n`);
}

describe('bookmatch alternatives', () => {
  test('holds each beside today, and one line by line', async () => {
    const { out } = await house.run('alternatives');
    expect(out).toContain('As it stands today');
    expect(out).toContain('Fir overhead');
    const one = await house.run('alternatives fir');
    expect(one.out).toContain('in place of Pine strip');
    expect((await house.run('alternatives "fir overhead" --csv')).out).toContain('Ceiling board');
    const [json] = JSON.parse((await house.run('alternatives --json')).out) as readonly { readonly slug: string }[];
    expect(json?.slug).toBe('fir');
  });

  test('an unknown name is wrong usage, and says which there are', async () => {
    const { code, error } = await house.run('alternatives fri');
    expect(code).toBe(2);
    expect(error).toContain("there is no alternative 'fri': did you mean 'fir'?\nThere are fir.");
  });

  test('without any, says what one is', async () => {
    house.git('rm', '-q', '-r', 'content/alternatives');
    expect((await house.run('alternatives')).out).toContain('No alternative is recorded.');
    expect((await house.run('take-over fir --by owner')).code).toBe(2);
  });
});

describe('bookmatch take-over', () => {
  test('writes what is named into the rooms’ records, in one commit, and comes to its total', async () => {
    const [{ total }] = JSON.parse((await house.run('alternatives --json')).out) as [{ readonly total: number }];
    const { code, out } = await house.run('take-over fir --by owner');
    expect(code).toBe(0);
    expect(out).toContain('Fir overhead: 2 choices by The owner, 20 April 2026');
    expect(house.read(study)).toContain('chosen: fir-tg-1x6\n    chosen-on: 2026-04-20\n    chosen-by: The owner\n');
    expect(house.git('log', '-1', '--format=%s', '--name-only')).toBe(
      `Fir overhead: 2 choices by The owner\n\n${study}\n`,
    );
    const { out: after } = await house.run('alternatives --json');
    expect(JSON.parse(after)).toMatchObject([{ total, change: 0 }]);
    expect((await house.run('take-over fir --by owner')).out).toContain(
      'All is chosen already that Fir overhead names',
    );
    expect(await house.run('check')).toMatchObject({ code: 0 });
  });

  test('--open-only leaves what is chosen', async () => {
    expect((await house.run('take-over fir --by owner --open-only')).out).toContain('1 choice by');
    expect(house.read(study)).toContain('chosen: pine\n');
  });

  test('changes nothing that is ordered, and says which order', async () => {
    house.edit(
      study,
      'chosen: pine\n',
      'chosen: pine\n    chosen-on: 2026-03-01\n    ordered: { on: 2026-03-02, option: pine, number: "B-7" }\n',
    );
    house.commit('Pine is ordered');
    const before = house.read(study);
    const { code, error } = await house.run('take-over fir --by owner');
    expect(code).toBe(1);
    expect(error).toMatch(
      /study\.md:\d+: 101 Study: floor is ordered on 2 March 2026 as order B-7\n\nNothing was chosen\./u,
    );
    expect(house.read(study)).toBe(before);
    expect((await house.run('take-over fir --by owner --open-only')).code).toBe(0);
  });

  test('writes nothing that would be an error', async () => {
    const fir = 'content/options/ceiling-board/fir-tg-1x6.md';
    house.edit(fir, 'name:', 'withdrawn: { on: 2026-04-01, why: The mill closed }\nname:');
    const before = house.read(study);
    const { code, error } = await house.run('take-over fir --by owner');
    expect(code).toBe(1);
    expect(error).toContain('chosen-withdrawn');
    expect(error).toContain('Nothing was chosen.');
    expect(house.read(study)).toBe(before);
  });

  test('leaves a record alone that somebody is changing, and takes its own record into the commit', async () => {
    house.edit(study, 'Study', 'Library');
    const { code, error } = await house.run('take-over fir --by owner');
    expect(code).toBe(1);
    expect(error).toContain('not committed yet are changes in content/rooms/study.md');
    house.commit('A name');
    alternative('pine', 'Pine overhead', 'choices: { study/ceiling-board/ceiling: pine-shiplap-1x8 }');
    expect((await house.run('take-over pine --by owner')).code).toBe(0);
    expect(house.git('status', '--porcelain')).toBe('');
  });

  test('tells alternatives of one name apart', async () => {
    alternative('second', 'Fir overhead', 'choices: { study/floor/floor: none }');
    const { code, error } = await house.run('take-over "Fir overhead" --by owner');
    expect(code).toBe(2);
    expect(error).toContain("2 alternatives are named 'Fir overhead': fir, second");
  });

  test('asks for a person of the house', async () => {
    const { code, error } = await house.run('take-over fir --by ownr');
    expect(code).toBe(2);
    expect(error).toContain("did you mean 'owner'?");
  });
});
