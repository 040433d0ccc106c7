import { readdir, readFile } from 'node:fs/promises';
import { Ajv2020 } from 'ajv/dist/2020.js';
import { describe, expect, test } from 'vitest';
import { notations } from '../../src/core/records/index.js';
import { readHouseFolder } from '../../src/disk/store/index.js';
import { explain, referencePages } from '../../src/manual/index.js';
import { exampleOf, examplesIn } from '../../src/manual/examples.js';
import { groups } from '../../src/manual/groups.js';

const { files } = await readHouseFolder('.');
const houses = { own: files, other: [] };
const all = groups();
const keys = all.flatMap((group) =>
  group.keys.map((key) => ({ group, key, name: `${group.name}.${key.path.join('.')}` })),
);

describe('the reference', () => {
  test('is as the schemas and the demo have it now: npm run reference writes it', async () => {
    const pages = referencePages(files);
    for (const { name, markdown } of pages)
      expect(await readFile(`docs/reference/${name}.md`, 'utf8'), `${name}: run npm run reference`).toBe(markdown);
    expect((await readdir('docs/reference')).sort()).toEqual(pages.map(({ name }) => `${name}.md`).sort());
  });

  test('tells of every key what it says and who reads it', () => {
    expect(keys.filter(({ key }) => key.meaning === '').map(({ name }) => name)).toEqual([]);
    expect(keys.filter(({ key }) => key.readBy.length === 0).map(({ name }) => name)).toEqual([]);
  });

  test('has an example of every value that people write', () => {
    const find = examplesIn(files);
    const without = keys.filter(
      ({ group, key }) =>
        !group.place.isMade &&
        key.leadsTo === undefined &&
        !key.form.includes('a group') &&
        exampleOf(key, find(group, key)) === undefined,
    );
    expect(without.map(({ name }) => name)).toEqual([]);
  });

  test('knows every key that the demo writes', () => {
    const find = examplesIn(files);
    const room = files.find(({ path }) => path === 'content/rooms/great-room.md');
    expect(room).toBeDefined();
    const used = keys.filter(({ group, key }) => find(group, key).length > 0).map(({ name }) => name);
    expect(used).toEqual(expect.arrayContaining(['room.ceiling', 'ceiling.pitch', 'chimney-breast.firebox.width']));
  });

  test('gives examples that the schema itself takes', async () => {
    const ajv = new Ajv2020({ strict: false, allErrors: true });
    for (const [name, { read }] of Object.entries(notations)) ajv.addFormat(name, (text: string) => read(text).ok);
    const names = (await readdir('schemas')).filter((name) => name !== 'book.schema.json');
    const schemas = await Promise.all(
      names.map(async (name) => JSON.parse(await readFile(`schemas/${name}`, 'utf8')) as object),
    );
    schemas.forEach((schema) => ajv.addSchema(schema));
    let asked = 0;
    const visit = (schema: unknown, pointer: string): void => {
      if (typeof schema !== 'object' || schema === null) return;
      if ('examples' in schema && Array.isArray(schema.examples)) {
        for (const example of schema.examples as unknown[]) {
          asked += 1;
          expect(ajv.validate(pointer, example), `${JSON.stringify(example)} at ${pointer}`).toBe(true);
        }
      }
      for (const [name, part] of Object.entries(schema)) {
        visit(part, `${pointer}/${name.replaceAll('~', '~0').replaceAll('/', '~1')}`);
      }
    };
    schemas.forEach((schema) => visit(schema, `${'$id' in schema ? String(schema.$id) : ''}#`));
    expect(asked).toBeGreaterThan(70);
  });
});

describe('explain', () => {
  const named = (question: string): readonly string[] => {
    const found = explain(question, houses);
    return found.is === 'keys' ? found.keys.map(({ name }) => name) : [found.is];
  };

  test('a key by its group, by a record, or by itself', () => {
    expect(named('option.waste')).toEqual(['option.waste']);
    expect(named('ceiling-board.waste')).toEqual(['option.waste']);
    expect(named('great-room.use')).toEqual(['room.use']);
    expect(named('chosen-by')).toEqual(['room.chosen-by', 'selection.chosen-by']);
    expect(named('stair.going')).toEqual(['stair.going']);
    expect(named('supplies.amount')).toEqual(['category.measure.supplies.amount']);
  });

  test('shows what the house says there, of the named record alone', () => {
    const found = explain('ceiling-board.waste', houses);
    if (found.is !== 'keys') throw new Error('no key was found');
    expect(found.keys[0]?.here.length).toBeGreaterThan(2);
    for (const { file } of found.keys[0]?.here ?? []) expect(file).toMatch(/^content\/options\/ceiling-board\//u);
    expect(explain('great-room.use', houses)).toMatchObject({
      keys: [{ here: [{ file: 'content/rooms/great-room.md', text: 'living' }] }],
    });
  });

  test('an attribute that a category asks for, and not one of its name elsewhere', () => {
    expect(explain('ceiling-board.face', houses)).toMatchObject({
      keys: [{ name: 'ceiling-board.face', isNeeded: true, form: 'length' }],
    });
    const [face] = [explain('ceiling-board.face', houses)].flatMap((found) => (found.is === 'keys' ? found.keys : []));
    expect(face?.meaning).toBe('Face coverage.');
    expect(explain('paint.coats', houses)).toMatchObject({
      keys: [
        {
          meaning: expect.stringMatching(
            /^Coats over primer\. What is bought is multiplied by it.*labor is not/u,
          ) as string,
        },
      ],
    });
  });

  test('an attribute by its name alone, and of many that have it which may be meant', () => {
    expect(named('coverage')).toEqual(['paint.coverage']);
    expect(explain('coverag', houses)).toEqual({ is: 'unknown', nearest: 'coverage' });
    const faces = explain('face', houses);
    expect(faces).toMatchObject({ is: 'several' });
    const names = faces.is === 'several' ? faces.keys.map(({ name }) => name) : [];
    expect(names).toEqual(expect.arrayContaining(['ceiling-board.face', 'floor.face', 'interior-door.face']));
    expect(explain('name', houses)).toMatchObject({ is: 'several' });
    expect(explain('floor.coverage', houses)).toMatchObject({ is: 'unknown' });
  });

  test('a whole group, and what was perhaps meant', () => {
    expect(named('room')).toEqual(['group']);
    expect(explain('opening.swng', houses)).toEqual({ is: 'unknown', nearest: 'opening.swing' });
    expect(explain('zzzzzz', houses)).toEqual({ is: 'unknown' });
    for (const nonsense of ['', '.', '..', 'room.', '<name>', 'constructor', '__proto__', 'room.toString'])
      expect(() => explain(nonsense, houses)).not.toThrow();
  });
});
