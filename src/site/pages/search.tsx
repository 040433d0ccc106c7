import type { VNode } from 'preact';
import { PageLink } from '../parts/link.js';
import { pagePaths } from '../paths.js';

/** The search runs in the page: the index is a script beside it, so that it works from a disk. */
export function SearchPage(): VNode {
  return (
    <>
      <h1>Search</h1>
      <form class="search" role="search" action="search.html" method="get">
        <label for="search-words">Room, finish, maker, trade or record</label>
        <input
          id="search-words"
          name="q"
          type="search"
          autocomplete="off"
          spellcheck={false}
          aria-describedby="search-count"
        />
        <button type="submit">Search</button>
      </form>
      <p id="search-count" role="status" />
      <ol id="search-results" class="search-results" />
      <noscript>
        <p>
          Search needs scripts. Without them: <PageLink to={pagePaths.rooms}>rooms</PageLink>,{' '}
          <PageLink to={pagePaths.options}>options</PageLink> and{' '}
          <PageLink to={pagePaths.finishSchedule}>the finish schedule</PageLink> list everything.
        </p>
      </noscript>
    </>
  );
}
