// What is told of a face, a feature or a part, from the page's summary.

const HTML = "http://www.w3.org/1999/xhtml";

function element(tag, attributes = {}, ...children) {
  const made = document.createElementNS(HTML, tag);
  for (const [name, value] of Object.entries(attributes)) made.setAttribute(name, value);
  made.append(...children.filter((child) => child !== null && child !== ""));
  return made;
}

function anchor(kind, key) {
  return `${kind}-${key.replace(/[^A-Za-z0-9._-]/g, (sign) => `-${sign.codePointAt(0).toString(16)}-`)}`;
}

function words(key) {
  return key.replaceAll("_", " ");
}

function figure(value, digits = 4) {
  return typeof value === "number" ? String(Number(value.toFixed(digits))) : String(value ?? "");
}

function withUnit(value, unit) {
  const shown = figure(value);
  return unit && shown !== "" ? `${shown} ${unit}` : shown;
}

function limits({ value, upper, lower, unit }) {
  if (typeof value !== "number" || typeof upper !== "number" || typeof lower !== "number") return "";
  return `${(value + lower).toFixed(3)} to ${(value + upper).toFixed(3)} ${unit}`;
}

function link(kind, key, text) {
  const target = document.getElementById(anchor(kind, key));
  if (!target) return element("span", {}, text);
  const made = element("a", { href: `#${target.id}` }, text);
  made.addEventListener("click", () => {
    for (let at = target; at; at = at.parentElement) if (at.localName === "details") at.open = true;
    const details = target.querySelector("details");
    if (details) details.open = true;
  });
  return made;
}

// A key is a dimension, or another value that the page may show too.
function keyLink(summary, key, text = words(key)) {
  return link(key in (summary.dimensions ?? {}) ? "dimension" : "value", key, text);
}

function row(list, name, ...shown) {
  if (shown.some((part) => part)) list.append(element("dt", {}, name), element("dd", {}, ...shown));
}

function diameter(feature) {
  const size = [figure(feature.diameter), feature.fit].filter(Boolean).join(" ");
  const within = limits({ ...feature, value: feature.diameter, unit: "mm" });
  return within ? `${size}, from ${within}` : `${size} mm`;
}

function pocketSize({ low, high, corner_radius: radius }) {
  const size = [0, 1, 2].map((i) => figure(high[i] - low[i])).join(" x ");
  return `${size} mm (x, y, z), corner radius ${withUnit(radius, "mm")}`;
}

function featureRows(list, feature) {
  row(list, "Call-out", feature.call_out);
  if (feature.pocket) row(list, "Size", pocketSize(feature.pocket));
  else if (feature.thread) row(list, "Drilled", withUnit(feature.diameter, "mm"));
  else row(list, "Diameter", diameter(feature));
  if (feature.thread) row(list, "Thread", `${feature.thread}, full ${withUnit(feature.thread_depth, "mm")} deep`);
  row(list, "Depth", `${withUnit(feature.depth, "mm")}${feature.through ? ", open at its end" : ""}`);
  if (feature.counterbore_diameter) {
    const deep = `${withUnit(feature.counterbore_depth, "mm")} deep`;
    row(list, "Counterbore", `${withUnit(feature.counterbore_diameter, "mm")}, ${deep}`);
  }
  row(list, "Mouth", `${feature.position.map((v, i) => `${"xyz"[i]} ${figure(v, 3)}`).join(", ")} mm`);
}

function characteristic(note) {
  const size = note.value === null ? "" : ` ${withUnit(note.value, note.unit)}`;
  const to = note.datums.length ? ` to ${note.datums.join(", ")}` : "";
  const number = note.number === null ? "" : `No. ${note.number}, `;
  const name = note.kind === "datum" ? `datum ${note.text}` : `${note.kind}${size}`;
  return `${number}${name}${note.fit ? ` ${note.fit}` : ""}${to}${note.reason ? `: ${note.reason}` : ""}`;
}

function tolerances(summary, face, feature) {
  const places = [face.id, ...(feature ? [feature.id, feature.group] : [])];
  const notes = (summary.characteristics ?? []).filter((n) => places.includes(n.face) || places.includes(n.feature));
  return notes.map(characteristic);
}

function input(summary, name, { value, unit, origin, ref }) {
  return element("li", {}, keyLink(summary, ref ?? name, name), ` = ${withUnit(value, unit)} (${origin})`);
}

function derivation(summary, key) {
  const record = summary.dimensions?.[key] ?? summary.inputs?.[key];
  if (!record) return null;
  const size = [withUnit(record.value, record.unit), record.fit].filter(Boolean).join(" ");
  const inputs = Object.entries(record.inputs).map(([name, of]) => input(summary, name, of));
  const made = element("details", {}, element("summary", {}, `${words(key)} = ${size}`));
  if (record.rule) made.append(element("p", {}, record.rule));
  if (limits(record)) made.append(element("p", {}, `Limits: from ${limits(record)}`));
  if (inputs.length) made.append(element("ul", {}, ...inputs));
  const source = record.source ? ` Source: ${record.source}.` : "";
  made.append(element("p", {}, `Origin: ${record.origin}.${source} `, keyLink(summary, key, "In the table")));
  return made;
}

function faceFacts(summary, face) {
  const feature = (summary.features ?? []).find(({ id }) => id === face.feature);
  const list = element("dl");
  row(list, "Part", "block");
  if (feature) {
    row(list, "Feature", link("feature", feature.id, `${words(feature.id)} (${words(feature.kind)})`));
    featureRows(list, feature);
  }
  const notes = tolerances(summary, face, feature);
  if (notes.length) row(list, "Tolerances", element("ul", {}, ...notes.map((note) => element("li", {}, note))));
  const reasons = face.keys.map((key) => derivation(summary, key)).filter(Boolean);
  const heading = reasons.length ? element("p", { class: "view-lead" }, "How it came about") : null;
  return [element("h3", {}, face.title), list, heading, ...reasons].filter(Boolean);
}

function partFacts(data, alike) {
  const list = element("dl");
  row(list, "Part", data.name);
  row(list, "Number", alike > 1 ? `${alike} alike` : "");
  row(list, "Shape", data.stand_in ? "stand-in, built from the sizes of the spec" : "");
  row(list, data.stand_in ? "Assumed" : "Note", data.note);
  return [element("h3", {}, data.label), list];
}
