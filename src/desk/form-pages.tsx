import type { VNode } from 'preact';
import type { Comparison } from '../core/compare/index.js';
import { relativeLink, type View } from '../site/index.js';
import { agreed, asksToAgree } from './ask-agree.js';
import type { SlipPart } from './performed.js';
import { askOption, asksForNew } from './ask-new.js';
import type { Ask } from './ask.js';
import { Difference } from './difference.js';
import { AskForm, SecretField } from './form.js';
import { deskPage, type DeskContext } from './frame.js';
import { paperWords } from './papers.js';
import { deskPaths, deskTitles } from './paths.js';
import { SaidWords } from './said.js';
import { inLocaleOf } from './standing.js';

/** `of`: the category of a new option, by its file name, once it was asked for. */
export function addPage(context: DeskContext, of: string | null): string {
  const {
    standing,
    start: { secret },
  } = context;
  const { view } = standing;
  const link = (to: string): string => relativeLink(deskPaths.add, to);
  const back = deskPaths.add;
  const category = of === null ? undefined : view?.category(of);
  // Examples in the words of the forms are in the units of the house.
  const asks = inLocaleOf(standing, () => (view && category ? [askOption(view, category)] : []));
  const others = inLocaleOf(standing, () => (view ? asksForNew(view) : []));
  return deskPage(
    deskPaths.add,
    deskTitles.add,
    context,
    <>
      {view && <OfCategory view={view} link={link} of={of} />}
      <Asks asks={asks} {...{ link, secret }} back={category ? `${back}?category=${category.slug}` : back} />
      <Asks asks={others} {...{ link, secret }} back={back} />
    </>,
  );
}

/** What an option is asked for goes by its category. */
function OfCategory({ view, link, of }: { view: View; link: (to: string) => string; of: string | null }): VNode {
  return (
    <form method="get" action={link(deskPaths.add)} class="desk-form">
      <p>
        <label for="category">An option of the category</label>
        <select id="category" name="category">
          {view.book.categories.map(({ slug, name }) => (
            <option value={slug} selected={slug === of}>
              {name}
            </option>
          ))}
        </select>
      </p>
      <p>
        <button>Fill in an option</button>
      </p>
    </form>
  );
}

function Asks({
  asks,
  link,
  secret,
  back,
}: {
  asks: readonly Ask[];
  link: (to: string) => string;
  secret: string;
  back: string;
}): VNode {
  return (
    <>
      {asks.map((ask) => (
        <details open={asks.length === 1}>
          <summary>{ask.title}</summary>
          <AskForm ask={ask} secret={secret} link={link} back={back} />
        </details>
      ))}
    </>
  );
}

/** A slip as pasted, held against the records before it is taken. */
export function slipPage({ said, ...context }: DeskContext, slip = '', takes?: SlipPart): string {
  const link = (to: string): string => relativeLink(deskPaths.slip, to);
  const form = { method: 'post', action: link('desk/do'), class: 'desk-form' };
  const fields = <SecretField secret={context.start.secret} back={deskPaths.slip} ask="slip" />;
  return deskPage(
    deskPaths.slip,
    deskTitles.slip,
    context,
    <>
      {said && (
        <SaidWords said={said} page={{ secret: context.start.secret, back: deskPaths.slip }}>
          {takes && (
            <form {...form}>
              {fields}
              <input type="hidden" name="slip" value={slip} />
              <button name="do" value={takes}>
                {takes === 'all' ? 'Write these choices' : 'Write what can be taken'}
              </button>
            </form>
          )}
        </SaidWords>
      )}
      <form {...form}>
        {fields}
        <label for="slip">The slip: the whole text, with its last line</label>
        <textarea id="slip" name="slip" rows={14} required>
          {`\n${slip}`}
        </textarea>
        <p>
          <button name="do" value="hold">
            Hold it against the records
          </button>
        </p>
      </form>
    </>,
  );
}

/** What is written and not recorded, in words and money, and what may be agreed. */
export function agreePage(
  context: DeskContext,
  { difference, papers }: { readonly difference: Comparison | undefined; readonly papers: readonly string[] },
): string {
  const {
    standing,
    start: { secret },
    changed,
  } = context;
  const { view } = standing;
  const asks = inLocaleOf(standing, () => (view ? asksToAgree(view) : []));
  const link = (to: string): string => relativeLink(deskPaths.agree, to);
  return deskPage(
    deskPaths.agree,
    deskTitles.agree,
    context,
    <>
      <section>
        <h2>A version</h2>
        {changed === undefined && <p>The house folder is not under git: nothing can be recorded.</p>}
        {changed?.length === 0 && <p>All of it is recorded.</p>}
        {changed !== undefined && changed.length > 0 && (
          <>
            <p>Written and not recorded yet: {changed.join(', ')}</p>
            <form method="post" action={link('desk/do')} class="desk-form">
              <SecretField secret={secret} back={deskPaths.agree} ask="version" />
              <label for="sentence">What changed, in a sentence</label>
              <input id="sentence" name="sentence" required maxLength={200} />
              <p>
                <button>Record this version</button>
              </p>
            </form>
            {difference && <Difference of={difference} link={link} />}
          </>
        )}
      </section>
      <p>
        <a href={link(agreed.path)}>{agreed.words}</a>
      </p>
      <Asks asks={asks} {...{ link, secret }} back={deskPaths.agree} />
      {papers.length > 0 && (
        <section>
          <h2>Papers</h2>
          <ul class="plain-list">
            {papers.map((paper) => (
              <li>
                <a href={link(paper)}>{paperWords(paper)}</a>
              </li>
            ))}
          </ul>
        </section>
      )}
    </>,
  );
}
