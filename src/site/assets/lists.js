/* Long tables, and those within `data-list="always"`, can be narrowed to rows with some words and put in the order of a column. What was asked is kept for this window, so that it
   survives a reload. Without a script the tables are whole, in their own order. */
(function () {
  'use strict';
  var long = 20;

  function kept(key) {
    try {
      return JSON.parse(sessionStorage.getItem(key)) || {};
    } catch {
      return {};
    }
  }
  function keep(key, state) {
    try {
      sessionStorage.setItem(key, JSON.stringify(state));
    } catch {
      // A browser that keeps nothing for pages on a disk.
    }
  }

  /** What a cell is put in order by: its day or its number where it is one. */
  function valueOf(row, column) {
    var cell = row.cells[column];
    var day = cell && cell.querySelector('time');
    if (day) return day.dateTime;
    var text = cell ? cell.textContent.trim() : '';
    var number = Number.parseFloat(text.replace(/[\u2212\u2013]/g, '-').replace(/[^0-9.+-]/g, ''));
    return cell && cell.classList.contains('number') ? (Number.isNaN(number) ? -Infinity : number) : text;
  }

  function enhance(table) {
    var bodies = Array.from(table.tBodies).map(function (body) {
      return Array.from(body.rows);
    });
    var rows = bodies.flat().filter(function (row) {
      return !row.classList.contains('group');
    });
    if (rows.length < (table.closest('[data-list="always"]') ? 2 : long)) return;
    var key = 'bookmatch-list ' + window.location.pathname + '#' + table.id;
    var state = kept(key);
    var region = table.closest('.scroll') || table;
    var tools = document.createElement('p');
    var label = document.createElement('label');
    var words = document.createElement('input');
    var count = document.createElement('span');
    tools.className = 'list-tools';
    words.type = 'search';
    words.value = state.words || '';
    count.setAttribute('role', 'status');
    label.append('Only rows with ', words);
    tools.append(label, count);
    region.before(tools);

    function narrow() {
      var asked = words.value.toLowerCase().split(/\s+/).filter(Boolean);
      var left = 0;
      bodies.forEach(function (list, index) {
        var head = '';
        var shown = 0;
        list.forEach(function (row) {
          if (row.classList.contains('group')) {
            head = row.textContent.toLowerCase();
            return;
          }
          var text = head + ' ' + row.textContent.toLowerCase();
          row.hidden = !asked.every(function (word) {
            return text.includes(word);
          });
          if (!row.hidden) shown += 1;
        });
        table.tBodies[index].hidden = shown === 0;
        left += shown;
      });
      count.textContent = asked.length === 0 ? '' : left + ' of ' + rows.length;
    }

    function order() {
      bodies.forEach(function (list, index) {
        var heads = list.filter(function (row) {
          return row.classList.contains('group');
        });
        var own = list.filter(function (row) {
          return !row.classList.contains('group');
        });
        if (state.column !== undefined) {
          own.sort(function (a, b) {
            var one = valueOf(a, state.column);
            var other = valueOf(b, state.column);
            var less =
              typeof one === 'number' && typeof other === 'number'
                ? one - other
                : String(one).localeCompare(String(other));
            return state.down ? -less : less;
          });
        }
        table.tBodies[index].append.apply(table.tBodies[index], heads.concat(own));
      });
      heads.forEach(function (head, column) {
        if (state.column === column) head.setAttribute('aria-sort', state.down ? 'descending' : 'ascending');
        else head.removeAttribute('aria-sort');
      });
    }

    var heads = Array.from(table.tHead ? table.tHead.rows[0].cells : []);
    heads.forEach(function (head, column) {
      var button = document.createElement('button');
      button.type = 'button';
      button.className = 'list-sort';
      button.append.apply(button, Array.from(head.childNodes));
      head.append(button);
      // Up, down, and as it was.
      button.addEventListener('click', function () {
        if (state.column !== column) state = { words: words.value, column: column };
        else if (!state.down) state.down = true;
        else state = { words: words.value };
        keep(key, state);
        order();
      });
    });
    words.addEventListener('input', function () {
      state.words = words.value;
      keep(key, state);
      narrow();
    });
    narrow();
    order();
  }

  document.querySelectorAll('.scroll > table[id]').forEach(enhance);
})();
