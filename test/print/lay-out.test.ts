import { join } from 'node:path';
import { tmpdir } from 'node:os';
import { NodeCompiler } from '@myriaddreamin/typst-ts-node-compiler';
import { expect, test } from 'vitest';
import { layOut } from '../../src/print/lay-out.js';

/** How many marks a template has in the end. Nothing is written: the template is put beside no file. */
function marksOf(template: string): number {
  const workspace = tmpdir();
  const compiler = NodeCompiler.create({ workspace });
  const path = join(workspace, 'restless.typ');
  compiler.addSource(path, template);
  const { result } = layOut(compiler, path);
  if (!result) throw new Error('the template does not compile');
  return (compiler.query(result, { selector: '<mark>' }) as readonly unknown[]).length;
}

const unless = (isLoose: string): string => `
  #context {
    let found = query(<mark>).len()
    for _ in range(${isLoose}) [#metadata(none) <mark>]
  }`;
const loose = 'sys.inputs.at("loose", default: "") != ""';

test('a layout that comes to no rest is laid out loose', () => {
  expect(marksOf(unless(`if ${loose} { 1 } else { found + 2 }`))).toBe(1);
});

test('a layout that comes to rest is left as it is', () => {
  expect(marksOf(unless(`if ${loose} { 1 } else { calc.min(found + 1, 3) }`))).toBe(3);
});
