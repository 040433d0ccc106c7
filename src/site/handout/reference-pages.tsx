import type { VNode } from 'preact';
import { drawSwatch } from '../../draw/index.js';
import type { HandoutProduct } from '../../handout/index.js';
import { printDay } from '../../units/index.js';
import { DataTable } from '../parts/data-table.js';
import { Svg } from '../parts/drawing.js';
import { Facts } from '../parts/facts.js';
import { AmountCell } from '../parts/figures.js';
import { Phrase, Prose } from '../parts/prose.js';
import { useHandout, useHandoutLink } from './context.js';
import { productPath, roomPath } from './paths.js';

/** What the house orders of each product, then each product with all its data. */
export function ProductsPage(): VNode {
  const { products, orders, supplies } = useHandout();
  const link = useHandoutLink();
  return (
    <>
      <h1>Products and order list</h1>
      <DataTable
        id="orders"
        caption="For the whole house: net as measured, with waste, in whole packs. The installer confirms before ordering."
        rows={orders}
        columns={[
          {
            head: 'Product',
            names: true,
            cell: ({ product, name, part }) => (
              <>
                <a href={link(productPath(product))}>{product}</a> {part === '' ? name : `${name}, ${part}`}
              </>
            ),
          },
          { head: 'Rooms', cell: ({ rooms }) => rooms.join(', ') },
          { head: 'Net', numeric: true, cell: ({ net }) => <AmountCell amount={net} /> },
          { head: 'With waste', numeric: true, cell: ({ required }) => <AmountCell amount={required} /> },
          { head: 'Unit', cell: ({ unit }) => unit },
          {
            head: 'Order',
            cell: ({ order, stock, counts }) => (
              <>
                {order} {counts !== '' && <span class="why">{counts}</span>}
                {stock !== '' && <span class="why">Laid out: {stock}</span>}
              </>
            ),
          },
          { head: 'Lead', cell: ({ lead }) => lead },
          { head: 'Supply', cell: ({ supply }) => supply },
        ]}
      />
      {supplies.length > 0 && (
        <DataTable
          id="supplies"
          caption="Used up with them, for the whole house"
          rows={supplies}
          columns={[
            { head: 'What', names: true, cell: ({ what }) => what },
            { head: 'Rooms', cell: ({ rooms }) => rooms.join(', ') },
            { head: 'Net', numeric: true, cell: ({ net }) => <AmountCell amount={net} /> },
            { head: 'With waste', numeric: true, cell: ({ required }) => <AmountCell amount={required} /> },
            { head: 'Unit', cell: ({ unit }) => unit },
            { head: 'Order', cell: ({ order }) => order },
          ]}
        />
      )}
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
  const { key, name, maker, model, summary, attributes, thickness, weight, packs, lead, needs, notes } = product;
  return (
    <div class="product" id={key}>
      <h3>
        <span class="mark">{key}</span> {name}
      </h3>
      <p class="why">
        {[maker, model].filter((part) => part !== '').join(' · ')}. {product.category}, section {product.section}.
        {product.standing === 'considered' && ' Considered, not decided.'}
      </p>
      <span class="swatch" aria-hidden="true">
        <Svg
          node={drawSwatch(product.swatch, {
            width: 144,
            height: 108,
            seed: `${product.category}/${name}`,
            title: name,
          })}
        />
      </span>
      <p>{summary}</p>
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
    </div>
  );
}

/** The sections in three parts. */
export function SpecificationPage(): VNode {
  const { sections } = useHandout();
  const link = useHandoutLink();
  return (
    <>
      <h1>Specification</h1>
      {sections.map(({ number, title, measured, notes, parts }) => (
        <section aria-labelledby={`section-${number.replaceAll(' ', '-')}`}>
          <h2 id={`section-${number.replaceAll(' ', '-')}`}>
            {number} {title}
          </h2>
          {measured.map(({ category, rule, source }) => (
            <p>
              <strong>Measured, {category.toLowerCase()}:</strong> {rule} <span class="why">Source: {source}.</span>
            </p>
          ))}
          <Prose text={notes} />
          {parts.map((part, index) => (
            <>
              <h3>
                Part {index + 1} {part.title}
              </h3>
              {part.items.map(({ products, text }) => (
                <p>
                  {products.map((key) => (
                    <>
                      <a class="key" href={link(productPath(key))}>
                        {key}
                      </a>{' '}
                    </>
                  ))}
                  <Phrase text={text} />
                </p>
              ))}
            </>
          ))}
        </section>
      ))}
    </>
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
