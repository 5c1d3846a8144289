// How a message looks, and the words and times of the page. Whatever comes over the line becomes text of elements
// that are made here, never markup.

export const $ = (selector, within = document) => within.querySelector(selector);
export const all = (selector) => document.querySelectorAll(selector);

// Words, all of which stand in the page itself, and times

const says = Object.fromEntries([...all("#says li")].map((li) => [li.dataset.of, li.textContent]));
export const say = (of, facts = {}) => says[of].replace(/\{(\w+)\}/g, (_, name) => facts[name] ?? "");

const FORMATS = {
  time: { hour: "2-digit", minute: "2-digit", hourCycle: "h23" },
  day: { weekday: "long", day: "numeric", month: "long", year: "numeric" },
  date: { weekday: "short", day: "numeric", month: "long", year: "numeric" },
};
const made = {}; // to make a format takes longer than all else about a message
const formatOf = (kind, timeZone) => (made[kind + timeZone] ??= new Intl.DateTimeFormat("en-GB", { ...FORMATS[kind], timeZone }));
export const inWords = (kind, zone, at) => formatOf(kind, zone).format(new Date(at));
export const placeOf = (zone) => zone.split("/").pop().replaceAll("_", " ");

// What stands inside is an element, or words, which stay text; nothing where there is none.
export function make(tag, attributes, ...inside) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...inside.filter(Boolean));
  return element;
}
export const button = (words, attributes) => make("button", { type: "button", ...attributes }, words);
export const option = ([value, words]) => make("option", { value }, words);
const TAGS = new Set(["b", "i", "u", "s", "code", "pre"]);
const stretch = ([text, ...tags]) => tags.reduceRight((inside, tag) => (TAGS.has(tag) ? make(tag, {}, inside) : inside), text);
export const wordsOf = (entry) => entry.words.map(([text]) => text).join("") || entry.file || "";

// A message: when, under its day, and what there is of it; what lies behind it has a place that is empty at first.
export function messageItem(entry, zone, named) {
  const time = inWords("time", zone, entry.at);
  const kinds = (entry.kinds ?? []).map((kind) => `has-${kind.replaceAll(" ", "-")}`);
  const about = make("div", { class: "about", id: named, hidden: "" });
  const more = { class: "more", "aria-label": say("more of", { time }), "aria-expanded": "false", "aria-controls": about.id };
  const presses = (entry.buttons ?? []).map(([words, press]) => button(words, { "data-press": press }));
  return make("li", { class: ["entry", entry.by, ...kinds].join(" "), "data-id": entry.id },
    make("h2", { class: "day" }, inWords("day", zone, entry.at)),
    button(make("time", { datetime: entry.at }, time), more),
    make("div", { class: "body" },
      entry.answers && make("p", { class: "answers" }, say("in answer", { words: entry.answers })),
      entry.picture && picture(entry),
      entry.words.length && make("p", { class: "words" }, ...entry.words.map(stretch)),
      entry.file && make("p", { class: "attached" }, entry.by === "me" ? say("sent file", { name: entry.file }) : file(entry)),
      entry.edited && make("small", { class: "edited" }, say("edited")),
      presses.length && make("div", { class: "presses" }, ...presses),
      about));
}

// A day stands above its first message.
export function dayAbove(item) {
  const [day, above] = [item, item.previousSibling].map((each) => each?.firstChild);
  const isTold = day.textContent === above?.textContent;
  if (day.hidden !== isTold) day.hidden = isTold;
}

function picture({ id, picture: name }) {
  const src = `picture/${id.slice(1)}`;
  const image = make("img", { src, alt: say("picture", { name }), loading: "lazy", class: "picture" });
  return make("a", { href: src, target: "_blank", rel: "noreferrer" }, image);
}

const file = ({ id, file: name }) => make("a", { href: `file/${id.slice(1)}`, download: name }, say("get file", { name }));

// What the words of a message became, or the reasons of what it says
export function behindIt(entry, { stretches, facts, note: words }) {
  const read = ([text, became]) => (became.length
    ? make("span", { class: "stretch" }, make("span", {}, text), make("small", {}, became.join(", ")))
    : make("span", { class: "left" }, text));
  const told = ([head, said, from]) => [
    make("dt", {}, head), make("dd", {}, said, from && make("small", {}, say("from", { words: from }))),
  ];
  return make("div", { class: "behind" },
    make("h3", {}, say(entry.by === "me" ? "understood" : "reasons")),
    stretches.length && make("p", { class: "stretches" }, ...stretches.map(read)),
    facts.length && make("dl", {}, ...facts.flatMap(told)),
    words && make("p", {}, words));
}
