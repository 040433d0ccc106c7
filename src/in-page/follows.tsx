import type { VNode } from 'preact';
import type { WhatFollows } from '../table/index.js';
import { CellHtml, TableHtml, type Links } from '../write/index.js';

/** All that follows from what is tried: facts, tables, what comes and goes. What has a page leads to it. */
export function Follows({ follows: { facts, tables, notices }, links }: { follows: WhatFollows; links: Links }): VNode {
  return (
    <>
      <dl class="facts">
        {facts.map(({ label, cell }) => (
          <div>
            <dt>{label}</dt>
            <dd>
              <CellHtml cell={cell} links={links} />
            </dd>
          </div>
        ))}
      </dl>
      {tables.map((table) => (
        <TableHtml table={table} links={links} />
      ))}
      {notices.map(({ title, items }) => (
        <>
          <h3>{title}</h3>
          <ul class="plain-list">
            {items.map((item) => (
              <li>
                <CellHtml cell={item} links={links} />
              </li>
            ))}
          </ul>
        </>
      ))}
    </>
  );
}
