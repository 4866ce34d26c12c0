// From the file system a page may not read another one, so the search shows no excerpts there.
if (location.protocol === "file:") DOCUMENTATION_OPTIONS.SHOW_SEARCH_SUMMARY = false;

// What the theme leaves to a mouse, for the keyboard: the labels that open the list of pages, its branches and the contents.
document.addEventListener("DOMContentLoaded", () => {
  for (const label of document.querySelectorAll("label[for^='__'], label[for^='toctree-checkbox']")) {
    const box = document.getElementById(label.htmlFor);
    if (label.classList.contains("overlay")) continue; // the shade beside an open list; Escape does the same
    label.tabIndex = 0;
    label.setAttribute("role", "button");
    const state = () => label.setAttribute("aria-expanded", box.checked);
    box.addEventListener("change", state);
    state();
    label.addEventListener("keydown", (event) => {
      if (event.key !== "Enter" && event.key !== " ") return;
      event.preventDefault();
      label.click();
    });
  }
  for (const box of document.querySelectorAll(".toctree-checkbox")) box.tabIndex = -1; // its label is what is reached
  document.addEventListener("keydown", (event) => {
    if (event.key === "Escape") for (const box of document.querySelectorAll(".sidebar-toggle")) box.checked = false;
  });
});

// Pictures open in their full size, where a phone can zoom: their text is small there otherwise.
function enlargeable(root) {
  for (const picture of root.querySelectorAll("img:not(a img, button img)")) {
    const link = document.createElement("a");
    link.className = "enlarge";
    link.href = picture.src;
    picture.replaceWith(link);
    link.append(picture);
  }
}

document.addEventListener("DOMContentLoaded", () => {
  const article = document.querySelector("article[role=main]");
  if (!article) return;
  enlargeable(article);
  foldTables(article);
  window.addEventListener("resize", () => foldTables(article));
});
