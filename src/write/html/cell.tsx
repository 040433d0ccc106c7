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
      {line.map((run) => (
        <RunHtml run={run} links={links} point={point} />
      ))}
    </>
  );
}

function RunHtml({ run, links, point }: { run: Run; links: Links; point: number | undefined }): VNode {
  const { text, tone, place, figure, sign, day } = run;
  const href = place && links(place);
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
  if (href !== undefined) {
    return (
      <a href={href} class={tone === 'mark' ? 'mark' : undefined}>
        {body}
      </a>
    );
  }
  const plain = figure !== undefined || sign !== undefined || tone === undefined;
  return plain ? <>{body}</> : <span class={tone}>{body}</span>;
}
