import type { ComponentChildren } from 'preact';
import { render } from 'preact-render-to-string';
import { bookSet, relativeLink, Shell } from '../site/index.js';
import { deskAssets, deskEntry, deskPaths, deskTitles } from './paths.js';
import { SaidWords, type LastDone, type Said } from './said.js';
import { inLocaleOf, type Standing } from './standing.js';
import { markOf, type DeskStart } from './start.js';

/** What pages of the desk are made with. */
export interface DeskContext {
  readonly standing: Standing;
  readonly start: DeskStart;
  readonly said?: Said;
  /** What can be taken back. */
  readonly undo?: LastDone;
  /** Records that are written and not committed, or why git does not say. */
  readonly changed?: readonly string[];
}

/** A whole page of the desk's own. */
export function deskPage(
  path: string,
  title: string,
  { standing, said, start }: DeskContext,
  content: ComponentChildren,
  record?: string,
): string {
  const { view } = standing;
  const link = (to: string): string => relativeLink(path, to);
  const pages = [
    { id: 'home', title: 'What to do', path: deskPaths.home },
    ...(['add', 'walk', 'slip', 'agree'] as const).map((id) => ({ id, title: deskTitles[id], path: deskPaths[id] })),
  ];
  const desk = { ...deskEntry, pages };
  const html = inLocaleOf(standing, () =>
    render(
      <Shell
        title={`${title} – desk`}
        home={{ name: view?.book.house.name ?? 'The house', path: 'index.html', beside: 'desk' }}
        index={[desk, ...(view ? bookSet(view).index : [])]}
        layout="row"
        of="The book"
        current={(entry) => (entry === desk ? 'true' : entry.path === path ? 'page' : undefined)}
        link={link}
        styles={[deskAssets.style]}
        scripts={deskAssets.scripts}
        sheet="sheet-desk"
      >
        <div {...markOf(start, standing)} class="desk-page">
          <h1 class={title.includes('/') ? 'file-name' : undefined}>{title}</h1>
          {said && (
            <SaidWords
              said={said}
              page={{ secret: start.secret, back: path, ...(record !== undefined && { record }) }}
            />
          )}
          {content}
        </div>
      </Shell>,
    ),
  );
  return `<!DOCTYPE html>\n${html}\n`;
}

/** So that a page says what it has to where nothing else of the desk is to be had. */
const plainStyle =
  ':root{color-scheme:light dark}body{max-width:36rem;margin:12vh auto;padding:0 1.5rem;font:1.0625rem/1.5 system-ui,sans-serif}h1{font-size:1.5rem}p{white-space:pre-line;overflow-wrap:anywhere}';

/** A page that says one thing, and leads back to the desk; `isShut`: to whoever has no key of it. */
export function plainPage(title: string, words: string, isShut = false): string {
  return `<!DOCTYPE html>\n${render(
    <html lang="en">
      <head>
        <meta charset="utf-8" />
        <title>{title}</title>
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <style dangerouslySetInnerHTML={{ __html: plainStyle }} />
      </head>
      <body>
        <h1>{title}</h1>
        <p>{words}</p>
        {!isShut && (
          <p>
            <a href={`/${deskPaths.home}`}>To the desk</a>
          </p>
        )}
      </body>
    </html>,
  )}\n`;
}
