/* Says whether this copy is current, and keeps what is typed on the as-built page. Classic script: pages on a disk may not
   load modules. The one request it makes is for the list of current issues, at the address that the house record names. */
(function () {
  'use strict';
  var root = document.documentElement;
  var line = document.querySelector('[data-currency]');
  var issue = root.dataset.issue ? Number(root.dataset.issue) : null;

  function say(words, state) {
    line.textContent = words;
    line.parentElement.dataset.state = state;
    if (state !== 'superseded') return;
    var current = document.createElement('a');
    current.href = new URL(root.dataset.trade + '/index.html', root.dataset.current).href;
    current.textContent = 'Open the current card';
    line.parentElement.append(current);
  }

  function compare() {
    var list = window.bookmatchCurrent;
    var now = list && list.job === root.dataset.job && list.trades ? list.trades[root.dataset.trade] : undefined;
    if (!now || typeof now.number !== 'number') return;
    if (issue === null) say('Issue ' + now.number + ' of ' + now.day + ' is out: use that one.', 'superseded');
    else if (now.number > issue) say('Superseded by issue ' + now.number + ' of ' + now.day + '.', 'superseded');
    else if (now.number === issue && now.digest !== root.dataset.digest)
      say(
        'This copy differs from issue ' + now.number + ' on the site. Ask the builder which one holds.',
        'superseded',
      );
    else if (now.number === issue) say('Checked just now: issue ' + issue + ' is the current one.', 'current');
  }

  if (window.matchMedia('(min-width: 48rem)').matches)
    document.querySelectorAll('[data-open-when-wide]').forEach(function (folded) {
      folded.open = true;
    });

  if (line && root.dataset.current && navigator.onLine !== false) {
    var script = document.createElement('script');
    script.src = root.dataset.current;
    script.referrerPolicy = 'no-referrer';
    script.addEventListener('load', compare);
    document.head.appendChild(script);
  }

  var fields = document.querySelectorAll('[data-as-built]');
  if (fields.length === 0) return;
  var key = 'bookmatch-as-built ' + root.dataset.job + ' ' + root.dataset.trade;
  var kept = {};
  try {
    kept = JSON.parse(localStorage.getItem(key) || '{}');
  } catch {
    // Nothing is kept for pages on a disk in this browser: what is typed lasts until the page is closed.
  }
  fields.forEach(function (field) {
    field.value = kept[field.name] || '';
    field.addEventListener('input', function () {
      kept[field.name] = field.value;
      try {
        localStorage.setItem(key, JSON.stringify(kept));
      } catch {
        // As above.
      }
    });
  });
})();
