/* Light or dark, remembered; the index on small screens. Classic script: pages on a
   disk may not load modules. Everything works without it, with the reader's own light or dark. */
(function () {
  'use strict';
  var root = document.documentElement;
  var key = 'bookmatch-look';
  root.classList.add('scripted');

  function stored() {
    try {
      return localStorage.getItem(key);
    } catch {
      return null;
    }
  }
  function store(theme) {
    try {
      localStorage.setItem(key, theme);
    } catch {
      // A browser that keeps nothing for pages on a disk: the choice lasts for this page.
    }
  }
  function systemDark() {
    return window.matchMedia('(prefers-color-scheme: dark)').matches;
  }
  function isDark() {
    var theme = root.dataset.theme;
    return theme ? theme === 'dark' : systemDark();
  }

  var theme = stored();
  if (theme === 'light' || theme === 'dark') root.dataset.theme = theme;

  // What an address leads to is open.
  function openTarget() {
    var target = document.getElementById(decodeURIComponent(window.location.hash.slice(1)));
    if (!target) return;
    var wasFolded = false;
    for (var fold = target.closest('details'); fold; fold = fold.parentElement.closest('details')) {
      wasFolded = wasFolded || !fold.open;
      fold.open = true;
    }
    if (wasFolded) target.scrollIntoView();
    // Of a handout: a row of a long table, a product.
    target.querySelectorAll('.row-opener').forEach(function (one) {
      one.checked = true;
    });
    target.querySelectorAll('.folded-facts').forEach(function (one) {
      one.open = true;
    });
  }
  window.addEventListener('hashchange', openTarget);

  document.addEventListener('DOMContentLoaded', function () {
    openTarget();
    var lookButton = document.querySelector('[data-look-button]');
    var menuButton = document.querySelector('[data-menu-button]');
    var index = document.getElementById('index');

    function name() {
      lookButton.textContent = isDark() ? 'Light' : 'Dark';
    }
    lookButton.hidden = false;
    name();
    lookButton.addEventListener('click', function () {
      root.dataset.theme = isDark() ? 'light' : 'dark';
      store(root.dataset.theme);
      name();
    });
    window.matchMedia('(prefers-color-scheme: dark)').addEventListener('change', name);

    function open(yes) {
      index.toggleAttribute('data-open', yes);
      menuButton.setAttribute('aria-expanded', String(yes));
    }
    menuButton.addEventListener('click', function () {
      open(!index.hasAttribute('data-open'));
    });
    document.addEventListener('keydown', function (event) {
      var field = event.target instanceof Element && event.target.closest('input, textarea, select');
      if (event.key === 'Escape' && index.hasAttribute('data-open')) {
        open(false);
        menuButton.focus();
      } else if (event.key === '/' && !field && !event.ctrlKey && !event.metaKey && !event.altKey) {
        var words = document.getElementById('search-words');
        var link = document.querySelector('[data-search-link]');
        if (!words && !link) return;
        event.preventDefault();
        if (words) words.focus();
        else link.click();
      }
    });
  });
})();
