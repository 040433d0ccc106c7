/* Shows what becomes of the printed sheet whose code opened the page. Every answer stands in the page, hidden: this only chooses one. Classic script: pages on
   a disk may not load modules. Without it the page lists all issues and change orders all the same. */
(function () {
  'use strict';
  var asked = new URLSearchParams(location.search);
  var of = asked.has('issue') ? 'issue' : 'change';
  if (!asked.has(of)) return;
  var digest = asked.has('digest') ? '&digest=' + asked.get('digest').slice(0, 5).toLowerCase() : '';
  var answers = Array.from(document.querySelectorAll('[data-asked]'));
  var answer = answers.find(function (one) {
    return one.dataset.asked === of + '=' + asked.get(of) + digest;
  });
  answer = answer || document.querySelector('[data-asked="other"]');
  if (answer) answer.hidden = false;
})();
