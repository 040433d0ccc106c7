import type { VNode } from 'preact';
import { tryFields } from '../../try/index.js';
import { PageLink } from '../parts/link.js';
import { TryRoot } from '../parts/try-place.js';
import { pagePaths } from '../paths.js';

/** Where choice slips are laid over each other: those of two owners, or one that somebody sent. What comes of them is the script's; what the page is for can be read
 *  without it. */
export function SlipsPage(): VNode {
  return (
    <>
      <h1>Choice slips</h1>
      <p class="lead">
        A choice slip is what somebody picked in this book, as a text. Lay down one, two or more: the whole house is
        computed with each of them and with all together, and where they differ you settle it here. Nothing is chosen by
        it, and nothing leaves this page before you send it.
      </p>
      <ol class="plain-list slip-steps">
        <li>
          Each of you picks on <PageLink to={pagePaths.try}>Try choices</PageLink> and presses “Send these choices”.
        </li>
        <li>Paste the first slip here and read it, then the second. A whole mail or message will do.</li>
        <li>Settle where they differ, and send one slip of both to the builder.</li>
      </ol>
      <p class="note unscripted">
        Reading slips needs a script, which this browser does not run. The builder’s program lays slips over each other
        as well, each kept in a file: <code>bookmatch choose hers.txt his.txt --dry-run</code>
      </p>
      <section class="scripted-only" aria-labelledby="slip-lay-title">
        <h2 id="slip-lay-title">Lay down a slip</h2>
        <p>
          <label for={tryFields.slipText}>The slip, or the message that it came in</label>
        </p>
        <textarea
          id={tryFields.slipText}
          class="try-slip"
          rows={5}
          autocomplete="off"
          spellcheck={false}
          aria-describedby={tryFields.slipSaid}
        />
        <div class="try-tools">
          <button type="button" id={tryFields.slipRead} class="try-tool try-main">
            Read this slip
          </button>
          <label class="try-tool slip-file">
            Open slips kept as files
            <input type="file" id={tryFields.slipFiles} multiple />
          </label>
        </div>
        <p id={tryFields.slipSaid} class="slip-said" role="status" aria-live="polite" tabIndex={-1} />
      </section>
      <div id={tryFields.slips} />
      <TryRoot />
    </>
  );
}
