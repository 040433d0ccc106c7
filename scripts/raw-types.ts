/** Writes src/core/records/raw/*.ts, the types of records as written, from schemas/. They are made at install and before the tests,
 *  and are not committed. */
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { compileFromFile } from 'json-schema-to-typescript';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const records = [
  'house',
  'room',
  'option',
  'category',
  'trade',
  'alternative',
  'price-list',
  'issue',
  'change-order',
] as const;
const banner = '/* Made from schemas/ by scripts/raw-types.ts: change the schema, then run `npm run schemas`. */';

const folder = join(root, 'src/core/records/raw');
await mkdir(folder, { recursive: true });
for (const record of records) await writeFile(join(folder, `${record}.ts`), await typesOf(record));

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
