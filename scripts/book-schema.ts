import { writeFileSync } from 'node:fs';
import { createGenerator } from 'ts-json-schema-generator';

/** Writes schemas/book.schema.json from the Book's types, so that the two cannot differ. It is made at install and
 *  before the tests, and is not committed. */
const path = 'schemas/book.schema.json';

const generated = createGenerator({
  path: 'src/core/book/book.ts',
  tsconfig: 'tsconfig.json',
  type: 'Book',
  topRef: false,
  skipTypeCheck: true,
  additionalProperties: false,
}).createSchema('Book');

const schema = {
  ...generated,
  $schema: 'https://json-schema.org/draft/2020-12/schema',
  $id: 'https://bookmatch.example/schemas/book.schema.json',
  title: 'Book',
};
// 2020-12 keeps its named parts under $defs.
const text = `${JSON.stringify(schema, null, 2).replaceAll('#/definitions/', '#/$defs/').replace('"definitions":', '"$defs":')}\n`;

writeFileSync(path, text);
