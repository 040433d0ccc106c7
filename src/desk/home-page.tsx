import type { VNode } from 'preact';
import { sortProblems } from '../base/problem/index.js';
import { lastIssue } from '../core/book/index.js';
import { byText, capital, printDay } from '../base/units/index.js';
import { relativeLink, roomPath, type View } from '../site/index.js';
import { choiceTitle } from '../table/index.js';
import { deskPage, type DeskContext } from './frame.js';
import { loneWords } from './lone-choices.js';
import { deskPaths, deskTitles } from './paths.js';
import { ProblemList } from './problems.js';
import { TakeBack, withoutNews } from './said.js';
import { sinceWords } from './since-page.js';
import { Soundness } from './strip.js';

/** What is to be decided next, what is wrong, what was done last. */
export function homePage(context: DeskContext): string {
  const { standing, start, undo, said } = context;
  const link = (to: string): string => relativeLink(deskPaths.home, to);
  const { view, problems } = standing;
  const issue = view && lastIssue(view.book);
  return deskPage(
    deskPaths.home,
    deskTitles.home,
    { ...context, ...(said && { said: withoutNews(said, ({ severity }) => severity === 'error') }) },
    <>
      <p>
        <Soundness standing={standing} />
      </p>
      {issue && (
        <p>
          <a href={link(deskPaths.since)}>{sinceWords(issue.number)}</a>
        </p>
      )}
      {undo !== undefined && said?.undo === undefined && (
        <section class="desk-last">
          <p>Last: {undo.what}</p>
          <TakeBack undo={undo} page={{ secret: start.secret, back: deskPaths.home }} />
        </section>
      )}
      {view && <NextChoices view={view} link={link} />}
      <ProblemList problems={sortProblems([...problems, ...standing.handouts()])} link={link} />
      {view && <EditList view={view} link={link} />}
    </>,
  );
}

function NextChoices({ view, link }: { view: View; link: (to: string) => string }): VNode {
  const open = view.book.selections
    .filter(({ state }) => state === 'open')
    .toSorted((a, b) => byText(a.decision.by, b.decision.by));
  return (
    <section>
      <h2>To be decided, by day</h2>
      {open.length === 0 && <p>Nothing is open.</p>}
      <ol class="plain-list">
        {open.map((selection) => {
          const path = view.choicePath(selection);
          return (
            <li>
              <a href={link(path ?? roomPath(selection.room))}>
                {view.roomName(selection.room)}: {choiceTitle(selection, view)}
              </a>{' '}
              by {printDay(selection.decision.by)}
              {selection.decision.state === 'late' && <strong> late</strong>}
              {path === undefined && <span class="desk-hint">{capital(loneWords(selection, view))}</span>}
            </li>
          );
        })}
      </ol>
    </section>
  );
}

function EditList({ view, link }: { view: View; link: (to: string) => string }): VNode {
  return (
    <details>
      <summary>Records</summary>
      <ul class="plain-list">
        {view.book.sources.map(({ path }) => (
          <li>
            <a href={`${link(deskPaths.record)}?path=${encodeURIComponent(path)}`}>{path}</a>
          </li>
        ))}
      </ul>
    </details>
  );
}
