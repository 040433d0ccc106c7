import type { VNode } from 'preact';
import { makerText } from '../../core/fact/index.js';
import { drawSwatch } from '../../draw/index.js';
import type { HandoutProduct, HandoutSpecification } from '../../handout/index.js';
import { joinWords, printDay } from '../../base/units/index.js';
import { CellHtml, Svg, TableHtml } from '../../write/index.js';
import { TrimJoints } from '../parts/drawing.js';
import { Facts } from '../parts/facts.js';
import { Phrase, Prose } from '../parts/prose.js';
import { useHandout, useHandoutLink, usePlaceLinks } from './context.js';
import { productAnchor, roomPath } from './paths.js';

/** The schedules that the trade asks for. */
export function SchedulesPage(): VNode {
  const { schedules } = useHandout();
  const links = usePlaceLinks();
  return (
    <>
      <h1>Schedules</h1>
      <p class="lead">What stands only for now is ‘if chosen’, its key in brackets.</p>
      {schedules.length > 1 && (
        <ul class="jump">
          {schedules.map(({ id, caption }) => (
            <li>
              <a class="more" href={`#${id}`}>
                {caption}
              </a>
            </li>
          ))}
        </ul>
      )}
      <div class="wide">
        {schedules.map((table) => (
          <TableHtml table={table} links={links} cards />
        ))}
      </div>
    </>
  );
}

/** What the house orders of each product, then each product with all its data. */
export function ProductsPage(): VNode {
  const { products, orders, supplies } = useHandout();
  const links = usePlaceLinks();
  return (
    <>
      <h1>Products and order list</h1>
      {[orders, supplies]
        .filter(({ groups }) => groups.length > 0)
        .map((table) => (
          <TableHtml table={table} links={links} cards />
        ))}
      <section aria-labelledby="products-title">
        <h2 id="products-title">Products</h2>
        {products.map((product) => (
          <Product product={product} />
        ))}
      </section>
    </>
  );
}

function Product({ product }: { product: HandoutProduct }): VNode {
  const { id, name, summary, attributes, thickness, weight, packs, lead, needs, notes, finish } = product;
  return (
    <div class="product" id={productAnchor(id)}>
      <span class="swatch" aria-hidden="true">
        <Svg
          node={drawSwatch(product.swatch, {
            width: 144,
            height: 108,
            seed: `${product.category}/${name}`,
            title: name,
            facts: product.sample,
          })}
        />
      </span>
      <h3>
        <CellHtml cell={finish} links={() => undefined} />
      </h3>
      <p class="why">
        {makerText(product, ' · ')}. {product.category}, section {product.section}.
      </p>
      <details class="folded-facts" data-open-when-wide="">
        <summary>All facts</summary>
        {summary !== undefined && <p>{summary}</p>}
        <Facts
          facts={[
            ...attributes.map(({ label, text }) => ({ label, value: text })),
            thickness !== undefined && { label: 'Thickness', value: thickness },
            weight !== undefined && { label: 'Weight', value: weight },
            ...packs.map(({ part, text }) => ({ label: part === '' ? 'Pack' : `Pack of ${part}`, value: text })),
            { label: 'Lead', value: lead },
            { label: 'Rooms', value: product.rooms.join(', ') },
          ]}
        />
        <TrimJoints facts={product.sample} name={name} id={`joints-${productAnchor(id)}`} heading="h4" />
        {needs.length > 0 && (
          <>
            <h4>There first</h4>
            <ul class="plain-list">
              {needs.map(({ what, by, before, date }) => (
                <li>
                  {what} ({by}), before {before}
                  {date !== undefined && `, ${printDay(date)}`}
                </li>
              ))}
            </ul>
          </>
        )}
        <Prose text={notes} />
      </details>
    </div>
  );
}

/** A section for each product, under its kind of work. */
export function SpecificationPage(): VNode {
  const { sections } = useHandout();
  return (
    <>
      <h1>Specification</h1>
      {sections.map(({ category, measured, notes, products }, index) => (
        <section aria-labelledby={`work-${index + 1}`}>
          <h2 id={`work-${index + 1}`}>{category}</h2>
          <p>
            <strong>Measured:</strong> {measured.rule} <span class="why">Source: {measured.source}.</span>
          </p>
          <Prose text={notes} />
          {products.map((product) => (
            <ProductSection product={product} />
          ))}
        </section>
      ))}
    </>
  );
}

function ProductSection({ product }: { product: HandoutSpecification }): VNode {
  const { number, finish, parts, untold } = product;
  const links = usePlaceLinks();
  return (
    <div class="product">
      <h3>
        <span class="mark">{number}</span> <CellHtml cell={finish} links={links} />
      </h3>
      {parts.map(({ title, text }) => (
        <>
          <h4>{title}</h4>
          <p>
            <Phrase text={text} />
          </p>
        </>
      ))}
      {untold.length > 0 && <p class="why">Not told yet: {joinWords(untold)}.</p>}
    </div>
  );
}

/** A field for each room. What is typed stays on the device; the printed page goes back to the site. */
export function AsBuiltPage(): VNode {
  const { rooms } = useHandout();
  const link = useHandoutLink();
  return (
    <>
      <h1>As built</h1>
      <p class="lead">
        What differs from this handout and why, lot numbers, dates. What is typed here stays on this device: print the
        page, or fill the last sheet of the PDF, and hand it back to the site.
      </p>
      <form class="as-built" autocomplete="off">
        {rooms.map((room) => (
          <p>
            <label for={`as-built-${room.slug}`}>
              {room.number} {room.name}
            </label>
            <textarea id={`as-built-${room.slug}`} name={room.slug} data-as-built="" />
            <a class="tool" href={link(roomPath(room))}>
              What was asked
            </a>
          </p>
        ))}
      </form>
    </>
  );
}
