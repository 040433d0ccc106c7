import type { ComponentChildren, VNode } from 'preact';
import { say, type HouseCell, type Line, type Place, type Run } from '../../sheet/index.js';
import { Figure } from './figure.js';
import { SignMark } from './sign.js';
import { Swing } from './swing.js';

/** Where a place is, as a link from the page that is written; undefined where it has no page. */
export type Links = (place: Place) => string | undefined;

interface CellProps {
  readonly cell: HouseCell;
  readonly links: Links;
  /** Of a column of numbers: how many digits its figures have behind the point. */
  readonly point?: number | undefined;
}

/** A cell as people read it. */
export function CellHtml({ cell, links, point }: CellProps): VNode {
  if (cell.is === 'swing') return <Swing of={cell} />;
  const lines = say(cell);
  if (cell.is !== 'lines') return <LineHtml line={lines.flat()} links={links} point={point} />;
  return (
    <ul class="keys">
      {lines.map((line) => (
        <li>
          <LineHtml line={line} links={links} point={point} />
        </li>
      ))}
    </ul>
  );
}

function LineHtml({ line, links, point }: { line: Line; links: Links; point: number | undefined }): VNode {
  return (
    <>
      {linked(line, links).map(({ href, runs }) => {
        const body = runs.map((run) => <RunHtml run={run} point={point} />);
        return href === undefined ? body : <a href={href}>{body}</a>;
      })}
    </>
  );
}

/** Runs beside each other that lead to one place are one link: a room's number and its name. */
function linked(line: Line, links: Links): readonly { readonly href: string | undefined; readonly runs: Run[] }[] {
  const parts: { href: string | undefined; runs: Run[] }[] = [];
  for (const run of line) {
    const href = run.place && links(run.place);
    const last = parts.at(-1);
    if (last && href !== undefined && last.href === href) last.runs.push(run);
    else parts.push({ href, runs: [run] });
  }
  return parts;
}

function RunHtml({ run, point }: { run: Run; point: number | undefined }): VNode {
  const { text, tone, figure, sign, day } = run;
  const said: ComponentChildren =
    day !== undefined ? (
      <time dateTime={day}>{text}</time>
    ) : figure === undefined ? (
      text
    ) : (
      <Figure text={text} quiet={tone === 'quiet'} {...(point !== undefined && { point: Math.max(point, figure) })} />
    );
  const body = sign ? (
    <span class={`state state-${sign}`}>
      <SignMark of={sign} /> {said}
    </span>
  ) : (
    said
  );
  const plain = figure !== undefined || sign !== undefined || tone === undefined;
  return plain ? <>{body}</> : <span class={tone}>{body}</span>;
}
