/* A page of the desk shows the records as they are: when they change, it is loaded again, unless something is being written in it. */
(function () {
  'use strict';
  var mark = document.querySelector('[data-standing]');
  if (!mark) return;
  var shown = Number(mark.dataset.standing);
  var isWritten = false;
  // A page that loaded itself again goes on where it was.
  var focused = document.getElementById(sessionStorage.getItem('desk-focus') || '');
  sessionStorage.removeItem('desk-focus');
  if (focused) focused.focus({ preventScroll: true });
  document.addEventListener('input', function (event) {
    if (event.target.closest('form')) isWritten = true;
  });
  var isSent = false;
  document.addEventListener('submit', function (event) {
    if (isSent) event.preventDefault();
    isSent = true;
  });
  window.addEventListener('pageshow', function () {
    isSent = false;
  });
  function changed(number) {
    last = Math.max(last, number);
    if (document.hidden || last <= shown) return;
    shown = last;
    if (isSent) return;
    // What answers a form is not loaded again: that would send the form once more.
    if (!isWritten && location.pathname !== '/desk/do') {
      sessionStorage.setItem('desk-focus', document.activeElement.id);
      return location.reload();
    }
    if (document.querySelector('.desk-changed')) return;
    var note = document.createElement('p');
    note.className = 'desk-changed';
    note.setAttribute('role', 'status');
    note.textContent =
      'The records changed meanwhile: what you have written here is held against them when it is saved.';
    mark.prepend(note);
  }
  var last = shown;
  document.addEventListener('desk-standing', function (event) {
    changed(event.detail);
  });
  document.addEventListener('visibilitychange', function () {
    changed(last);
  });
  changed(Number(mark.dataset.heard || shown));
})();

/* Who chose last, and on which day, stands in the next choice too, for as long as the window is open. */
(function () {
  'use strict';
  var form = document.querySelector('form[data-chooses]');
  if (!form) return;
  var kept = ['by', 'on'];
  kept.forEach(function (name) {
    var value = sessionStorage.getItem('desk-' + name);
    var field = form.elements[name];
    var before = field.value;
    if (value === null) return;
    field.value = value;
    // Whoever is no longer in the list is not chosen.
    if (field.value !== value) field.value = before;
  });
  form.addEventListener('submit', function () {
    kept.forEach(function (name) {
      sessionStorage.setItem('desk-' + name, form.elements[name].value);
    });
  });
})();

/* A choice is made in the pictures of its page: the form's own buttons would ask the same once more. */
(function () {
  'use strict';
  var form = document.querySelector('form[data-chooses]');
  var own = form && form.querySelector('.desk-choices');
  var place = form && document.querySelector('[data-try="' + CSS.escape(form.dataset.chooses) + '"]');
  if (!own || !place) return;
  var pairs = [];
  var radios = Array.prototype.slice.call(own.querySelectorAll('input'));
  radios.forEach(function (radio) {
    var picture = Array.prototype.find.call(place.querySelectorAll('input'), function (one) {
      return !one.disabled && (one.value || 'open') === radio.value;
    });
    if (picture) pairs.push({ own: radio, picture: picture });
  });
  if (pairs.length === 0) return;
  pairs.forEach(function (pair) {
    pair.own.parentElement.hidden = true;
  });
  own.hidden = pairs.length === radios.length;
  own.querySelector('legend').textContent = 'Or, where none of those above shall stand there';
  // All of them are one group, in two forms.
  var isGivenUp = false;
  place.addEventListener('change', function () {
    if (!isGivenUp) take();
  });
  own.addEventListener('change', function (event) {
    if (event.target.checked) giveUp();
  });
  form.addEventListener('submit', function () {
    // What no picture shows is chosen here alone.
    var isOwn = radios.some(function (radio) {
      return radio.checked && !radio.parentElement.hidden;
    });
    if (!isOwn) take();
  });
  function giveUp() {
    var stands = Array.prototype.find.call(place.querySelectorAll('input'), function (one) {
      return one.defaultChecked;
    });
    isGivenUp = true;
    // What was tried in the pictures is taken back.
    if (stands && !stands.checked) {
      stands.checked = true;
      stands.dispatchEvent(new Event('change', { bubbles: true }));
    }
    isGivenUp = false;
    pairs.forEach(function (pair) {
      pair.picture.checked = false;
    });
  }
  function take() {
    pairs.forEach(function (pair) {
      if (pair.picture.checked) pair.own.checked = true;
    });
  }
})();

/* What is walked draws itself: the desk draws it, and nothing is written. */
(function () {
  'use strict';
  var plan = document.querySelector('[data-draws]');
  var walls = plan && document.getElementById(plan.dataset.draws);
  if (!walls) return;
  var asked = 0;
  var waiting;
  function draw() {
    var mine = ++asked;
    var form = new URLSearchParams({ ask: 'draw', secret: walls.form.elements.secret.value, walls: walls.value });
    fetch(walls.form.action, { method: 'POST', body: form })
      .then(function (answer) {
        return answer.ok ? answer.text() : '';
      })
      .then(function (html) {
        if (mine === asked && html) plan.innerHTML = html;
      })
      .catch(function () {
        // The desk has ended: the walls are still there to be written down.
      });
  }
  walls.addEventListener('input', function () {
    clearTimeout(waiting);
    waiting = setTimeout(draw, 120);
  });
  if (walls.value) draw();
})();

/* What was written and not taken stands in its form again. */
(function () {
  'use strict';
  var kept = 'desk-refused';
  var said = document.querySelector('.desk-said');
  var text = sessionStorage.getItem(kept);
  // Whoever hears a page, or goes through it by keys, begins with what became of the form.
  if (said) {
    said.tabIndex = -1;
    said.focus();
  }
  // Where nothing is said, the desk ended before it answered.
  if (text !== null && said && said.classList.contains('is-done')) sessionStorage.removeItem(kept);
  else if (text !== null) fill(JSON.parse(text));
  function house() {
    var mark = document.querySelector('[data-house]');
    return mark && mark.dataset.house;
  }
  /* The form of the same house that is about the same, and leads back to the same page. */
  function isSame(form, pairs) {
    return (
      pairs.house === house() &&
      ['ask', 'back', 'path'].every(function (name) {
        var field = form.elements[name];
        return (field ? field.value : undefined) === (pairs.values[name] || [])[0];
      })
    );
  }
  function fill(pairs) {
    var form = Array.prototype.find.call(document.forms, function (one) {
      return one.elements.ask && isSame(one, pairs);
    });
    if (!form) return;
    // It is held against what it was written for, not against what is there by now.
    ['was', 'digest'].forEach(function (name) {
      if (form.elements[name] && pairs.values[name]) form.elements[name].value = pairs.values[name][0];
    });
    sessionStorage.removeItem(kept);
    Array.prototype.forEach.call(form.elements, function (field) {
      if (!field.name || field.type === 'hidden' || field.type === 'file') return;
      var values = pairs.values[field.name] || [];
      var before = [field.checked, field.value].join();
      if (field.type === 'radio' || field.type === 'checkbox') field.checked = values.indexOf(field.value) >= 0;
      else if (values.length > 0) field.value = values[0];
      // It is as good as typed: what is drawn of it is drawn, and the page is not loaded over it.
      if ([field.checked, field.value].join() !== before) field.dispatchEvent(new Event('input', { bubbles: true }));
      if (field.value && field.closest('details') && values[0]) field.closest('details').open = true;
    });
    for (var at = form.closest('details'); at; at = at.parentElement.closest('details')) at.open = true;
  }
  document.addEventListener('submit', function (event) {
    var form = event.target;
    if (form.method !== 'post' || !form.elements.ask || event.defaultPrevented) return;
    var values = {};
    new FormData(form).forEach(function (value, name) {
      if (typeof value === 'string' && name !== 'secret') (values[name] = values[name] || []).push(value);
    });
    try {
      sessionStorage.setItem(kept, JSON.stringify({ house: house(), values: values }));
    } catch {
      // More than a window keeps: it stays where it was sent from.
    }
  });
})();

/* A photograph of a camera is made smaller before it is sent: a page shows a quarter of it. Without this it is sent as it is. */
(function () {
  'use strict';
  var most = 2000;
  document.addEventListener('change', function (event) {
    var field = event.target;
    var file = field.type === 'file' && field.files[0];
    if (!file || typeof createImageBitmap === 'undefined') return;
    createImageBitmap(file)
      .then(function (picture) {
        var scale = most / Math.max(picture.width, picture.height);
        if (scale >= 1 || file !== field.files[0]) return;
        var canvas = document.createElement('canvas');
        canvas.width = Math.round(picture.width * scale);
        canvas.height = Math.round(picture.height * scale);
        var pen = canvas.getContext('2d');
        pen.fillStyle = '#ffffff';
        pen.fillRect(0, 0, canvas.width, canvas.height);
        pen.drawImage(picture, 0, 0, canvas.width, canvas.height);
        canvas.toBlob(
          function (smaller) {
            if (!smaller || file !== field.files[0]) return;
            var files = new DataTransfer();
            files.items.add(new File([smaller], file.name, { type: 'image/jpeg' }));
            field.files = files.files;
          },
          'image/jpeg',
          0.85,
        );
      })
      .catch(function () {
        // No picture that this browser knows: the desk says what it is.
      });
  });
})();

/* A problem leads to its line in the record's text. */
(function () {
  'use strict';
  var field = document.querySelector('textarea.desk-code');
  function show() {
    var line = /^#line-(\d+)$/.exec(location.hash);
    if (!field || !line) return;
    var lines = field.value.split('\n');
    var at = Math.min(Number(line[1]), lines.length) - 1;
    var start = lines.slice(0, at).join('\n').length + (at > 0 ? 1 : 0);
    field.focus();
    field.setSelectionRange(start, start + lines[at].length);
    field.scrollTop = (field.scrollHeight * at) / lines.length - field.clientHeight / 3;
  }
  window.addEventListener('hashchange', show);
  show();
})();
