"use strict";
(() => {
  const order = new Intl.Collator(undefined, {numeric: true}).compare;
  for (const table of document.querySelectorAll("table.sortable")) {
    const body = table.tBodies[0], heads = [...table.tHead.rows[0].cells];
    heads.forEach((head, column) => {
      if (!head.textContent) return;
      const button = document.createElement("button");
      button.type = "button";
      button.textContent = head.textContent;
      head.replaceChildren(button);
      button.addEventListener("click", () => {
        const down = head.getAttribute("aria-sort") === "ascending";
        heads.forEach(h => h.removeAttribute("aria-sort"));
        head.setAttribute("aria-sort", down ? "descending" : "ascending");
        const key = row => row.cells[column].dataset.s ?? row.cells[column].textContent;
        const compare = (a, b) => isNaN(key(a)) || isNaN(key(b)) ? order(key(a), key(b)) : key(a) - key(b);
        body.append(...[...body.rows].sort((a, b) => compare(a, b) * (down ? -1 : 1)));
      });
    });
  }
})();
