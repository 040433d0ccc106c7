/* Trying choices: brings what computes the house along with the first pick, and not before. Classic script: pages on a disk may not load
   modules. Without it everything can be read. */
(function () {
  'use strict';
  var root = document.getElementById('try-root');
  if (!root) return;
  var said = document.getElementById('try-said');
  var here = document.currentScript.src;
  var slips = document.getElementById('slips-root');
  var isAsked = false;

  function bring(file, then) {
    var script = document.createElement('script');
    script.src = here.replace(/try-start\.js$/, file);
    script.onload = then;
    script.onerror = function () {
      tell('The figures could not be read: ' + file + ' is missing beside these pages.');
    };
    document.head.append(script);
  }
  function tell(words) {
    var line = document.createElement('p');
    line.className = 'try-bar try-waiting';
    line.textContent = words;
    root.replaceChildren(line);
    if (said) said.textContent = words;
  }
  function begin() {
    if (isAsked) return;
    isAsked = true;
    tell('Reading the house …');
    bring('try-data.js', function () {
      bring('try.js');
    });
  }
  function hasKept() {
    try {
      var store = root.getAttribute('data-store');
      return (
        localStorage.getItem(store) !== null || (slips !== null && sessionStorage.getItem(store + ' slips') !== null)
      );
    } catch {
      return false;
    }
  }

  // A browser may remember buttons of an earlier visit: what is picked is kept elsewhere.
  document.querySelectorAll('[data-try] input').forEach(function (radio) {
    radio.checked = radio.defaultChecked;
  });
  document.addEventListener('change', function (event) {
    if (event.target instanceof Element && event.target.closest('[data-try]')) begin();
  });
  document.addEventListener('click', function (event) {
    var set = event.target instanceof Element && event.target.closest('[data-try-set]');
    if (!set) return;
    root.dataset.trySet = set.getAttribute('data-try-set');
    begin();
  });
  // On the page where slips are laid down: whoever comes to its box will read one.
  if (slips) {
    ['slip-text', 'slip-files'].forEach(function (id) {
      document.getElementById(id).addEventListener('focus', begin);
      document.getElementById(id).addEventListener('change', begin);
    });
    document.getElementById('slip-read').addEventListener('click', function () {
      slips.dataset.pressed = 'read';
      begin();
    });
  }
  if (hasKept()) begin();
})();
