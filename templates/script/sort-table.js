// Sorts a table by any column whose heading carries data-sort. Without this script the table stands in its
// first order. Classic script: runs from disk and under a strict content security policy.
(() => {
  const valueOf = (row, column, kind) => {
    const cell = row.cells[column];
    const value = cell.dataset.value ?? cell.textContent.trim();
    return kind === 'number' || cell.dataset.value !== undefined ? Number(value) : value;
  };

  const compare = (a, b) => (a < b ? -1 : a > b ? 1 : 0);

  const sortBy = (table, column, direction) => {
    const headings = [...table.tHead.rows[0].cells];
    const kind = headings[column].dataset.sort;
    const sign = direction === 'ascending' ? 1 : -1;
    const rows = [...table.tBodies[0].rows];
    rows.sort((a, b) => sign * compare(valueOf(a, column, kind), valueOf(b, column, kind)));
    table.tBodies[0].append(...rows);
    for (const [index, heading] of headings.entries()) {
      if (index === column) heading.setAttribute('aria-sort', direction);
      else heading.removeAttribute('aria-sort');
    }
  };

  // A browser repeats a table's header on each printed page only while nothing in it can be pressed.
  const buttons = [];
  addEventListener('beforeprint', () => {
    for (const { heading, button } of buttons) heading.replaceChildren(...button.childNodes);
  });
  addEventListener('afterprint', () => {
    for (const { heading, button } of buttons) {
      button.replaceChildren(...heading.childNodes);
      heading.replaceChildren(button);
    }
  });

  const makeSortable = (table) => {
    // The words are the page's own.
    const said = table.dataset;
    const wayOf = (direction) => (direction === 'ascending' ? said.sortAscending : said.sortDescending);
    const status = document.createElement('p');
    status.className = 'unseen';
    status.setAttribute('role', 'status');
    table.parentElement.before(status);
    const hint = document.createElement('span');
    hint.className = 'sort-hint';
    hint.textContent = ` ${said.sortHint}`;
    table.caption?.append(hint);

    const picker = document.createElement('select');
    const label = document.createElement('label');
    label.className = 'sort-picker';
    label.append(`${said.sortBy} `, picker);
    table.parentElement.before(label);

    const sort = (column, direction) => {
      sortBy(table, column, direction);
      picker.value = `${column} ${direction}`;
      const name = table.tHead.rows[0].cells[column].textContent.trim();
      status.textContent = `${said.sortDone} ${name.toLowerCase()}, ${wayOf(direction)}`;
    };

    for (const [column, heading] of [...table.tHead.rows[0].cells].entries()) {
      if (!heading.dataset.sort) continue;
      const name = heading.textContent.trim();
      for (const direction of ['ascending', 'descending']) {
        picker.add(new Option(`${name}, ${wayOf(direction)}`, `${column} ${direction}`));
      }
      const button = document.createElement('button');
      button.type = 'button';
      button.className = 'sort';
      button.append(...heading.childNodes);
      heading.append(button);
      buttons.push({ heading, button });
      button.addEventListener('click', () => {
        sort(column, heading.getAttribute('aria-sort') === 'ascending' ? 'descending' : 'ascending');
      });
    }
    picker.addEventListener('change', () => {
      const [column, direction] = picker.value.split(' ');
      sort(Number(column), direction);
    });
  };

  for (const table of document.querySelectorAll('table[data-sort-table]')) makeSortable(table);
})();
