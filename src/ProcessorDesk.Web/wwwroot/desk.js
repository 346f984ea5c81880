// Makes the pages quicker; every page works without it. No library, no state of its own.
(() => {
  "use strict";
  const page = document.documentElement;
  page.classList.add("js");

  // The Find box: "/" goes there; on a station tablet it has the focus when the page opens, so that a scan needs no tap.
  const find = document.getElementById("find");
  const typing = element => element.matches("input, textarea, select, [contenteditable]");
  document.addEventListener("keydown", event => {
    if (event.key !== "/" || event.ctrlKey || event.metaKey || event.altKey || typing(event.target) || !find) return;
    event.preventDefault();
    find.focus();
    find.select();
  });
  const problems = document.getElementById("problems");
  if (problems) problems.focus();
  else if (find && !location.hash && matchMedia("(pointer: coarse) and (min-width: 700px)").matches
    && !document.querySelector("[autofocus]")) find.focus({ preventScroll: true });

  // A second press while the first is on its way does nothing; coming back to the page frees the button.
  const free = form => {
    delete form.dataset.pressed;
    form.querySelectorAll("[aria-disabled=true]").forEach(button => button.removeAttribute("aria-disabled"));
  };
  document.addEventListener("submit", event => {
    const form = event.target;
    if (event.defaultPrevented || form.method === "get") return;
    if (form.dataset.pressed) { event.preventDefault(); return; }
    form.dataset.pressed = "yes";
    if (event.submitter) event.submitter.setAttribute("aria-disabled", "true");
    // A press that opens a paper leaves this page where it is.
    const target = event.submitter?.formTarget || form.target;
    setTimeout(free, target === "_blank" ? 2000 : 15000, form);
  });
  addEventListener("pageshow", event => { if (event.persisted) document.querySelectorAll("form[data-pressed]").forEach(free); });

  // <form data-live="ADDRESS" data-live-target="#PANEL">: the panel is filled anew while one types. A part of a form may have
  // a panel of its own, which is then the only one that its fields fill.
  document.querySelectorAll("[data-live]").forEach(part => {
    const form = part.closest("form");
    const panel = document.querySelector(part.dataset.liveTarget);
    if (!panel) return;
    const mine = event => event.target.closest("[data-live]") === part && !event.target.dataset.presses;
    let timer = 0, latest = 0;
    const refresh = async () => {
      const turn = ++latest;
      const slow = setTimeout(() => panel.classList.add("working"), 400);
      try {
        const fields = new URLSearchParams(new FormData(form));
        const address = new URL(part.dataset.live, location.href);
        const get = form.method === "get";
        if (get) fields.forEach((value, name) => address.searchParams.append(name, value));
        const answer = await fetch(address, {
          method: get ? "GET" : "POST", body: get ? undefined : fields, headers: { "X-Desk-Live": "1" }, redirect: "error"
        });
        if (!answer.ok) throw new Error(String(answer.status));
        const html = await answer.text();
        if (turn !== latest) return;
        panel.innerHTML = html;
        panel.classList.remove("stale");
      } catch {
        if (turn === latest) panel.classList.add("stale");
      } finally {
        clearTimeout(slow);
        if (turn === latest) panel.classList.remove("working");
      }
    };
    part.addEventListener("input", event => { if (!mine(event)) return; clearTimeout(timer); timer = setTimeout(refresh, 300); });
    part.addEventListener("change", event => { if (!mine(event)) return; clearTimeout(timer); timer = setTimeout(refresh, 50); });
  });

  // <input data-presses="BUTTON-ID"> and <button id="BUTTON-ID" data-fills="PANEL-ID" formaction="ADDRESS">: Enter, as a scanner sends it, presses
  // that button and not the form's main one; the button fills the panel with the server's answer. One ticket after another: what is scanned
  // meanwhile waits its turn, and where the server can't be reached, the form is sent as without script.
  let turn = Promise.resolve();
  const fill = (id, field, scanned) => async () => {
    const button = document.getElementById(id);
    try {
      const fields = new URLSearchParams(new FormData(button.form));
      fields.set(field.name, scanned);
      const answer = await fetch(button.formAction, { method: "POST", body: fields, headers: { "X-Desk-Live": "1" }, redirect: "error" });
      if (!answer.ok) throw new Error(String(answer.status));
      const html = await answer.text();
      const meanwhile = document.getElementById(field.id).value;
      const panel = document.getElementById(button.dataset.fills);
      panel.innerHTML = html;
      const next = document.getElementById(field.id);
      if (meanwhile) next.value = meanwhile;
      next.focus();
      if (next.matches("[aria-invalid]")) next.select();
      panel.dispatchEvent(new Event("change", { bubbles: true }));
    } catch {
      document.getElementById(field.id).value = scanned;
      button.form.requestSubmit(button);
    }
  };
  document.addEventListener("keydown", event => {
    if (event.key !== "Enter" || !event.target.dataset?.presses) return;
    event.preventDefault();
    document.getElementById(event.target.dataset.presses)?.click();
  });
  document.addEventListener("click", event => {
    const button = event.target.closest("[data-fills]");
    if (!button) return;
    event.preventDefault();
    const field = document.querySelector(`[data-presses="${button.id}"]`);
    const scanned = field.value;
    field.value = "";
    turn = turn.then(fill(button.id, field, scanned));
  });

  // <button type="button" data-step="1"> in a field: counts packs by tap.
  document.addEventListener("click", event => {
    const step = event.target.closest("[data-step]");
    const field = step?.closest(".field").querySelector("input");
    if (!field) return;
    field.value = String(Math.max(0, (parseInt(field.value, 10) || 0) + Number(step.dataset.step)));
    field.dispatchEvent(new Event("input", { bubbles: true }));
  });

  // <div class="keypad" data-keypad="FIELD-ID"> with <button type="button" data-key="7">: digits for wet hands.
  document.querySelectorAll("[data-keypad]").forEach(pad => {
    const field = document.getElementById(pad.dataset.keypad);
    if (!field) return;
    if (matchMedia("(pointer: coarse)").matches) field.inputMode = "none";
    pad.addEventListener("click", event => {
      const key = event.target.closest("[data-key]")?.dataset.key;
      if (!key) return;
      field.value = key === "back" ? field.value.slice(0, -1)
        : key === "clear" ? ""
        : key === "." && field.value.includes(".") ? field.value
        : field.value + key;
      field.dispatchEvent(new Event("input", { bubbles: true }));
    });
  });
})();
