/* Says whether this copy is current, and keeps what is typed on the as-built page. Classic script: pages on a disk may not
   load modules. The one request it makes is for an image at the address that the house record names: its size says which issue is
   current, and nothing of it is run or shown. */
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
    current.href = new URL('../../' + root.dataset.trade + '/index.html', root.dataset.current).href;
    current.textContent = 'Open the current card';
    line.parentElement.append(current);
  }

  function compare() {
    var width = this.naturalWidth;
    var height = this.naturalHeight;
    var now = Math.floor(width / 4096);
    var begins = (width % 4096) * 256 + (height % 256);
    if (now < 1 || height < 256) return;
    var day = new Intl.DateTimeFormat(root.dataset.language || 'en-GB', { dateStyle: 'long', timeZone: 'UTC' }).format(
      Math.floor(height / 256) * 86400000,
    );
    if (issue === null) say('Issue ' + now + ' of ' + day + ' is out: use that one.', 'superseded');
    else if (now > issue) say('Superseded by issue ' + now + ' of ' + day + '.', 'superseded');
    else if (now === issue && begins !== parseInt(root.dataset.digest.slice(0, 5), 16))
      say('This copy differs from issue ' + now + ' on the site. Ask the builder which one holds.', 'superseded');
    else if (now === issue) say('Checked just now: issue ' + issue + ' is the current one.', 'current');
  }

  if (window.matchMedia('(min-width: 48rem)').matches)
    document.querySelectorAll('[data-open-when-wide]').forEach(function (folded) {
      folded.open = true;
    });

  if (line && root.dataset.current && navigator.onLine !== false) {
    var image = new Image();
    image.referrerPolicy = 'no-referrer';
    image.addEventListener('load', compare);
    image.src = root.dataset.current;
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
