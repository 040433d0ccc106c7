import type { VNode } from 'preact';
import type { Block, HouseCell, Sheet } from '../../sheet/index.js';
import { CellHtml, type Links } from './cell.js';
import { phraseHtml, proseHtml } from './markdown.js';
import { TableHtml } from './table.js';

/** A sheet as the inside of a page; where it has many sections, with a way to each at its head. */
export function SheetHtml({ sheet, links, cards = false }: { sheet: Sheet; links: Links; cards?: boolean }): VNode {
  return (
    <>
      <h1>{sheet.title}</h1>
      <BlocksHtml blocks={sheet.blocks} links={links} cards={cards} />
    </>
  );
}

/** `cards`: rows of its tables can be cards, as in `TableHtml`. */
export function BlocksHtml({
  blocks,
  links,
  level = 2,
  within,
  cards = false,
}: {
  blocks: readonly Block[];
  links: Links;
  level?: number;
  within?: string | undefined;
  cards?: boolean;
}): VNode {
  return (
    <>
      {blocks.map((block, index) => (
        <BlockHtml block={block} links={links} level={level} isFirst={index === 0} within={within} cards={cards} />
      ))}
    </>
  );
}

const toneClass = { lead: 'lead', plain: undefined, small: 'why' } as const;

function BlockHtml({
  block,
  links,
  level,
  isFirst,
  within,
  cards,
}: {
  block: Block;
  links: Links;
  level: number;
  isFirst: boolean;
  within: string | undefined;
  cards: boolean;
}): VNode {
  switch (block.block) {
    case 'section':
      return <Section block={block} links={links} level={level} cards={cards} />;
    case 'prose':
      return (
        <p class={toneClass[block.tone]}>
          <Cells of={block.of} links={links} />
        </p>
      );
    case 'body':
      return <div class="prose" dangerouslySetInnerHTML={{ __html: proseHtml(block.text) }} />;
    case 'table':
      // The section's heading has just said it.
      return (
        <TableHtml table={block} links={links} quietCaption={isFirst && level > 2} within={within} cards={cards} />
      );
    case 'facts':
      return (
        <dl class="facts">
          {block.facts.map(({ label, cell }) => (
            <div>
              <dt>{label}</dt>
              <dd>
                <Phrase cell={cell} links={links} />
              </dd>
            </div>
          ))}
        </dl>
      );
    case 'list': {
      const items = block.items.map((item) => (
        <li>
          <Cells of={item} links={links} />
        </li>
      ));
      return block.ordered ? <ol>{items}</ol> : <ul class="plain-list">{items}</ul>;
    }
    case 'note': {
      const Tag = headingTag(level);
      return (
        <article class={block.tone} id={block.id}>
          <Tag>
            <Cells of={block.title} links={links} />
          </Tag>
          {block.of.map((line) => (
            <p>
              <Cells of={line} links={links} />
            </p>
          ))}
        </article>
      );
    }
  }
}

const headingTag = (level: number): 'h2' => `h${Math.min(level, 6)}` as 'h2';

function Section({
  block: { id, title, of, folded = false },
  links,
  level,
  cards,
}: {
  block: Extract<Block, { block: 'section' }>;
  links: Links;
  level: number;
  cards: boolean;
}): VNode {
  const Tag = headingTag(level);
  // A summary is no heading.
  const within = folded ? undefined : `${id}-title`;
  const inside = (
    <BlocksHtml blocks={of} links={links} level={folded ? level : level + 1} within={within} cards={cards} />
  );
  if (folded) {
    return (
      <details id={id}>
        <summary>{title}</summary>
        {inside}
      </details>
    );
  }
  // Parts of parts have the same titles, and a page of too many landmarks has none.
  if (level > 2) {
    return (
      <div id={id}>
        <Tag id={`${id}-title`}>{title}</Tag>
        {inside}
      </div>
    );
  }
  return (
    <section aria-labelledby={`${id}-title`} id={id}>
      <Tag id={`${id}-title`}>{title}</Tag>
      {inside}
    </section>
  );
}

function Cells({ of, links }: { of: readonly HouseCell[]; links: Links }): VNode {
  return (
    <>
      {of.map((cell) => (
        <Phrase cell={cell} links={links} />
      ))}
    </>
  );
}

function Phrase({ cell, links }: { cell: HouseCell; links: Links }): VNode {
  if (cell.is !== 'prose') return <CellHtml cell={cell} links={links} />;
  return <span dangerouslySetInnerHTML={{ __html: phraseHtml(cell.text) }} />;
}
