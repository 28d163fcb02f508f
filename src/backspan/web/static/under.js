// Picks points on a drawing or picture: a tap fills the two numbers of the point that is chosen.
// Without this script the numbers are typed.
"use strict";
(() => {
  const SVG = "http://www.w3.org/2000/svg", CLICK_PX = 6, SIGN_PX = 9;
  const paper = document.getElementById("under-paper"), drawing = document.getElementById("under-drawing");
  const form = document.getElementById("under-form"), tools = document.getElementById("under-tools");
  const data = drawing.dataset, per = Number(data.per), way = data.down ? 1 : -1;
  const whole = drawing.getAttribute("viewBox").split(" ").map(Number);
  let view = [...whole], point = "1", from = null, far = 0, pinch = 0;
  const down = new Map();
  const buttons = [...tools.querySelectorAll("[data-point]")];
  const field = (axis, number) => form.elements[`${axis}${number}`];
  const choose = (number) => {
    point = number;
    buttons.forEach((one) => one.setAttribute("aria-pressed", String(one.dataset.point === number)));
  };
  const spot = (event) => {
    const at = new DOMPoint(event.clientX, event.clientY).matrixTransform(drawing.getScreenCTM().inverse());
    return [at.x, at.y];
  };
  // Each point that has both its numbers, as a ring with its number; as large at any zoom.
  const mark = () => {
    drawing.querySelectorAll(".picked").forEach((one) => one.remove());
    const size = (SIGN_PX * view[2]) / (drawing.clientWidth || 1);
    for (const { dataset: { point: number } } of buttons) {
      const x = parseFloat(field("x", number).value), y = parseFloat(field("y", number).value);
      if (!Number.isFinite(x) || !Number.isFinite(y)) continue;
      const at = [(x - Number(data.x)) / per, (way * (y - Number(data.y))) / per];
      const group = document.createElementNS(SVG, "g");
      group.setAttribute("class", "picked");
      const ring = document.createElementNS(SVG, "path");
      const [u, v] = at;
      ring.setAttribute("d", `M${u - size} ${v}H${u + size}M${u} ${v - size}V${v + size}M${u - size} ${v}a${size} ${size} 0 1 0 ${2 * size} 0a${size} ${size} 0 1 0 ${-2 * size} 0`);
      const text = document.createElementNS(SVG, "text");
      text.setAttribute("x", u + 1.2 * size); text.setAttribute("y", v - 0.6 * size);
      text.setAttribute("font-size", 2 * size); text.textContent = number;
      group.append(ring, text);
      drawing.append(group);
    }
  };
  const show = () => { drawing.setAttribute("viewBox", view.join(" ")); mark(); };
  const zoom = (factor, at) => {
    const [x, y, w, h] = view, [u, v] = at || [x + w / 2, y + h / 2];
    if (w * factor > 2 * whole[2] || w * factor < whole[2] / 500) return;
    view = [u - (u - x) * factor, v - (v - y) * factor, w * factor, h * factor];
    show();
  };
  // One finger drags or taps, two zoom: what was zoomed is no tap.
  const spread = () => { const [a, b] = [...down.values()]; return Math.hypot(a.clientX - b.clientX, a.clientY - b.clientY); };
  const middle = () => { const [a, b] = [...down.values()]; return spot({ clientX: (a.clientX + b.clientX) / 2, clientY: (a.clientY + b.clientY) / 2 }); };
  paper.addEventListener("pointerdown", (event) => {
    paper.setPointerCapture(event.pointerId);
    down.set(event.pointerId, event);
    if (down.size === 1) { from = { x: event.clientX, y: event.clientY, at: spot(event) }; far = 0; }
    if (down.size === 2) { far = Infinity; pinch = spread(); }
  });
  paper.addEventListener("pointermove", (event) => {
    if (!down.has(event.pointerId)) return;
    down.set(event.pointerId, event);
    if (down.size === 2) {
      const now = spread();
      if (pinch > 0 && now > 0) zoom(pinch / now, middle());
      pinch = now;
      return;
    }
    far = Math.max(far, Math.hypot(event.clientX - from.x, event.clientY - from.y));
    if (far <= CLICK_PX || far === Infinity) return;
    const [x, y] = spot(event);
    view[0] += from.at[0] - x; view[1] += from.at[1] - y;
    show();
  });
  paper.addEventListener("pointerup", (event) => {
    const tapped = down.delete(event.pointerId) && down.size === 0 && far <= CLICK_PX;
    if (!tapped) return;
    const [x, y] = spot(event);
    field("x", point).value = String(Number((Number(data.x) + x * per).toFixed(4)));
    field("y", point).value = String(Number((Number(data.y) + way * y * per).toFixed(4)));
    const next = buttons[buttons.findIndex((one) => one.dataset.point === point) + 1];
    if (next) choose(next.dataset.point);
    mark();
  });
  paper.addEventListener("pointercancel", (event) => { down.delete(event.pointerId); });
  paper.addEventListener("wheel", (event) => { event.preventDefault(); zoom(Math.exp(event.deltaY * 0.0015), spot(event)); }, { passive: false });
  tools.addEventListener("click", (event) => {
    const button = event.target.closest("button");
    if (button?.dataset.point) choose(button.dataset.point);
    else if (button?.dataset.zoom === "0") { view = [...whole]; show(); }
    else if (button?.dataset.zoom) zoom(Number(button.dataset.zoom));
  });
  form.addEventListener("input", mark);
  addEventListener("resize", mark);
  tools.hidden = false;
  paper.classList.add("picking");
  mark();
})();
