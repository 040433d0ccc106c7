import type { VNode } from 'preact';
import { copyWords, sheetAddress } from '../../handout/index.js';
import { printDay, shortDigest } from '../../base/units/index.js';
import { useHandout, useHandoutLink } from './context.js';
import { currentAddress } from './current.js';
import { handoutPaths, roomPath } from './paths.js';
import { LookButton, MenuButton } from '../parts/buttons.js';
import { styleFile } from '../assets.js';

export interface HandoutPage {
  /** Path in the handout's folder: `rooms/study.html`. */
  readonly path: string;
  readonly title: string;
  readonly content: () => VNode;
}

/** A whole page of a handout: head, the standing of this copy, contents, the page itself and its stamp. */
export function HandoutFrame({ page }: { page: HandoutPage }): VNode {
  const { cover, changes } = useHandout();
  const link = useHandoutLink();
  const { stamp, trade } = cover;
  const current = currentAddress(cover);
  return (
    <html
      lang="en"
      data-trade={trade.slug}
      data-job={cover.job}
      data-issue={stamp?.number}
      data-day={stamp?.date}
      data-digest={stamp?.digest}
      data-last={stamp ? undefined : changes?.since.number}
      data-current={current}
      data-language={current === undefined ? undefined : cover.language}
    >
      <head>
        <meta charset="utf-8" />
        <meta http-equiv="Content-Security-Policy" content={policy(current)} />
        <title>{`${page.title} – ${trade.name}, ${cover.house}`}</title>
        <meta name="viewport" content="width=device-width, initial-scale=1" />
        <meta name="color-scheme" content="light dark" />
        <meta name="robots" content="noindex" />
        <meta name="referrer" content="no-referrer" />
        <link rel="icon" href="data:," />
        <link rel="stylesheet" href={link(styleFile)} />
        <script src={link('assets/theme.js')} />
        <script src={link('assets/handout.js')} defer />
      </head>
      <body class="with-column">
        <a class="skip" href="#page">
          Skip to the text
        </a>
        <header class="top">
          <p class="top-house">
            <a href={link(handoutPaths.start)}>{trade.name}</a>
            <span class="top-beside">
              {cover.house}, job {cover.job}
            </span>
          </p>
          <a class="tool" href={link(`${trade.slug}.pdf`)}>
            PDF
          </a>
          <MenuButton />
          <Contents page={page} />
        </header>
        <main id="page" class="sheet" tabIndex={-1}>
          <StandingLine isFirst={page.path === handoutPaths.start} />
          {page.content()}
        </main>
        <Stamp title={page.title} />
      </body>
    </html>
  );
}

/** Nothing is loaded but the folder's own files and, when the house names its site, the one image that says which issue is current; no script from
 *  anywhere else. */
function policy(current: string | undefined): string {
  return [
    "default-src 'none'",
    "style-src 'self' file: 'unsafe-inline'",
    "font-src 'self' file:",
    `img-src 'self' file: data:${current === undefined ? '' : ` ${current}`}`,
    "script-src 'self' file:",
    "base-uri 'none'",
    "form-action 'none'",
  ].join('; ');
}

function Contents({ page }: { page: HandoutPage }): VNode {
  const { rooms, schedules } = useHandout();
  const link = useHandoutLink();
  const chapters = [
    [handoutPaths.start, 'Card and scope'],
    ...(schedules.length > 0 ? ([[handoutPaths.schedules, 'Schedules']] as const) : []),
    [handoutPaths.products, 'Products and order list'],
    [handoutPaths.specification, 'Specification'],
    [handoutPaths.asBuilt, 'As built'],
  ] as const;
  const entry = (path: string, number: string, title: string) => (
    <li>
      <a href={link(path)} aria-current={path === page.path ? 'page' : undefined}>
        {number !== '' && <span class="index-number">{number}</span>} {title}
      </a>
    </li>
  );
  return (
    <nav id="index" class="index" aria-label="Contents">
      <ol>
        {chapters.slice(0, 1).map(([path, title]) => entry(path, '', title))}
        {rooms.map((room) => entry(roomPath(room), room.number, room.name))}
        {chapters.slice(1).map(([path, title]) => entry(path, '', title))}
      </ol>
    </nav>
  );
}

/** Which copy this is, and what is to be done with it. The script beside writes what the house's site says, if it can ask, and on the first page what
 *  becomes of the printed sheet whose code opened it. */
function StandingLine({ isFirst }: { isFirst: boolean }): VNode {
  const handout = useHandout();
  const { issue, words, limit, doubt } = copyWords(handout);
  return (
    <div class={limit === '' ? 'standing' : 'standing limited'}>
      <p class="standing-copy">
        <strong>{issue}.</strong> {words}. {limit}
      </p>
      <p data-currency="" role="status">
        {doubt}
      </p>
      {isFirst && sheetAddress(handout.cover) !== undefined && <p class="standing-sheet" data-sheet="" role="status" />}
    </div>
  );
}

function Stamp({ title }: { title: string }): VNode {
  const { cover } = useHandout();
  const { stamp } = cover;
  const cells = [
    { name: 'tb-house', label: 'House', text: cover.house },
    { name: 'tb-place', label: 'Trade', text: cover.trade.name },
    { name: 'tb-job', label: 'Job', text: cover.job },
    { name: 'tb-date', label: stamp ? 'Date' : 'Records of', text: printDay(stamp?.date ?? cover.on) },
    { name: 'tb-issue', label: 'Issue', text: stamp ? `${stamp.number}, for ${stamp.purpose}` : 'Not issued' },
    { name: 'tb-title', label: 'Sheet', text: title },
    { name: 'tb-digest', label: 'Digest', text: stamp ? shortDigest(stamp.digest) : 'none' },
  ];
  return (
    <footer class="foot">
      <h2 class="for-the-ear">Stamp</h2>
      <dl>
        {cells.map(({ name, label, text }) => (
          <div class={name}>
            <dt>{label}</dt>
            <dd>{text}</dd>
          </div>
        ))}
      </dl>
      <LookButton />
    </footer>
  );
}
