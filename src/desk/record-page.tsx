import { didYouMean } from '../base/problem/index.js';
import { diffLines, plainLines, relativeLink } from '../site/index.js';
import { SecretField } from './form.js';
import { deskPage, type DeskContext } from './frame.js';
import { deskPaths } from './paths.js';
import { ProblemList } from './problems.js';
import { withoutNews } from './said.js';
import { digestOfText, type Standing } from './standing.js';

/** What somebody wrote that could not be saved as it was. */
export interface Unsaved {
  readonly text: string;
  /** What the record says on disk meanwhile. */
  readonly theirs?: string;
  /** Unified hunks from what lies there to what was written, where git tells them. */
  readonly differs?: string;
}

/** A record's text with its problems beside it. Undefined where there is no such record, unless somebody wrote in it. */
export function recordPage(path: string, context: DeskContext, unsaved?: Unsaved): string | undefined {
  const { standing, start, said } = context;
  const link = (to: string): string => relativeLink(deskPaths.record, to);
  const source = standing.sources.find((one) => one.path === path);
  if (!source) return unsaved && withoutRecord(path, context, unsaved);
  const problems = standing.problems.filter(({ file }) => file === path);
  const isShared = path.startsWith('..');
  return deskPage(
    deskPaths.record,
    path,
    { ...context, ...(said && { said: withoutNews(said, ({ file }) => file === path) }) },
    <>
      {unsaved?.theirs !== undefined && (
        <p role="alert">
          The record changed on disk meanwhile. Below stands what you wrote, beneath it what lies there now. Saving
          again writes yours.
        </p>
      )}
      {unsaved?.differs !== undefined && (
        <section>
          <h2>What differs</h2>
          <p>A line with a minus lies there now; one with a plus is what you wrote.</p>
          <div dangerouslySetInnerHTML={{ __html: diffLines(plainLines(unsaved.differs)) }} />
        </section>
      )}
      {problems.length > 0 && <ProblemList problems={problems} link={link} />}
      {isShared ? (
        <p>This record is shared with other houses, and is written where it lies.</p>
      ) : (
        <form method="post" action={link('desk/do')} class="desk-form">
          <SecretField secret={start.secret} back={deskPaths.record} ask="save" />
          <input type="hidden" name="path" value={path} />
          <input type="hidden" name="digest" value={digestOfText(unsaved?.theirs ?? source.text)} />
          <label for="text">Text of the record</label>
          <textarea
            id="text"
            class="desk-code"
            name="text"
            rows={Math.min(60, source.text.split('\n').length + 4)}
            spellcheck={false}
          >
            {`\n${unsaved?.text ?? source.text}`}
          </textarea>
          <p>
            <button>Save</button>
          </p>
        </form>
      )}
      {unsaved?.theirs !== undefined && (
        <section>
          <h2>On disk</h2>
          <pre class="desk-text">{unsaved.theirs}</pre>
        </section>
      )}
    </>,
    path,
  );
}

/** What was written is not lost with the record. */
function withoutRecord(path: string, context: DeskContext, { text }: Unsaved): string {
  return deskPage(
    deskPaths.record,
    path,
    context,
    <div class="desk-form">
      <label for="text">What you wrote, to be copied</label>
      <textarea id="text" class="desk-code" readOnly rows={Math.min(60, text.split('\n').length + 1)}>
        {`\n${text}`}
      </textarea>
    </div>,
  );
}

export function noRecordWords(path: string, { sources }: Standing): string {
  const meant = didYouMean(
    path,
    sources.map((source) => source.path),
  );
  return `There is no record ${path}.${meant === undefined ? '' : ` ${meant}`}`;
}
