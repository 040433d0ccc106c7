/** Writes src/records/raw/*.ts, the types of records as written, from schemas/. With --check writes nothing and exits 1 when
 *  a file is stale. */
import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { compileFromFile } from 'json-schema-to-typescript';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const records = ['house', 'room', 'option', 'category', 'trade', 'issue', 'change-order'] as const;
const banner =
  '/* Made from schemas/ by scripts/raw-types.ts: change the schema, then run `npx tsx scripts/raw-types.ts`. */';

const stale: string[] = [];
for (const record of records) {
  const path = join(root, 'src/records/raw', `${record}.ts`);
  const made = await typesOf(record);
  if (made === (await readFile(path, 'utf8').catch(() => ''))) continue;
  stale.push(path);
}

if (process.argv.includes('--check')) {
  for (const path of stale) console.error(`${path} is stale: run npx tsx scripts/raw-types.ts`);
  process.exitCode = stale.length > 0 ? 1 : 0;
} else {
  await mkdir(join(root, 'src/records/raw'), { recursive: true });
  for (const record of records) await writeFile(join(root, 'src/records/raw', `${record}.ts`), await typesOf(record));
}

async function typesOf(record: string): Promise<string> {
  return compileFromFile(join(root, 'schemas', `${record}.schema.json`), {
    additionalProperties: false,
    bannerComment: banner,
    cwd: join(root, 'schemas'),
    customName: (schema) => (schema.title === undefined ? undefined : `Raw${schema.title}`),
    ignoreMinAndMaxItems: true,
    style: { singleQuote: true, printWidth: 120 },
    unknownAny: true,
  });
}
