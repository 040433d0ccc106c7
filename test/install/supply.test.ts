import { readFileSync } from 'node:fs';
import { join } from 'node:path';
import { expect, test } from 'vitest';

interface Locked {
  readonly resolved?: string;
  readonly integrity?: string;
  readonly dev?: boolean;
  readonly inBundle?: boolean;
  readonly hasInstallScript?: boolean;
}

const { packages } = JSON.parse(readFileSync(join(import.meta.dirname, '../../package-lock.json'), 'utf8')) as {
  readonly packages: Readonly<Record<string, Locked>>;
};
const all = Object.entries(packages).filter(([path]) => path !== '');
const pathsOf = (are: (one: Locked) => boolean): readonly string[] =>
  all.filter(([, one]) => are(one)).map(([path]) => path);

test('every package is held to what it was by its digest', () => {
  expect(all.length).toBeGreaterThan(100);
  expect(pathsOf(({ integrity = '', inBundle }) => !integrity.startsWith('sha512-') && inBundle !== true)).toEqual([]);
});

test('nothing comes from elsewhere than the registry that npm is set to', () => {
  expect(pathsOf(({ resolved, inBundle }) => resolved !== undefined && inBundle !== true)).toEqual([]);
});

test('nothing that the program needs to run does anything when it is installed', () => {
  expect(pathsOf(({ dev, hasInstallScript }) => dev !== true && hasInstallScript === true)).toEqual([]);
});
