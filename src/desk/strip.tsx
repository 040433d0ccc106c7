import type { VNode } from 'preact';
import { errorsIn } from '../base/problem/index.js';
import { counted, printDay } from '../base/units/index.js';
import { optionPath, recordPath, relativeLink, roomPath, type Desk, type Page, type View } from '../site/index.js';
import type { BookSelection } from '../core/book/index.js';
import { tryFields } from '../try/index.js';
import { askConsider } from './ask-consider.js';
import { askRemark, askRoomNote } from './ask-note.js';
import { asksForPhoto } from './ask-photo.js';
import { askChoice } from './ask-place.js';
import { AskForm, SecretField } from './form.js';
import { LoneChoices, loneChoices } from './lone-choices.js';
import { deskAssets, deskEntry, deskPaths } from './paths.js';
import type { Standing } from './standing.js';
import { markOf, type DeskStart } from './start.js';

/** What the desk adds to a page of the book. */
export function deskOn(page: Page, standing: Standing, start: DeskStart): Desk {
  const { view } = standing;
  const { secret } = start;
  const selection = view?.book.selections.find((one) => view.choicePath(one) === page.path);
  return {
    strip: <Strip page={page} standing={standing} start={start} selection={selection} />,
    entry: deskEntry,
    styles: [deskAssets.style],
    scripts: deskAssets.scripts,
    ...(selection && {
      choice: (
        <section class="desk" aria-label="Desk: choose">
          <AskForm
            ask={askChoice(selection, standing)}
            secret={secret}
            link={(to) => relativeLink(page.path, to)}
            back={page.path}
          />
        </section>
      ),
    }),
  };
}

/** What stands above each page of the book. The words of what was done are set in by the server, since pages are kept. */
function Strip({
  page,
  standing,
  start,
  selection,
}: {
  page: Page;
  standing: Standing;
  start: DeskStart;
  selection: BookSelection | undefined;
}): VNode {
  const { view } = standing;
  const { secret } = start;
  const link = (to: string): string => relativeLink(page.path, to);
  const room = view?.book.rooms.find(({ slug }) => roomPath(slug) === page.path);
  const option = view?.book.options.find((one) => optionPath(one) === page.path);
  const folded = [
    selection && askConsider(selection, standing),
    selection && askRemark(selection),
    room && askRoomNote(room, standing),
    ...(option ? asksForPhoto(option) : []),
  ].filter((ask) => ask !== undefined);
  const source =
    view?.book.sources.find(({ path }) => recordPath(path) === page.path)?.path ??
    selection?.source ??
    recordBehind(page.path, view);
  return (
    <aside class="desk" aria-label="Desk" {...markOf(start, standing)}>
      <p class="desk-line">
        <a href={link(deskPaths.home)}>Desk</a>
        {source !== undefined && !source.startsWith('..') && (
          <a href={`${link(deskPaths.record)}?path=${encodeURIComponent(source)}`}>Edit {source}</a>
        )}
        <Soundness standing={standing} />
      </p>
      <div data-said="" />
      <form id={tryFields.taken} method="post" action={link('desk/do')} hidden>
        <SecretField secret={secret} back={deskPaths.slip} ask="slip" />
        <input type="hidden" name="slip" />
      </form>
      {folded.map((ask) => (
        <details>
          <summary>{ask.title}</summary>
          <AskForm ask={ask} secret={secret} link={link} back={page.path} />
        </details>
      ))}
      {view && room && (
        <LoneChoices
          selections={loneChoices(view, room.slug)}
          standing={standing}
          view={view}
          page={{ secret, link, back: page.path }}
        />
      )}
    </aside>
  );
}

export function Soundness({ standing: { problems, isEarlier, on } }: { standing: Standing }): VNode {
  const errors = errorsIn(problems).length;
  if (errors === 0) return <span>Computed for {printDay(on)}, as the records are.</span>;
  return (
    <strong>
      {counted(errors, 'error')} in the records{isEarlier && ': what you see is made of those before'}.
    </strong>
  );
}

/** The record that a page of a room or an option is made of. */
function recordBehind(path: string, view: View | undefined): string | undefined {
  const [kind, ...rest] = path.replace(/\.html$/u, '').split('/');
  if (kind === 'rooms') return view?.book.rooms.find(({ slug }) => slug === rest.join('/'))?.source;
  if (kind === 'options') return view?.book.options.find(({ id }) => id === rest.join('/'))?.source;
  return undefined;
}
