import { readdir, readFile } from 'node:fs/promises';
import { join } from 'node:path';
import Eleventy, { type UserConfig } from '@11ty/eleventy';
import { render } from 'preact-render-to-string';
import { localeOf, type Handout } from '../../handout/index.js';
import { inLocale } from '../../base/units/index.js';
import { programPath } from '../../disk/program/index.js';
import { ownAssets, pagesRoot } from '../assets.js';
import { awayFromRoot } from '../away-from-root.js';
import { checkPath } from '../page.js';
import { virtualPages } from '../virtual-pages.js';
import { HandoutProvider } from './context.js';
import { HandoutFrame, type HandoutPage } from './frame.js';
import { handoutPaths, roomPath } from './paths.js';
import { AsBuiltPage, ProductsPage, SchedulesPage, SpecificationPage } from './reference-pages.js';
import { RoomPage } from './room-page.js';
import { StartPage } from './start-page.js';

const own = programPath('src/site/handout/assets');

/** The files of handouts' folders: path with / → content, each below the slug of its trade. Pages, styles, fonts and scripts,
 *  so that a folder alone opens from a disk; nothing links out of it. The PDF that the pages name is put beside them. */
export async function handoutFolders(handouts: readonly Handout[]): Promise<Map<string, Uint8Array | string>> {
  const files = new Map<string, Uint8Array | string>();
  const assets = await readAssets();
  // Nothing is written by Eleventy: the caller replaces a folder as a whole.
  const pages = await awayFromRoot(() => {
    const eleventy = new Eleventy(pagesRoot, 'unwritten', {
      quietMode: true,
      configPath: false,
      config: handoutConfig(handouts),
    });
    eleventy.disableLogger();
    return eleventy.toJSON();
  });
  for (const { outputPath, content } of pages) files.set(outputPath.replace(/^(?:\.\/)?unwritten\//u, ''), content);
  for (const { cover } of handouts) {
    for (const [path, content] of assets) files.set(`${cover.trade.slug}/assets/${path}`, content);
  }
  return files;
}

/** Eleventy for handouts: each page a virtual template, held by closure. */
function handoutConfig(handouts: readonly Handout[]): (config: UserConfig) => void {
  return (config) => {
    virtualPages(config);
    for (const handout of handouts) {
      for (const page of pagesOf(handout)) {
        const path = checkPath(`${handout.cover.trade.slug}/${page.path}`);
        config.addTemplate(`${path}.11ty.js`, {
          data: () => ({ permalink: path, eleventyExcludeFromCollections: true }),
          render: () => renderPage(page, handout),
        });
      }
    }
  };
}

function pagesOf(handout: Handout): readonly HandoutPage[] {
  return [
    { path: handoutPaths.start, title: 'Card and scope', content: () => <StartPage /> },
    ...handout.rooms.map((room) => ({
      path: roomPath(room),
      title: `${room.number} ${room.name}`,
      content: () => <RoomPage room={room} />,
    })),
    ...(handout.schedules.length > 0
      ? [{ path: handoutPaths.schedules, title: 'Schedules', content: () => <SchedulesPage /> }]
      : []),
    { path: handoutPaths.products, title: 'Products and order list', content: () => <ProductsPage /> },
    { path: handoutPaths.specification, title: 'Specification', content: () => <SpecificationPage /> },
    { path: handoutPaths.asBuilt, title: 'As built', content: () => <AsBuiltPage /> },
  ];
}

function renderPage(page: HandoutPage, handout: Handout): string {
  const html = inLocale(localeOf(handout), () =>
    render(
      <HandoutProvider value={{ handout, path: page.path }}>
        <HandoutFrame page={page} />
      </HandoutProvider>,
    ),
  );
  return `<!DOCTYPE html>\n${html}\n`;
}

/** What stands beside the pages of every folder, and what is the handouts' own. */
async function readAssets(): Promise<Map<string, Uint8Array>> {
  const files = await ownAssets('handout');
  for (const name of await readdir(own)) files.set(name, await readFile(join(own, name)));
  return files;
}
