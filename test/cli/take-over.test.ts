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

describe('a choice for what a finish set gives to several rooms', () => {
  const den = 'content/rooms/den.md';
  const record = 'content/house.md';
  const floor = `      - at: floor # oak unless they say otherwise
        category: floor
        standard: oak
        considering: [oak, pine]
`;

  beforeEach(() => {
    const room = house.read(study);
    house.edit(study, room.slice(room.indexOf('  - at: floor'), room.indexOf('  - at: ceiling')), '');
    const other = house.read(study).replace('name: Study', 'name: Den').replace('"101"', '"102"');
    const alone = other.replaceAll('D01', 'D02').replaceAll('W01', 'W02').replace('swing: study', 'swing: den');
    writeFileSync(
      join(house.dir, den),
      alone.slice(0, alone.indexOf('selections:')) + alone.slice(alone.indexOf('---', 4)),
    );
    house.edit(
      record,
      '\nmilestones:\n',
      `\nfinish-sets:\n  - name: Rooms to work in\n    in: [study]\n    selections:\n${floor}milestones:\n`,
    );
    alternative('all', 'Pine', 'throughout: { floor: pine }');
    alternative('one', 'Pine in the den', 'choices: { den/floor/floor: pine }');
    house.commit('A finish set');
  });

  const chosen = (indent: string): string => {
    const lines = ['chosen: pine', 'chosen-on: 2026-04-20', 'chosen-by: The owner'];
    return lines.map((line) => `${indent}${line}\n`).join('');
  };

  test('goes into the set where all of its rooms choose alike', async () => {
    const rooms = [house.read(study), house.read(den)];
    const before = house.read(record);
    const { code, out } = await house.run('take-over all --by owner');
    expect(code).toBe(0);
    expect(out).toContain('Pine: 2 choices by The owner');
    expect(house.read(record)).toBe(before.replace(floor, `${floor}${chosen('        ')}`));
    expect([house.read(study), house.read(den)]).toEqual(rooms);
    expect(house.git('log', '-1', '--format=', '--name-only').trim()).toBe(record);
    expect(await house.run('check')).toMatchObject({ code: 0 });
    // One of them leaves it open again, in its own record.
    const set = house.read(record);
    expect((await house.run('choose den floor open --by owner')).code).toBe(0);
    expect(house.read(den)).toContain('    considering:\n      - oak\n      - pine\n---');
    expect(house.read(record)).toBe(set);
  });

  test('goes into the room, as a selection of its own, where one of them chooses for itself', async () => {
    const [set, other, before] = [house.read(record), house.read(study), house.read(den)];
    const { total } = JSON.parse((await house.run('alternatives one --json')).out) as { readonly total: number };
    expect((await house.run('take-over one --by owner')).code).toBe(0);
    const own = `selections:\n  - at: floor\n    category: floor\n    standard: oak\n    considering:\n      - oak\n      - pine\n${chosen('    ')}`;
    expect(house.read(den)).toBe(before.replace(/(?=^---\n(?!name))/mu, own));
    expect([house.read(record), house.read(study)]).toEqual([set, other]);
    const book = JSON.parse((await house.run('build --json')).out) as {
      readonly selections: readonly object[];
      readonly money: { readonly today: number };
    };
    expect(book.money.today).toBe(total);
    expect(book.selections).toContainEqual(expect.objectContaining({ id: 'den/floor/floor', chosen: 'pine' }));
    expect(book.selections).toContainEqual(
      expect.objectContaining({ id: 'study/floor/floor', finishSet: 'Rooms to work in', state: 'open' }),
    );
    // It is taken away there, and the set stays as it is.
    const [chosenHere, chosenInSet] = [house.read(den), house.read(record)];
    expect((await house.run('choose den floor open --by owner')).code).toBe(0);
    expect(house.read(den)).toBe(chosenHere.replace(chosen('    '), ''));
    expect(house.read(record)).toBe(chosenInSet);
    writeFileSync(join(house.dir, den), chosenHere);
    // A second choice there stands after the first.
    house.edit('content/alternatives/one.md', 'den/floor/floor: pine', 'den/floor/floor: oak');
    house.commit('Oak after all');
    expect((await house.run('take-over one --by owner')).code).toBe(0);
    expect(house.read(den)).toContain('chosen: oak\n');
  });
});
