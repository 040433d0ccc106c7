import type { VNode } from 'preact';
import type { WhatFollows } from '../table/index.js';
import { TableHtml } from '../write/index.js';

/** Pages of the book are not known here: names stand without links. */
export const noLinks = (): undefined => undefined;

/** All that follows from what is tried: facts, tables, what comes and goes. */
export function Follows({ follows: { facts, tables, notices } }: { follows: WhatFollows }): VNode {
  return (
    <>
      <dl class="facts">
        {facts.map(({ label, words }) => (
          <div>
            <dt>{label}</dt>
            <dd>{words}</dd>
          </div>
        ))}
      </dl>
      {tables.map((table) => (
        <TableHtml table={table} links={noLinks} />
      ))}
      {notices.map(({ title, items }) => (
        <>
          <h3>{title}</h3>
          <ul class="plain-list">
            {items.map((item) => (
              <li>{item}</li>
            ))}
          </ul>
        </>
      ))}
    </>
  );
}
