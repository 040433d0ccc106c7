/** Writes docs/reference/, what every key of every record means, from the schemas, with examples from the demo house. */
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { readHouseFolder } from '../src/disk/store/index.js';
import { referencePages } from '../src/manual/index.js';

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const { files } = await readHouseFolder(root);
await mkdir(join(root, 'docs/reference'), { recursive: true });
for (const { name, markdown } of referencePages(files)) {
  await writeFile(join(root, 'docs/reference', `${name}.md`), markdown);
}
