// The roof plan under a pointer or keys. It turns taps into places in metres and sends them; what
// they mean, where they snap to and what they change is said by the server. Without this script
// every act is a form beside the plan.
"use strict";
(() => {
  const plan = document.getElementById("plan");
  const paper = document.getElementById("paper");
  const drawing = document.getElementById("drawing");
  const data = plan.dataset;
  const metre = Number(data.metre), height = Number(data.height);
  const left = Number(data.x), low = Number(data.y);
  const kept = `plan ${document.title}`;
  const NEAR_PX = 10, CLICK_PX = 6, SETTLE_MS = 140, RESTS_MS = 600;
  let verb = document.querySelector(".tools [aria-pressed=true]").dataset.verb;
  let taps = [], from = "", sending = Promise.resolve(), settle = 0, others = 0;

  // The view: what of the drawing is shown, and what the SVG was last painted for.
  let view = null, painted = null;
  const fit = () => {
    const box = paper.getBoundingClientRect();
    const parts = [...drawing.children].filter((one) => one.dataset.part && !["foot", "underlay"].includes(one.dataset.part));
    const boxes = parts.map((one) => one.getBBox()).filter((one) => one.width > 0);
    const all = boxes.length ? {
      x: Math.min(...boxes.map((one) => one.x)), y: Math.min(...boxes.map((one) => one.y)),
      right: Math.max(...boxes.map((one) => one.x + one.width)), bottom: Math.max(...boxes.map((one) => one.y + one.height)),
    } : { x: 0, y: 0, right: Number(data.width), bottom: height };
    const scale = 1.04 * Math.max((all.right - all.x) / box.width, (all.bottom - all.y) / box.height);
    const w = box.width * scale, h = box.height * scale;
    return { x: (all.x + all.right - w) / 2, y: (all.y + all.bottom - h) / 2, w, h };
  };
  const paint = () => {
    drawing.setAttribute("viewBox", `${view.x} ${view.y} ${view.w} ${view.h}`);
    drawing.style.transform = "";
    drawing.style.willChange = "";
    painted = { ...view };
  };
  // While a hand moves, the picture that is there is moved; it is painted anew when it rests.
  const show = () => {
    const width = paper.clientWidth, grown = painted.w / view.w;
    const x = ((painted.x - view.x) / view.w) * width, y = ((painted.y - view.y) / view.w) * width;
    drawing.style.willChange = "transform";
    drawing.style.transform = `translate(${x}px, ${y}px) scale(${grown})`;
    clearTimeout(settle);
    settle = setTimeout(paint, SETTLE_MS);
  };
  const zoom = (factor, at) => {
    const box = paper.getBoundingClientRect();
    const share = at ? [(at[0] - box.left) / box.width, (at[1] - box.top) / box.height] : [0.5, 0.5];
    const w = Math.min(Math.max(view.w * factor, 10), Number(data.width) * 8), h = (w * view.h) / view.w;
    view = { x: view.x + share[0] * (view.w - w), y: view.y + share[1] * (view.h - h), w, h };
    show();
  };
  const pan = (dx, dy) => {
    const per = view.w / paper.clientWidth;
    view = { ...view, x: view.x - dx * per, y: view.y - dy * per };
    show();
  };
  const place = (event) => {
    const box = paper.getBoundingClientRect();
    const x = view.x + ((event.clientX - box.left) / box.width) * view.w;
    const y = view.y + ((event.clientY - box.top) / box.height) * view.h;
    return [(x - left) / metre, (height - y - low) / metre];
  };
  const near = () => (NEAR_PX * view.w) / paper.clientWidth / metre;
  const pathOf = (target) => target.closest?.("[data-path]")?.dataset.path || "";

  // Sending: one act after another, each with the draft that the one before left.
  const side = () => document.getElementById("side");
  const looked = () => side().querySelector("form.act input[name=of]")?.value || "";
  const mark = () => {
    drawing.querySelectorAll(".looked").forEach((one) => one.classList.remove("looked"));
    const path = looked();
    document.getElementById("look").value = path;
    if (path) drawing.querySelectorAll(`[data-path="${CSS.escape(path)}"]`).forEach((one) => one.classList.add("looked"));
  };
  let acted = false;
  const put = (came) => {
    const there = new Map([...drawing.children].map((one) => [one.dataset.part, one]));
    for (const group of came.querySelectorAll("#changed > g")) {
      const fresh = document.importNode(group, true);
      const old = there.get(group.dataset.part);
      if (old) old.replaceWith(fresh);
      else drawing.insertBefore(fresh, there.get("anchors")?.isConnected ? there.get("anchors") : null);
    }
  };
  const take = (text) => {
    const came = new DOMParser().parseFromString(text, "text/html");
    const beside = came.getElementById("side");
    if (!beside) { location.reload(); return; }
    put(came);
    acted = true;
    const list = came.getElementById("look-at");
    if (list) document.getElementById("look-at").replaceWith(document.importNode(list, true));
    const open = new Set([...side().querySelectorAll("details[open] > summary")].map((one) => one.textContent));
    const focus = spot(document.activeElement);
    side().replaceWith(document.importNode(beside, true));
    side().querySelectorAll("details > summary").forEach((one) => { if (open.has(one.textContent)) one.parentElement.open = true; });
    if (focus) [...side().querySelectorAll("input, select, button")].find((one) => spot(one) === focus)?.focus();
    const drawn = !document.getElementById("roof-level");
    for (const one of document.querySelectorAll(".tools button")) one.hidden = (one.dataset.verb === "draw roof") === drawn;
    if (drawn && verb === "draw roof") choose(document.querySelector(".tools button:not([hidden])"));
    keep();
    mark();
    // What was moved is answered first; the other drops that it touched once the hand rests.
    const first = side().dataset.waiting;
    if (first) others = setTimeout(() => send({ does: "look", others: first }), RESTS_MS);
  };
  // A field by what it is for, to come back to it where what stands beside the plan is new.
  const spot = (one) => side().contains(one) ? [one.form?.querySelector("input[name=verb]")?.value, one.tagName, one.name, one.value && one.tagName === "BUTTON" ? one.value : ""].join("/") : "";
  const keep = () => {
    const draft = side().querySelector("form.act input[name=draft]")?.value || "[]";
    if (draft === "[]") localStorage.removeItem(kept);
    else localStorage.setItem(kept, draft);
  };
  const send = (fields) => {
    clearTimeout(others);
    sending = sending.then(async () => {
      const form = side().querySelector("form.act");
      const body = fields instanceof FormData ? fields : new FormData();
      for (const name of ["csrfmiddlewaretoken", "draft", "of", "ledger_place"]) {
        if (!body.has(name)) body.set(name, form.querySelector(`input[name=${name}]`).value);
      }
      if (!(fields instanceof FormData)) for (const [name, value] of Object.entries(fields)) body.set(name, value);
      const answer = await fetch(data.at, { method: "POST", body, headers: { "X-Part": "plan" } });
      take(await answer.text());
    }).catch((error) => say(`It did not arrive: ${error.message}. Nothing was changed.`));
    return sending;
  };
  const say = (text) => { under.textContent = text; under.hidden = !text; };
  const under = document.createElement("p");
  under.className = "under"; under.setAttribute("role", "status"); under.hidden = true;
  paper.append(under);

  // What a tap does, by the verb that is chosen.
  const at = (point, number = "") => ({ [`x${number}`]: point[0].toFixed(4), [`y${number}`]: point[1].toFixed(4) });
  const act = (fields) => send({ does: "act", near: near().toFixed(4), ...fields });
  const tap = (event) => {
    const point = place(event), path = pathOf(event.target);
    switch (verb) {
      case "look": case "move":
        if (path) send({ does: "look", of: path });
        break;
      case "place anchor": case "place drop":
        act({ verb, ...at(point), ...typed() });
        break;
      case "add corner":
        if (/\/edges\//.test(path)) act({ verb, of: path, ...at(point) });
        else say("Tap the edge where the corner is to be.");
        break;
      case "place point":
        if (/^drops\/[^/]+$/.test(looked())) act({ verb, of: looked(), ...at(point), ...typed() });
        else say("Look at the drop first, and choose its hoist and beam beside the plan.");
        break;
      case "connect":
        if (!from) { from = path; say(path ? "Now tap the anchor it is led to." : ""); break; }
        if (/\/anchors\//.test(path)) act({ verb, of: from, anchor: decodeURIComponent(path.split("/").pop()) });
        else say("That is no anchor: begin again with the line, the point or the drop.");
        from = "";
        break;
      case "measure": case "place obstacle":
        taps.push(point);
        if (taps.length === 2) {
          const ends = { ...at(taps[0]), ...at(taps[1], "2"), near: near().toFixed(4) };
          send(verb === "measure" ? { does: "measure", ...ends } : { does: "act", verb, ...ends, ...typed() });
          taps = [];
        } else say("Now the other end.");
        break;
      case "draw roof":
        if (taps.length > 2 && Math.hypot(point[0] - taps[0][0], point[1] - taps[0][1]) <= 2 * near()) { close(); break; }
        taps.push(point);
        trace();
        break;
    }
  };
  // What stands in the forms beside the plan goes with a tap: a mark, a kind, a width.
  const typed = () => {
    const form = [...side().querySelectorAll("form.act")].find((one) => one.querySelector("input[name=verb]")?.value === verb);
    const found = {};
    for (const name of ["kind", "name", "width", "hoist", "beam"]) {
      const value = form?.querySelector(`:is(input, select)[name=${name}]`)?.value;
      if (value) found[name] = value;
    }
    return found;
  };
  const SVG = "http://www.w3.org/2000/svg";
  const traced = document.createElementNS(SVG, "polyline");
  traced.setAttribute("class", "traced");
  const trace = () => {
    traced.setAttribute("points", taps.map(([x, y]) => `${left + x * metre},${height - low - y * metre}`).join(" "));
    drawing.append(traced);
    say(`${taps.length} corners; tap the first again, or press Enter, to close it.`);
  };
  const close = () => {
    const name = document.getElementById("roof-name"), level = document.getElementById("roof-level");
    if (!level || !level.value) { say("Say its height above the ground first."); level?.focus(); return; }
    const corners = taps.map(([x, y]) => `${x.toFixed(4)},${y.toFixed(4)}`).join(" ");
    act({ verb: "draw roof", corners, name: name.value, level: level.value });
    taps = [];
    traced.remove();
    say("");
  };

  // Pointers: one pans or drags a thing, two pinch.
  const down = new Map();
  let dragged = null, pinch = 0;
  paper.addEventListener("pointerdown", (event) => {
    if (event.target.closest("button, input")) return;
    paper.focus({ preventScroll: true });
    paper.setPointerCapture(event.pointerId);
    down.set(event.pointerId, { x: event.clientX, y: event.clientY, first: event, target: event.target, far: 0 });
    dragged = null;
    const path = pathOf(event.target);
    if (verb === "move" && path && down.size === 1) {
      const groups = [...drawing.querySelectorAll(`[data-path="${CSS.escape(path)}"]`)];
      dragged = { path, start: place(event), ghosts: groups.map((one) => { const ghost = one.cloneNode(true); ghost.setAttribute("class", "ghost"); drawing.append(ghost); return ghost; }) };
    }
    if (down.size === 2) { lift(); pinch = spread(); }
  });
  const spread = () => { const [a, b] = [...down.values()]; return Math.hypot(a.x - b.x, a.y - b.y); };
  const lift = () => { dragged?.ghosts.forEach((one) => one.remove()); dragged = null; };
  paper.addEventListener("pointermove", (event) => {
    const one = down.get(event.pointerId);
    if (!one) { hover(event); return; }
    const dx = event.clientX - one.x, dy = event.clientY - one.y;
    one.far = Math.max(one.far, Math.hypot(event.clientX - one.first.clientX, event.clientY - one.first.clientY));
    one.x = event.clientX; one.y = event.clientY;
    if (down.size === 2) {
      const now = spread();
      const [a, b] = [...down.values()];
      if (pinch > 0 && now > 0) zoom(pinch / now, [(a.x + b.x) / 2, (a.y + b.y) / 2]);
      pinch = now;
    } else if (dragged) {
      const [x, y] = place(event);
      const shift = `translate(${(x - dragged.start[0]) * metre} ${-(y - dragged.start[1]) * metre})`;
      dragged.ghosts.forEach((ghost) => ghost.setAttribute("transform", shift));
    } else if (one.far > CLICK_PX) pan(dx, dy);
  });
  paper.addEventListener("pointerup", (event) => {
    const one = down.get(event.pointerId);
    down.delete(event.pointerId);
    if (!one) return;
    if (dragged && one.far > CLICK_PX) {
      const end = place(event);
      act({ verb: "move", of: dragged.path, ...at(end), ...at(dragged.start, "0") });
    } else if (one.far <= CLICK_PX && down.size === 0) tap({ clientX: event.clientX, clientY: event.clientY, target: one.target });
    lift();
  });
  paper.addEventListener("pointercancel", (event) => { down.delete(event.pointerId); lift(); });
  paper.addEventListener("wheel", (event) => { event.preventDefault(); zoom(Math.exp(event.deltaY * 0.0015), [event.clientX, event.clientY]); }, { passive: false });
  const last = new Map();
  let over = "", wait = 0;
  const hover = (event) => {
    if (taps.length || from) return;
    const path = pathOf(event.target);
    if (path === over) return;
    over = path;
    clearTimeout(wait);
    const option = path && [...document.getElementById("look").options].find((one) => one.value === path);
    say(option ? option.textContent : "");
    if (option) wait = setTimeout(() => recall(path, option.textContent), 350);
  };
  // The name of what is under the pointer, and after a moment what was stated last of it.
  const recall = async (path, name) => {
    if (!last.has(path)) {
      const answer = await fetch(`${data.at}?part=last&of=${encodeURIComponent(path)}`);
      last.set(path, answer.ok ? await answer.text() : "");
    }
    if (over === path && last.get(path)) say(`${name}: ${last.get(path)}`);
  };

  // Keys: the thing looked at is nudged, else the view is moved.
  paper.addEventListener("keydown", (event) => {
    const ways = { ArrowLeft: [-1, 0], ArrowRight: [1, 0], ArrowUp: [0, 1], ArrowDown: [0, -1] };
    const way = ways[event.key];
    if (way) {
      const step = Number(event.shiftKey ? data.fine : data.step);
      if (verb === "move" && looked()) act({ verb: "move", dx: (way[0] * step).toFixed(4), dy: (way[1] * step).toFixed(4), x0: "0", y0: "0", x: (way[0] * step).toFixed(4), y: (way[1] * step).toFixed(4), near: "0" });
      else pan(-way[0] * 60, way[1] * 60);
    } else if (event.key === "+" || event.key === "=") zoom(0.8);
    else if (event.key === "-") zoom(1.25);
    else if (event.key === "0") { view = fit(); show(); }
    else if (event.key === "Escape") { taps = []; from = ""; traced.remove(); say(""); }
    else if (event.key === "Enter" && verb === "draw roof" && taps.length > 2) close();
    else if ((event.ctrlKey || event.metaKey) && event.key === "z") send({ does: "undo" });
    else return;
    event.preventDefault();
  });

  // Forms beside the plan bring only what changed; signing is a page of its own.
  plan.addEventListener("submit", (event) => {
    const form = event.target, does = event.submitter?.value || "";
    if (!form.matches("form.act") || does === "sign") return;
    event.preventDefault();
    const body = new FormData(form);
    if (does) body.set("does", does);
    // The list of things keeps its place while the draft goes on.
    if (form.closest("#look-at")) for (const name of ["draft", "ledger_place"]) body.delete(name);
    send(body);
  });
  plan.addEventListener("change", (event) => {
    const layer = event.target.dataset?.layer;
    if (layer) drawing.classList.toggle(`without-${layer}`, !event.target.checked);
  });
  document.querySelector(".tools").addEventListener("click", (event) => {
    const button = event.target.closest("button[data-verb]");
    if (!button) return;
    choose(button);
  });
  function choose(button) {
    verb = button.dataset.verb; taps = []; from = ""; traced.remove(); say("");
    document.querySelectorAll(".tools button").forEach((one) => one.setAttribute("aria-pressed", String(one === button)));
  }

  // What nobody signed outlives a page that was closed; whoever comes back is asked.
  const left_over = localStorage.getItem(kept);
  if (new URLSearchParams(location.search).has("signed")) localStorage.removeItem(kept);
  else if (left_over && left_over !== "[]") {
    const many = JSON.parse(left_over).length;
    const bar = document.createElement("p");
    bar.className = "note";
    bar.append(`${many} ${many === 1 ? "act was" : "acts were"} drawn here before and not signed. `);
    for (const [label, run] of [["take up", () => send({ does: "look", draft: left_over, all: "1" })], ["leave out", () => localStorage.removeItem(kept)]]) {
      const button = document.createElement("button");
      button.type = "button"; button.textContent = label;
      button.addEventListener("click", () => { run(); bar.remove(); });
      bar.append(button, " ");
    }
    plan.before(bar);
  }

  document.querySelectorAll(".plan :is(.tools, .layers)").forEach((one) => { one.hidden = false; });
  paper.classList.add("live");
  view = fit();
  paint();
  mark();
  addEventListener("resize", () => { view = fit(); paint(); });
  // The answers come after the page: they are asked for once it stands.
  const answered = () => fetch(`${data.at}?part=answers`).then((one) => one.text()).then((text) => {
    const came = new DOMParser().parseFromString(text, "text/html");
    if (localStorage.getItem(kept) === null && !acted) put(came);
  }).catch(() => say("The answers of the drops did not arrive; open a drop to see its own."));
  if (document.readyState === "complete") answered();
  else addEventListener("load", answered);
})();
