// Reckons a form along while somebody types: sends it as it stands to the address in data-reckon
// and shows the answer, a part of a page, in the element that data-into names. Without this script
// the form's own button does the same.
(() => {
  "use strict";
  const WAIT_MS = 400;
  for (const form of document.querySelectorAll("form[data-reckon]")) {
    const into = document.getElementById(form.dataset.into);
    const said = document.getElementById(form.dataset.into + "-said");
    let waiting = 0;
    let asked = 0;
    const reckon = async () => {
      const mine = ++asked;
      try {
        const answer = await fetch(form.dataset.reckon, {
          method: "POST",
          body: new URLSearchParams(new FormData(form)),
          credentials: "same-origin",
        });
        const part = await answer.text();
        if (mine !== asked || !answer.ok || answer.redirected) {
          return;
        }
        into.innerHTML = part;
        const words = into.querySelector("[data-said]");
        if (said && words) {
          said.textContent = words.textContent;
        }
      } catch (offline) {
        // what was shown stays; the button still works
      }
    };
    form.addEventListener("input", () => {
      clearTimeout(waiting);
      waiting = setTimeout(reckon, WAIT_MS);
    });
    if (form.querySelector("input[type=checkbox]:checked")) {
      reckon();
    }
  }
})();
