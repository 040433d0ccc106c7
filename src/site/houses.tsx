import { render } from 'preact-render-to-string';
import { printDay, type IsoDate } from '../base/units/index.js';
import type { HouseBlock } from '../sheet/index.js';
import { TableHtml } from '../write/index.js';
import { ownAssets } from './assets.js';
import { Shell } from './shell.js';

const [start, lists] = ['index.html', 'lists.js'];

/** One page over many houses, with all that it needs to open from a disk: path with / → content. `link` leads from the page to a house's book by the
 *  house's folder; undefined where there is none. */
export async function housesFiles(
  table: HouseBlock,
  on: IsoDate,
  link: (folder: string) => string | undefined,
): Promise<Map<string, Uint8Array | string>> {
  const files = new Map<string, Uint8Array | string>();
  for (const [path, content] of await ownAssets('book', [lists])) files.set(`assets/${path}`, content);
  const page = (
    <Shell
      title="Houses"
      home={{ name: 'Houses', path: start, beside: `as of ${printDay(on)}` }}
      index={[]}
      layout="row"
      of="Pages"
      current={() => undefined}
      link={(path) => path}
      scripts={[`assets/${lists}`]}
      sheet="sheet-houses"
    >
      <h1>{table.caption}</h1>
      <div data-list="always">
        <TableHtml table={table} links={({ id }) => link(id)} quietCaption />
      </div>
    </Shell>
  );
  return files.set(start, `<!DOCTYPE html>\n${render(page)}\n`);
}
