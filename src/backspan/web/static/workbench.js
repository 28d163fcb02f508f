// A tap is one statement: while it is on its way the same form cannot be sent again. Pages work
// without this; the server refuses what came too late by itself.
"use strict";
document.addEventListener("submit", (event) => {
  const form = event.target;
  if (form.dataset.sent) { event.preventDefault(); return; }
  form.dataset.sent = "1";
  setTimeout(() => { delete form.dataset.sent; }, 4000);
});
