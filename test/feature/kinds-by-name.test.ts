import { readFileSync, readdirSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';
import { featureKinds } from '../../src/core/feature/index.js';

test('drawings know no kind by name', () => {
  const draw = join(import.meta.dirname, '../../src/draw');
  const sources = readdirSync(draw, { recursive: true, encoding: 'utf8' }).filter((path) => path.endsWith('.ts'));
  const named = sources.filter((path) => {
    const text = readFileSync(join(draw, path), 'utf8');
    return featureKinds.some(({ kind }) => text.includes(`'${kind}'`)) && !path.startsWith('swatch/');
  });
  expect(named).toEqual([]);
});
