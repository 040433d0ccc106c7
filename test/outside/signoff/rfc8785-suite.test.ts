import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { join } from 'node:path';
import { expect } from 'vitest';
import { canonicalJson } from '../../../src/signoff/index.js';
import { published } from '../published.js';

/** The test files of the specification's author, as they come with the library. */
const suite = join(createRequire(import.meta.url).resolve('canonicalize/package.json'), '..', 'test', 'testdata');

const source =
  "The RFC 8785 author's test files, https://github.com/cyberphone/json-canonicalization/tree/master/testdata, as shipped with canonicalize 2.1.0";

for (const name of ['arrays', 'french', 'structures', 'values', 'weird']) {
  published({ what: `the file ${name} becomes the bytes that stand beside it`, source, mark: 'S2' }, () => {
    const [input, output] = ['input', 'output'].map((kind) => readFileSync(join(suite, kind, `${name}.json`), 'utf8'));
    expect(canonicalJson(JSON.parse(input ?? ''))).toBe(output?.trimEnd());
  });
}

published(
  {
    what: 'letters are not normalized: a letter with two marks stays as it was written',
    source: 'https://github.com/cyberphone/json-canonicalization/blob/master/testdata/output/unicode.json',
    mark: 'S',
  },
  () => {
    const text = '{"Unnormalized Unicode":"\u1e0d\u0307"}';
    expect(canonicalJson(JSON.parse(text))).toBe(text);
  },
);
