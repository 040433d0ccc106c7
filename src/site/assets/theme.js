/* Light or dark sheet, remembered; the sheet index on small screens. Classic script: pages on a
   disk may not load modules. Everything works without it, with the reader's own light or dark. */
(function () {
  'use strict';
  var root = document.documentElement;
  var key = 'bookmatch-sheet';
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

  document.addEventListener('DOMContentLoaded', function () {
    var themeButton = document.querySelector('[data-theme-button]');
    var indexButton = document.querySelector('[data-index-button]');
    var index = document.getElementById('sheet-index');

    function name() {
      themeButton.querySelector('[data-theme-name]').textContent = isDark() ? 'Light' : 'Dark';
    }
    themeButton.hidden = false;
    name();
    themeButton.addEventListener('click', function () {
      root.dataset.theme = isDark() ? 'light' : 'dark';
      store(root.dataset.theme);
      name();
    });
    window.matchMedia('(prefers-color-scheme: dark)').addEventListener('change', name);

    indexButton.hidden = false;
    function open(yes) {
      index.toggleAttribute('data-open', yes);
      indexButton.setAttribute('aria-expanded', String(yes));
    }
    indexButton.addEventListener('click', function () {
      open(!index.hasAttribute('data-open'));
    });
    document.addEventListener('keydown', function (event) {
      var field = event.target instanceof Element && event.target.closest('input, textarea, select');
      if (event.key === 'Escape' && index.hasAttribute('data-open')) {
        open(false);
        indexButton.focus();
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
