/** Writes LICENCES.md, which goes with the package: every package that is installed with it, and the typefaces in it, each with version and
 *  licence. Fails, and names them, when one has no licence, or one that asks for more than its notice. Made when the package is. */
import { readFileSync, writeFileSync } from 'node:fs';
import { dirname, join } from 'node:path';
import process from 'node:process';
import { fileURLToPath } from 'node:url';
import { isPermissive } from './licence-terms.js';

interface Locked {
  readonly version: string;
  readonly license?: string;
  /** Only needed to make and test the program. */
  readonly dev?: boolean;
}

const root = dirname(dirname(fileURLToPath(import.meta.url)));
const { packages } = JSON.parse(readFileSync(join(root, 'package-lock.json'), 'utf8')) as {
  readonly packages: Readonly<Record<string, Locked>>;
};
const all = Object.entries(packages).flatMap(([path, { version, license = 'none', dev }]) => {
  const [, name] = /(?:^|\/)node_modules\/((?:@[^/]+\/)?[^/]+)$/u.exec(path) ?? [];
  return name === undefined ? [] : [{ name, version, licence: license, dev: dev === true }];
});
const typefaces = all.filter(({ name }) => name.startsWith('@expo-google-fonts/'));
const installed = all.filter(({ dev }) => !dev);
const refused = installed.filter(({ licence }) => !isPermissive(licence));

for (const { name, version, licence } of refused)
  console.error(
    `${name} ${version}: licence '${licence}' is not known to be permissive. Add it to licence-terms.ts, or leave it out.`,
  );
if (refused.length > 0) process.exit(1);

const row = ({ name, version, licence }: (typeof all)[number]): string => `| ${name} | ${version} | ${licence} |`;
const rows = [...new Set(installed.map(row))].sort();
writeFileSync(
  join(root, 'LICENCES.md'),
  `# Licences

Bookmatch itself is under the [MIT licence](LICENSE). Its typefaces are under the SIL Open Font License 1.1, whose text lies beside them in
\`fonts/\` and beside every book's own:

| typeface | from | version |
|---|---|---|
${typefaces.map(({ name, version }) => `| ${name.endsWith('spectral') ? 'Spectral' : 'Public Sans'} | ${name} | ${version} |`).join('\n')}

Packages that are installed with it; some of them are for one kind of machine alone. Each has its licence's text in its own folder.

| package | version | licence |
|---|---|---|
${rows.join('\n')}
`,
);
console.log(`LICENCES.md  ${rows.length} packages, all permissive`);
