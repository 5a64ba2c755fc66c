// The left and right arrow keys turn to the chapter before and after, unless the reader switched that off.
"use strict";
document.addEventListener("keydown", (event) => {
  if (document.documentElement.dataset.turn === "off" || event.defaultPrevented) return;
  if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
  const link = { ArrowLeft: "prev", ArrowRight: "next" }[event.key];
  if (!link) return;
  // Never while something is written, chosen or scrolled with the same keys.
  const busy = 'input, textarea, select, [contenteditable], [role="group"][tabindex], [role="slider"], details.menu, audio, video';
  if (event.target instanceof Element && event.target.closest(busy)) return;
  const page = document.querySelector(`nav.turn a[rel="${link}"]`);
  if (page) page.click();
});
