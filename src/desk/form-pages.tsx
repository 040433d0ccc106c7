import type { VNode } from 'preact';
import { relativeLink } from '../site/index.js';
import { asksForNew, asksToAgree, type Ask } from './ask.js';
import { AskForm, SecretField } from './form.js';
import { deskPage, type DeskContext } from './frame.js';
import { deskPaths } from './paths.js';

export function addPage(context: DeskContext): string {
  const { standing, secret } = context;
  const link = (to: string): string => relativeLink(deskPaths.add, to);
  return deskPage(
    deskPaths.add,
    'Add a record',
    context,
    <Asks asks={standing.view ? asksForNew(standing.view) : []} {...{ link, secret }} back={deskPaths.add} />,
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
