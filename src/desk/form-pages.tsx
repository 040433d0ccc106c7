import type { VNode } from 'preact';
import { relativeLink, type View } from '../site/index.js';
import { asksToAgree } from './ask-agree.js';
import { askOption, asksForNew } from './ask-new.js';
import type { Ask } from './ask.js';
import { AskForm, SecretField } from './form.js';
import { deskPage, type DeskContext } from './frame.js';
import { deskPaths } from './paths.js';
import { inLocaleOf } from './standing.js';

/** `of`: the category of a new option, by its file name, once it was asked for. */
export function addPage(context: DeskContext, of: string | null): string {
  const { standing, secret } = context;
  const { view } = standing;
  const link = (to: string): string => relativeLink(deskPaths.add, to);
  const back = deskPaths.add;
  const category = of === null ? undefined : view?.category(of);
  // Examples in the words of the forms are in the units of the house.
  const asks = inLocaleOf(standing, () => (view && category ? [askOption(view, category)] : []));
  const others = inLocaleOf(standing, () => (view ? asksForNew(view) : []));
  return deskPage(
    deskPaths.add,
    'Add a record',
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
export function slipPage(context: DeskContext, slip = '', isHeld = false): string {
  const link = (to: string): string => relativeLink(deskPaths.slip, to);
  return deskPage(
    deskPaths.slip,
    'Take in a choice slip',
    context,
    <form method="post" action={link('desk/do')} class="desk-form">
      <SecretField secret={context.secret} back={deskPaths.slip} ask="slip" />
      <label for="slip">The slip: the whole text, with its last line</label>
      <textarea id="slip" name="slip" rows={14} required>
        {`\n${slip}`}
      </textarea>
      <p>
        <button name="do" value="hold">
          Hold it against the records
        </button>{' '}
        {isHeld && (
          <button name="do" value="take">
            Write these choices
          </button>
        )}
      </p>
    </form>,
  );
}

/** What is written and not recorded, in words and money, and what may be agreed. */
export function agreePage(context: DeskContext, difference: string | undefined): string {
  const { standing, secret, changed } = context;
  const link = (to: string): string => relativeLink(deskPaths.agree, to);
  return deskPage(
    deskPaths.agree,
    'Record and agree',
    context,
    <>
      <section>
        <h2>A version</h2>
        {changed === undefined && <p>The house folder is not under git: nothing can be recorded.</p>}
        {changed?.length === 0 && <p>All of it is recorded.</p>}
        {changed !== undefined && changed.length > 0 && (
          <>
            <p>Written and not recorded yet: {changed.join(', ')}</p>
            {difference !== undefined && <pre class="desk-text">{difference}</pre>}
            <form method="post" action={link('desk/do')} class="desk-form">
              <SecretField secret={secret} back={deskPaths.agree} ask="version" />
              <label for="sentence">What changed, in a sentence</label>
              <input id="sentence" name="sentence" required maxLength={200} />
              <p>
                <button>Record this version</button>
              </p>
            </form>
          </>
        )}
      </section>
      {standing.view && <Asks asks={asksToAgree(standing.view)} {...{ link, secret }} back={deskPaths.agree} />}
    </>,
  );
}
