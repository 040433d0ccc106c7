import { readFileSync, statSync } from 'node:fs';
import { dirname, join, normalize } from 'node:path';
import { HtmlValidate, StaticConfigLoader, type HtmlElement, type Plugin } from 'html-validate';

/** Links and sources of pages in a folder that lead out of it, to no file, or to an anchor that is not there. */
export function brokenLinks(folder: string, pages: readonly string[]): string[] {
  const read = (page: string): string => readFileSync(join(folder, page), 'utf8');
  const exists = (path: string): boolean => statSync(join(folder, path), { throwIfNoEntry: false })?.isFile() ?? false;
  const ids = new Map(
    pages.map((page) => [page, new Set([...read(page).matchAll(/ id="([^"]+)"/g)].map((match) => match[1]))]),
  );
  const broken: string[] = [];
  for (const page of pages) {
    // A link that a person wrote may lead to the web; it says so, and nothing is loaded from there.
    const own = read(page).replace(/<a href="(?:https?:|mailto:)[^"]*" rel="noreferrer">/g, '');
    for (const [, raw = ''] of own.matchAll(/ (?:href|src|action)="([^"]*)"/g)) {
      if (raw === 'data:,') continue;
      const [path = '', anchor] = raw.split('#');
      const target = path === '' ? page : normalize(join(dirname(page), path)).replaceAll('\\', '/');
      if (path.startsWith('/') || /^[a-z]+:/.test(path) || target.startsWith('..'))
        broken.push(`${page}: ${raw} leaves the folder`);
      else if (!exists(target)) broken.push(`${page}: ${raw}`);
      else if (anchor !== undefined && !ids.get(target)?.has(anchor)) broken.push(`${page}: ${raw} has no anchor`);
    }
  }
  return broken;
}

/** Rules that hold for every page are worked out once. */
class OneConfig extends StaticConfigLoader {
  #config: ReturnType<StaticConfigLoader['getConfigFor']> | undefined;

  override getConfigFor(page: string): ReturnType<StaticConfigLoader['getConfigFor']> {
    return (this.#config ??= super.getConfigFor(page));
  }
}

/** Rules ask a finished page for its elements by name, some for each label: they are put in order by name once. By itself the library walks the
 *  page each time, which took two fifths of all. */
const byName: Plugin = {
  name: 'elements-by-name',
  setup(_source, events) {
    events.on('dom:ready', (_event, { document: { root } }) => {
      const all = descendants(root);
      const named = new Map([['*', all]]);
      for (const element of all) {
        const name = element.tagName.toLowerCase();
        const before = named.get(name);
        if (before) before.push(element);
        else named.set(name, [element]);
      }
      root.getElementsByTagName = (name: string) => named.get(name.toLowerCase()) ?? [];
    });
  },
};

/** In the order of the page. */
function descendants(element: HtmlElement, found: HtmlElement[] = []): HtmlElement[] {
  for (const child of element.childElements) {
    found.push(child);
    descendants(child, found);
  }
  return found;
}

const validator = new HtmlValidate(
  new OneConfig({
    extends: ['html-validate:recommended'],
    plugins: [byName],
    rules: {
      // Written by the renderer, not by people.
      'no-inline-style': 'off',
      'void-style': 'off',
      'long-title': 'off',
      'no-trailing-whitespace': 'off',
      // Focus goes to the region itself so that arrow keys scroll it.
      'prefer-native-element': 'off',
    },
  }),
);

/** What is not valid HTML in pages of a folder. */
export async function invalidHtml(folder: string, pages: readonly string[]): Promise<string[]> {
  const failures: string[] = [];
  for (const page of pages) {
    const report = await validator.validateString(readFileSync(join(folder, page), 'utf8'), page);
    for (const message of report.results[0]?.messages ?? []) {
      failures.push(`${page}:${message.line}:${message.column} ${message.ruleId} ${message.message}`);
    }
  }
  return failures;
}
