// A table that is wider than its place folds on a phone: each row one below the other, each cell behind the heading of its column.
// Long ones scroll instead; folded, nobody would find the end of them. Drawings cannot fold, and fade.
function foldTables(root) {
  for (const drawing of root.querySelectorAll("[style*=overflow-x] > svg")) fadeEdge(drawing.parentElement);
  for (const table of root.querySelectorAll("table:has(thead)")) {
    table.classList.remove("folds");
    const heads = [...table.querySelectorAll("thead tr:first-child > *")].map((head) => head.textContent.trim());
    const rows = [...table.querySelectorAll("tbody > tr")];
    if (!matchMedia("(max-width: 40rem)").matches || rows.length > 60 || table.querySelector("[colspan], [rowspan]")) continue;
    if (table.parentElement.scrollWidth <= table.parentElement.clientWidth + 1) continue;
    for (const row of rows)
      [...row.children].forEach((cell, n) => {
        cell.dataset.head = heads[n] ?? "";
        cell.classList.toggle("empty", !cell.textContent.trim() && !cell.querySelector("img, svg, input"));
      });
    table.classList.add("folds");
  }
}

// Where a drawing goes on beyond the edge it fades there: a figure that is cut off reads as another.
function fadeEdge(frame) {
  frame.onscroll = () => frame.classList.toggle("goes-on", frame.scrollLeft + frame.clientWidth < frame.scrollWidth - 1);
  frame.onscroll();
}
