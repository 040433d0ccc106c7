/* Says whether this copy is current, and whether the printed sheet is whose code opened it; keeps what is typed on the as-built page. Classic script: pages
   on a disk may not load modules. The one request it makes is for an image at the address that the house record names: its size says which issue is
   current, and nothing of it is run or shown. */
(function () {
  'use strict';
  var root = document.documentElement;
  var line = document.querySelector('[data-currency]');
  var issue = root.dataset.issue ? Number(root.dataset.issue) : null;
  var sheet = document.querySelector('[data-sheet]');
  var asked = new URLSearchParams(location.search);

  function say(words, state) {
    line.textContent = words;
    line.parentElement.dataset.state = state;
    if (state !== 'superseded') return;
    var current = document.createElement('a');
    current.href = new URL('../../' + root.dataset.trade + '/index.html', root.dataset.current).href;
    current.textContent = 'Open the current card';
    line.parentElement.append(current);
  }

  function dayWords(time) {
    return new Intl.DateTimeFormat(root.dataset.language || 'en-GB', { dateStyle: 'long', timeZone: 'UTC' }).format(
      time,
    );
  }

  // `now`: the issue that is current, as far as is known; `day`: its day in words; `begins`: the first five digits of its digest; `by`: who says so, where it
  // is the page alone, which may have been kept from before.
  function judgeSheet(now, day, begins, by) {
    if (!sheet || !asked.has('issue')) return;
    var number = /^[1-9]\d{0,3}$/.test(asked.get('issue')) ? Number(asked.get('issue')) : null;
    var digest = /^[0-9a-f]{5,64}$/i.test(asked.get('digest') || '')
      ? asked.get('digest').slice(0, 5).toLowerCase()
      : null;
    var last = Number(root.dataset.last || 0);
    var ask = ' Ask the builder before you build from it.';
    function judge(words, state) {
      sheet.textContent = words;
      sheet.dataset.state = state;
    }
    if (asked.get('issue') === 'none')
      return judge(
        'Your printed sheet was never issued.' + (now === null ? ask : ' Use issue ' + now + ' of ' + day + '.'),
        'superseded',
      );
    if (number === null || digest === null)
      return judge('The code names no issue and digest. Compare the foot of the sheet with this page.', 'unknown');
    if (number < (now === null ? last : now))
      return judge(
        'Your printed sheet, of issue ' +
          number +
          ', is superseded by issue ' +
          (now === null ? last : now + ' of ' + day) +
          '.',
        'superseded',
      );
    if (now === null)
      return judge(
        'Your printed sheet is of issue ' + number + '. This page is of later records, and no issue.' + ask,
        'unknown',
      );
    if (number > now)
      return judge(
        'Your printed sheet is of issue ' + number + ', this page of issue ' + now + ' only.' + ask,
        'unknown',
      );
    if (digest !== begins)
      return judge(
        'Your printed sheet says issue ' + now + ', with a digest that is not that issue’s.' + ask,
        'unknown',
      );
    judge('Your printed sheet is current' + by + ': issue ' + now + ' of ' + day + '.', 'current');
  }
  if (issue === null) judgeSheet(null, '', '', '');
  else judgeSheet(issue, dayWords(Date.parse(root.dataset.day)), root.dataset.digest.slice(0, 5), ' by this page');

  function compare() {
    var width = this.naturalWidth;
    var height = this.naturalHeight;
    var now = Math.floor(width / 4096);
    var begins = (width % 4096) * 256 + (height % 256);
    if (now < 1 || height < 256) return;
    var day = dayWords(Math.floor(height / 256) * 86400000);
    if (issue === null || now >= issue) judgeSheet(now, day, begins.toString(16).padStart(5, '0'), '');
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
