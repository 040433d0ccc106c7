import type { VNode } from 'preact';
import { makerText } from '../../core/fact/index.js';
import type { BookOption } from '../../core/book/index.js';
import { Swatch } from '../parts/drawing.js';
import { PageLink } from '../parts/link.js';
import { counted } from '../parts/words.js';
import { anchorOf, optionPath } from '../paths.js';
import { useView } from '../sheet-context.js';

/** Every option of the house's records, by category in working order. */
export function OptionsPage(): VNode {
  const { categories, options } = useView().book;
  return (
    <>
      <h1>Options</h1>
      <p class="lead">
        {counted(options.length, 'finish', 'finishes')} in {counted(categories.length, 'category', 'categories')}.
        Colors on a screen are not the sample.
      </p>
      <nav class="in-page" aria-label="Categories">
        <ul>
          {categories
            .filter((category) => options.some((option) => option.category === category.slug))
            .map((category) => (
              <li>
                <a href={`#${anchorOf('category', category.slug)}`}>{category.name}</a>
              </li>
            ))}
        </ul>
      </nav>
      {categories.map((category) => {
        const own = options.filter((option) => option.category === category.slug);
        if (own.length === 0) return null;
        return (
          <section aria-labelledby={anchorOf('category', category.slug)}>
            <h2 id={anchorOf('category', category.slug)}>{category.name}</h2>
            <ul class="option-grid">
              {own.map((option) => (
                <OptionTile option={option} />
              ))}
            </ul>
          </section>
        );
      })}
    </>
  );
}

function OptionTile({ option }: { option: BookOption }): VNode {
  const { counted: chosen, considered } = useView().uses(option);
  return (
    <li>
      <PageLink to={optionPath(option)} class="option-tile">
        <Swatch option={option} />
        <span class="option-words">
          <span class="option-name">{option.name}</span>
          <span class="maker">{makerText(option)}</span>
          <span class="why">
            {chosen.length > 0
              ? `counted in ${counted(chosen.length, 'place')}`
              : considered.length > 0
                ? `considered in ${counted(considered.length, 'place')}`
                : 'not used'}
          </span>
        </span>
      </PageLink>
    </li>
  );
}
