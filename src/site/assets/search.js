/* Search in the page: MiniSearch over the entries of search-index.js. Arrow keys walk the results. */
(function () {
  'use strict';
  var entries = window.bookmatchSearch;
  var most = 60;
  var search = new window.MiniSearch({
    fields: ['title', 'kind', 'text'],
    searchOptions: {
      boost: { title: 4, kind: 1.5 },
      // What is written comes after what is read.
      boostDocument: function (id) {
        return entries[id].kind === 'Record' ? 0.02 : 1;
      },
      prefix: true,
      fuzzy: function (term) {
        return term.length > 4 ? 0.2 : false;
      },
      combineWith: 'AND',
    },
  });
  search.addAll(entries);

  var field = document.getElementById('search-words');
  var list = document.getElementById('search-results');
  var count = document.getElementById('search-count');

  function show(words) {
    var found = words.trim() === '' ? [] : search.search(words);
    list.replaceChildren.apply(list, found.slice(0, most).map(line));
    count.textContent =
      words.trim() === ''
        ? ''
        : found.length === 0
          ? 'Nothing found.'
          : found.length === 1
            ? '1 found'
            : found.length + ' found' + (found.length > most ? ', the first ' + most + ' shown' : '');
  }
  function line(result) {
    var entry = entries[result.id];
    var item = document.createElement('li');
    var link = document.createElement('a');
    var kind = document.createElement('span');
    var found = document.createElement('span');
    link.href = entry.path;
    kind.className = 'kind';
    kind.textContent = entry.kind;
    found.className = 'found';
    found.textContent = entry.title;
    link.append(kind, ' ', found);
    item.append(link);
    return item;
  }

  field.addEventListener('input', function () {
    show(field.value);
  });
  document.querySelector('form.search').addEventListener('submit', function (event) {
    event.preventDefault();
    show(field.value);
    var first = list.querySelector('a');
    if (first) first.focus();
  });
  document.addEventListener('keydown', function (event) {
    if (event.key !== 'ArrowDown' && event.key !== 'ArrowUp') return;
    var stops = [field].concat(Array.from(list.querySelectorAll('a')));
    var at = stops.indexOf(document.activeElement);
    var next = stops[at + (event.key === 'ArrowDown' ? 1 : -1)];
    if (at < 0 || !next) return;
    event.preventDefault();
    next.focus();
  });

  var asked = new URLSearchParams(window.location.search).get('q');
  if (asked) {
    field.value = asked;
    show(asked);
  }
  field.focus();
})();
