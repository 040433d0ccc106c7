/* Is the desk still there? A page hears from it what changes, says when it has ended and how it is started again, and sends nothing while nobody is
   there to take it: what was typed stays in its fields. */
(function () {
  'use strict';
  var mark = document.querySelector('[data-house]');
  if (!mark) return;
  var isWritten = false;
  document.addEventListener('input', function (event) {
    if (event.target.closest('form')) isWritten = true;
  });

  /* What is said, above all of the page, for as long as it is so. */
  var told = '';
  function tell(state) {
    if (state === told) return;
    told = state;
    var before = document.querySelector('.desk-gone');
    if (before) before.remove();
    if (state === 'here') return;
    var note = document.createElement('div');
    note.className = 'desk-gone';
    note.tabIndex = -1;
    note.setAttribute('role', state === 'back' ? 'status' : 'alert');
    note.append.apply(note, words(state));
    document.body.prepend(note);
  }
  function words(state) {
    if (state === 'back')
      return [line('The desk is there again', '. What is typed here stands as it was, and can be sent.')];
    var stays = isWritten
      ? 'Nothing that is typed here is sent or lost: it stays in its fields while this page is open, and can be copied. '
      : '';
    if (state === 'elsewhere') {
      var link = document.createElement('a');
      link.href = elsewhere();
      link.textContent = link.href;
      return [line('The desk is at another address now: ', link), line('', stays)];
    }
    var command = document.createElement('code');
    command.textContent = mark.dataset.again;
    var open = 'Open the address that it prints in another window: it has a new key. This page then goes on by itself.';
    return state === 'shut'
      ? [line('The desk was started again', '. ' + open + ' ' + stays)]
      : [
          state === 'other'
            ? line('The desk of another house is at this address now', '. Start this one again in a terminal:')
            : line('The desk has ended', '. Start it again in a terminal:'),
          line('', command),
          line('', open + ' ' + stays),
        ];
  }
  function line(strong, rest) {
    var p = document.createElement('p');
    var first = document.createElement('strong');
    first.textContent = strong;
    p.append(first, rest);
    return p;
  }
  /* The same page where the desk of this house was opened last; nothing where that is here. Cookies are of a machine, not of a port. */
  function elsewhere() {
    var at = new RegExp('(?:^|; )desk-at-' + mark.dataset.house + '=(\\d+)').exec(document.cookie);
    if (!at || at[1] === location.port) return undefined;
    var page = location.pathname === '/desk/do' ? '/desk/index.html' : location.pathname + location.search;
    return location.protocol + '//' + location.hostname + ':' + at[1] + page;
  }

  /* Forms of an earlier start go on with what proves those of this one. */
  function goOn(secret) {
    var isOther = false;
    document.querySelectorAll('input[name="secret"]').forEach(function (field) {
      if (field.value !== secret) isOther = true;
      field.value = secret;
    });
    if (!isOther) return tell(told === 'back' ? 'back' : 'here');
    // What answers a form is not loaded again: that would send the form once more.
    if (!isWritten && location.pathname !== '/desk/do') return location.reload();
    tell('back');
  }
  /* Answers whether the desk is there and takes what this page sends. */
  function look() {
    return fetch('/desk/here', { cache: 'no-store' })
      .then(function (answer) {
        if (answer.ok) return answer.text();
        // Another start of it, whose key this browser has not been given.
        return answer.status === 403 ? 'shut' : '';
      })
      .catch(function () {
        return '';
      })
      .then(function (said) {
        var desk = /^(\w+) ([\w-]{32})$/.exec(said);
        // What is written for one house is never sent to another that has taken its address.
        var isHere = desk !== null && desk[1] === mark.dataset.house;
        if (isHere) goOn(desk[2]);
        else tell(elsewhere() ? 'elsewhere' : said === 'shut' ? 'shut' : desk ? 'other' : 'ended');
        return isHere;
      });
  }

  /* While it is not there every window looks for itself; else one window hears it for all: a browser keeps six ways to one address open, over
     all its windows. */
  var waiting;
  var hears = false;
  var changes;
  function lost() {
    clearTimeout(waiting);
    look().then(function (isHere) {
      if (!isHere) waiting = setTimeout(lost, 1000);
      else if (hears && !changes) hear();
    });
  }
  var last = Number(mark.dataset.standing);
  function heard(number) {
    last = number;
    // Whoever begins to listen later finds it here.
    mark.dataset.heard = number;
    document.dispatchEvent(new CustomEvent('desk-standing', { detail: number }));
  }
  var windows = typeof BroadcastChannel === 'undefined' ? undefined : new BroadcastChannel('desk-changes');
  function pass(data) {
    if (windows) windows.postMessage(data);
  }
  if (windows)
    windows.addEventListener('message', function (event) {
      if (event.data === 'lost') return lost();
      if (event.data !== 'what') return heard(event.data);
      if (hears) pass(last);
    });
  function hear() {
    changes = new EventSource('/desk/changes');
    changes.addEventListener('message', function (event) {
      pass(Number(event.data));
      heard(Number(event.data));
    });
    changes.addEventListener('error', function () {
      changes.close();
      changes = undefined;
      pass('lost');
      lost();
    });
  }
  pass('what');
  if (navigator.locks)
    navigator.locks.request('desk-changes', function () {
      hears = true;
      hear();
      // For as long as the window is open.
      return new Promise(function () {});
    });
  document.addEventListener('visibilitychange', function () {
    if (!document.hidden && told !== '' && told !== 'here') lost();
  });
  window.addEventListener('pageshow', function (event) {
    if (event.persisted) lost();
  });

  /* A form is sent once somebody is there to take it. */
  var isAsked = false;
  var isPassed = false;
  document.addEventListener(
    'submit',
    function (event) {
      var form = event.target;
      if (isPassed || !form.elements.secret) return;
      event.preventDefault();
      event.stopImmediatePropagation();
      if (isAsked) return;
      isAsked = true;
      var button = event.submitter;
      look().then(function (isHere) {
        isAsked = false;
        if (!isHere) {
          lost();
          return attend();
        }
        isPassed = true;
        if (button && button.form === form && button.isConnected) form.requestSubmit(button);
        else form.requestSubmit();
        isPassed = false;
      });
    },
    true,
  );
  /* Nor does a link lead away to nothing, or the window close over what was typed. */
  document.addEventListener('click', function (event) {
    var link = event.target instanceof Element && event.target.closest('a[href]');
    if (!link || !isGone() || link.origin !== location.origin || link.getAttribute('href').charAt(0) === '#') return;
    event.preventDefault();
    attend();
  });
  window.addEventListener('beforeunload', function (event) {
    if (isWritten && isGone()) event.preventDefault();
  });
  function isGone() {
    return told !== '' && told !== 'here' && told !== 'back';
  }
  function attend() {
    var note = document.querySelector('.desk-gone');
    if (note) note.focus();
  }
})();
