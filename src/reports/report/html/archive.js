"use strict";
(() => {
  const body = document.querySelector("#jobs tbody"), rows = [...body.rows];
  const boxes = [...document.querySelectorAll(".counts input")], words = document.querySelector("#words");
  const shown = document.querySelector("#shown");
  const filter = () => {
    const on = new Set(boxes.filter(b => b.checked).map(b => b.value));
    const wanted = words.value.toLowerCase().split(/\s+/).filter(Boolean);
    let count = 0;
    for (const row of rows) {
      const text = wanted.length ? row.textContent.toLowerCase() : "";
      row.hidden = !on.has(row.dataset.v) || !wanted.every(w => text.includes(w));
      if (!row.hidden) count++;
    }
    shown.textContent = shown.dataset.words.replace("{0}", count).replace("{1}", rows.length);
  };
  boxes.forEach(b => b.addEventListener("change", filter));
  words.addEventListener("input", filter);
  const heads = [...document.querySelectorAll("#jobs th")];
  heads.forEach((head, column) => head.querySelector("button").addEventListener("click", () => {
    const down = head.getAttribute("aria-sort") === "ascending";
    heads.forEach(h => h.removeAttribute("aria-sort"));
    head.setAttribute("aria-sort", down ? "descending" : "ascending");
    const key = row => (row.cells[column] ?? row.cells[row.cells.length - 1]).textContent;
    const order = new Intl.Collator(undefined, {numeric: true}).compare;
    rows.sort((a, b) => order(key(a), key(b)) * (down ? -1 : 1));
    body.append(...rows);
  }));
  filter();
})();
