"use strict";
// The page's whole script. It shows what the server tells and sends what people do; it decides nothing.
// Whatever comes over the line becomes text of elements that are made here, never markup.

const $ = (selector, within = document) => within.querySelector(selector);
const all = (selector) => document.querySelectorAll(selector);
const TAGS = new Set(["b", "i", "u", "s", "code", "pre"]);
const state = { people: [], heard: {}, seen: {}, run: "", pace: "still", now: null, ready: false };
const phones = [];

// Words, all of which stand in the page itself, and times

const says = Object.fromEntries([...all("#says li")].map((li) => [li.dataset.of, li.textContent]));
const say = (of, facts = {}) => says[of].replace(/\{(\w+)\}/g, (_, name) => facts[name] ?? "");

const FORMATS = {
  time: { hour: "2-digit", minute: "2-digit", hourCycle: "h23" },
  day: { weekday: "long", day: "numeric", month: "long", year: "numeric" },
};
const inWords = (kind, zone, at) => new Date(at).toLocaleString("en-GB", { ...FORMATS[kind], timeZone: zone });
const placeOf = (zone) => zone.split("/").pop().replaceAll("_", " ");

// What stands inside is an element, or words, which stay text; nothing where there is none.
function make(tag, attributes, ...inside) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...inside.filter(Boolean));
  return element;
}
const button = (words, attributes) => make("button", { type: "button", ...attributes }, words);
const option = ([value, words]) => make("option", { value }, words);
const stretch = ([text, ...tags]) => tags.reduceRight((inside, tag) => (TAGS.has(tag) ? make(tag, {}, inside) : inside), text);
const wordsOf = (entry) => entry.words.map(([text]) => text).join("") || entry.file || "";

async function ask(path, body) {
  const how = body && { method: "POST", body: body instanceof Blob ? body : JSON.stringify(body) };
  const answer = await fetch(path, how).catch(() => { throw new Error(say("lost")); });
  if (!answer.ok) throw new Error(await answer.text());
  return answer.json();
}

const note = (words) => $("#note").replaceChildren(words);

function trying(deed, tell = note) {
  tell("");
  return deed().catch((fault) => tell(fault.message));
}

// One phone

class Phone {
  constructor(number) {
    this.number = number;
    this.chat = null;
    this.sending = Promise.resolve();
    this.atEnd = true;
    this.top = 0;
    this.root = $("#phone").content.cloneNode(true).firstElementChild;
    this.root.dataset.phone = number;
    for (const name of ["who", "there", "scroller", "older", "journal", "nothing", "below", "text", "towards", "fault"]) {
      this[`$${name}`] = $(`.${name}`, this.root);
    }
    this.root.addEventListener("click", (event) => this.touched(event));
    this.root.addEventListener("submit", (event) => this.send(event));
    this.$who.addEventListener("change", () => this.choose());
    this.$scroller.addEventListener("scroll", () => this.scrolled(), { passive: true });
    this.$text.addEventListener("keydown", (event) => {
      if (event.key === "Escape") this.leave();
      if (event.key === "Enter" && !event.shiftKey && !event.isComposing) this.send(event);
    });
    $("input", this.root).addEventListener("change", (event) => this.sendFile(event.target));
    new ResizeObserver(() => { if (this.atEnd) this.toEnd(); }).observe(this.$journal);
    $(".phones").append(this.root);
  }

  get person() { return state.people.find((each) => each.chat === this.chat); }
  get isShown() { return this.root.offsetParent !== null && document.visibilityState === "visible"; }
  entry(id) { return $(`[data-id="${id}"]`, this.$journal); }
  trying(deed) { return trying(deed, (words) => this.$fault.replaceChildren(words)); }

  async choose() {
    const chosen = this.$who.value === "+" ? await this.trying(() => ask("newcomer", {})) : { chat: this.$who.value };
    await this.show(chosen?.chat ?? this.chat);
  }

  async show(chat) {
    this.chat = chat;
    this.clear();
    this.atEnd = true;
    await this.load();
    this.toEnd();
    label();
  }

  clear() {
    this.$journal.replaceChildren();
    this.before = null;
    this.$older.hidden = this.$nothing.hidden = this.$towards.hidden = true;
    this.towards = null;
  }

  // Everything that is not a message: who this is, and what time it is there
  label() {
    const options = [...state.people.map((each) => [each.chat, called(each)]), ["+", say("add")]];
    if (this.options !== JSON.stringify(options)) this.$who.replaceChildren(...options.map(option));
    this.options = JSON.stringify(options); // a list that is open would shut if it were made anew
    this.$who.value = this.chat;
    const { name, role, zone } = this.person ?? {};
    if (!name) return;
    const time = inWords("time", zone, state.now);
    this.$there.textContent = role === "new" ? say("new") : say("there", { role: say(role), place: placeOf(zone), time });
    const named = [[this.root, "phone of"], [this.$scroller, "journal of"], [this.$text, "says"]];
    for (const [element, as] of named) element.setAttribute("aria-label", say(as, { name }));
    this.$text.placeholder = say(`such as ${role}`);
  }

  // The next stretch back; what came meanwhile stays after it.
  async load() {
    const { chat, before } = this;
    const asked = new URLSearchParams({ of: chat, ...(before && { before }) });
    this.loading = true;
    const found = await this.trying(() => ask(`chat?${asked}`));
    if (chat !== this.chat) return;
    this.loading = false;
    if (!found) return;
    this.before = found.before;
    const next = [...this.$journal.children].slice(0, 1);
    const items = found.messages.map((entry) => this.entry(entry.id) ?? this.item(entry));
    this.$journal.prepend(...items);
    for (const item of [...items, ...next]) dayAbove(item);
    this.$older.hidden = this.before === null;
    this.$nothing.hidden = this.$journal.firstChild !== null;
  }

  async older() {
    if (this.loading || !this.before) return;
    const scroller = this.$scroller;
    const fromEnd = scroller.scrollHeight - scroller.scrollTop;
    const hadFocus = this.$older.contains(document.activeElement); // and it may go
    await this.load();
    scroller.scrollTop = this.top = scroller.scrollHeight - fromEnd;
    if (hadFocus) scroller.focus();
  }

  scrolled() {
    const { scrollTop, scrollHeight, clientHeight } = this.$scroller;
    const isNear = scrollHeight - scrollTop - clientHeight < 40;
    // What grows below does not move anybody away from the end: only who scrolls up has left it.
    if (isNear || scrollTop < this.top) this.atEnd = isNear;
    this.top = scrollTop;
    if (this.atEnd) this.$below.hidden = true;
    if (scrollTop < 600) this.older();
  }

  toEnd() {
    this.$scroller.scrollTop = this.$scroller.scrollHeight;
    this.top = this.$scroller.scrollTop;
    this.atEnd = true;
    this.$below.hidden = true;
  }

  heard(entry) {
    const old = this.entry(entry.id);
    const hadFocus = old?.contains(document.activeElement);
    const item = this.item(entry, old);
    if (!old) item.classList.add("fresh");
    if (old) old.replaceWith(item);
    else this.$journal.append(item);
    dayAbove(item);
    if (hadFocus) $(".more", item).focus({ preventScroll: true });
    this.$nothing.hidden = true;
    if (this.atEnd) this.toEnd();
    else if (!old && entry.by === "bot") this.$below.hidden = false;
  }

  item(entry, old) {
    const zone = this.person?.zone ?? "UTC";
    const time = inWords("time", zone, entry.at);
    const kinds = (entry.kinds ?? []).map((kind) => `has-${kind.replaceAll(" ", "-")}`);
    const about = make("div", { class: "about", id: `p${this.number}-${entry.id}`, hidden: "" });
    const named = { class: "more", "aria-label": say("more of", { time }), "aria-expanded": "false", "aria-controls": about.id };
    const presses = (entry.buttons ?? []).map(([words, press]) => button(words, { "data-press": press }));
    const item = make(
      "li", { class: ["entry", entry.by, ...kinds].join(" "), "data-id": entry.id, "data-day": inWords("day", zone, entry.at) },
      button(make("time", { datetime: entry.at }, time), named),
      make(
        "div", { class: "body" },
        entry.answers && make("p", { class: "answers" }, say("in answer", { words: entry.answers })),
        entry.picture && picture(entry),
        entry.words.length && make("p", { class: "words" }, ...entry.words.map(stretch)),
        entry.file && make("p", { class: "attached" }, entry.by === "me" ? say("sent file", { name: entry.file }) : file(entry)),
        entry.edited && make("small", { class: "edited" }, say("edited")),
        presses.length && make("div", { class: "presses" }, ...presses),
        about,
      ),
    );
    item.entry = entry;
    if (old && !$(".about", old).hidden) this.open(item);
    return item;
  }

  touched({ target }) {
    const item = target.closest(".entry");
    const { press, deed } = target.closest("button")?.dataset ?? {};
    if (press) this.trying(() => ask("press", { chat: this.chat, button: press }));
    else if (deed) this[deed](item?.entry); // one of those that follow, or of reading back
    else if (item && !target.closest("a, .about") && getSelection().isCollapsed) this.open(item, $(".about", item).hidden);
  }

  // What lies behind a message, under it; and what can be done with it
  async open(item, opens = true) {
    const { entry } = item;
    const about = $(".about", item);
    $(".more", item).setAttribute("aria-expanded", opens);
    about.hidden = !opens;
    if (!opens) return;
    const deeds = entry.key ? (entry.by === "me" ? ["reply", "edit"] : ["reply"]) : [];
    const behind = make("div", { class: "behind" });
    const buttons = deeds.map((deed) => button(say(deed), { "data-deed": deed }));
    about.replaceChildren(make("div", { class: "deeds" }, ...buttons), behind);
    const found = await trying(() => ask(`understood/${entry.id}`), (words) => behind.replaceChildren(words));
    if (found) behind.replaceWith(behindIt(entry, found));
    if (this.atEnd) this.toEnd();
  }

  newest() { this.toEnd(); this.$scroller.focus(); }

  // What is typed next: something new, a reply, or a message typed anew
  reply(entry) { this.turnTo({ deed: "reply", entry }); }
  edit(entry) { this.turnTo({ deed: "edit", entry }, wordsOf(entry)); }
  leave() { this.turnTo(null, this.towards?.deed === "edit" ? "" : this.$text.value); }

  turnTo(towards, text = this.$text.value) {
    this.towards = towards;
    this.$towards.hidden = towards === null;
    if (towards) $("span", this.$towards).textContent = say(`to ${towards.deed}`, { words: wordsOf(towards.entry).slice(0, 80) });
    this.$text.value = text;
    this.$text.focus();
  }

  // What is sent goes one after the other; what could not be sent is there to be sent again.
  send(event) {
    event.preventDefault();
    const { chat, towards } = this;
    const text = this.$text.value;
    if (!text.trim()) return;
    const isEdit = towards?.deed === "edit";
    const body = isEdit ? { chat, key: towards.entry.key, text } : { chat, text, replies_to: towards?.entry.key ?? null };
    this.turnTo(null, "");
    if (!isEdit) this.toEnd();
    this.sending = this.sending.then(async () => {
      const done = await this.trying(() => ask(isEdit ? "edit" : "say", body));
      if (!done && this.chat === chat && !this.$text.value) this.turnTo(towards, text);
    });
  }

  async sendFile(input) {
    const [sent] = input.files;
    if (!sent) return;
    this.toEnd();
    const about = new URLSearchParams({ of: this.chat, name: sent.name, size: sent.size });
    // Of what is too large, its size is enough for the bot to say so.
    await this.trying(() => ask(`send?${about}`, sent.size > state.largestFile ? new Blob([]) : sent));
    input.value = "";
  }
}

// A day stands above its first message.
function dayAbove(item) {
  const { day } = item.dataset;
  $(".day", item)?.remove();
  if (item.previousSibling?.dataset.day !== day) item.prepend(make("h2", { class: "day" }, day));
}

function picture({ id, picture: name }) {
  const src = `picture/${id.slice(1)}`;
  const image = make("img", { src, alt: say("picture", { name }), loading: "lazy", class: "picture" });
  return make("a", { href: src, target: "_blank", rel: "noreferrer" }, image);
}

const file = ({ id, file: name }) => make("a", { href: `file/${id.slice(1)}`, download: name }, say("get file", { name }));

// What the words of a message became, or the reasons of what it says
function behindIt(entry, { stretches, facts, note: words }) {
  const read = ([text, became]) => (became.length
    ? make("span", { class: "stretch" }, make("span", {}, text), make("small", {}, became.join(", ")))
    : make("span", { class: "left" }, text));
  const told = ([head, said, from]) => [
    make("dt", {}, head),
    make("dd", {}, said, from && make("small", {}, say("from", { words: from }))),
  ];
  return make(
    "div", { class: "behind" },
    make("h3", {}, say(entry.by === "me" ? "understood" : "reasons")),
    stretches.length && make("p", { class: "stretches" }, ...stretches.map(read)),
    facts.length && make("dl", {}, ...facts.flatMap(told)),
    words && make("p", {}, words),
  );
}

// Who and when: what is new for whom, and the clock

const unread = (chat) => Math.max(0, (state.heard[chat] ?? 0) - (state.seen[chat] ?? 0));

const called = ({ name, chat }) => (unread(chat) ? say("unread", { name, count: unread(chat) }) : name);

function label() {
  if (!state.now) return;
  for (const { isShown, chat } of phones) if (isShown) state.seen[chat] = state.heard[chat] ?? 0;
  const zone = phones[0].person?.zone ?? "UTC";
  $("#now").dateTime = state.now;
  $("#now").textContent = `${inWords("day", zone, state.now)}, ${inWords("time", zone, state.now)}`;
  $("#zone").textContent = say("where", { place: placeOf(zone) });
  for (const each of all("[data-pace]")) each.setAttribute("aria-pressed", each.dataset.pace === state.pace);
  for (const phone of phones) phone.label();
  const waiting = state.people.filter(({ chat }) => unread(chat) && !phones.some((phone) => phone.chat === chat));
  $("#unread").replaceChildren(...waiting.slice(0, 8).map((each) => button(called(each), { "data-chat": each.chat })));
  for (const each of all("[data-shows]")) {
    each.textContent = called(phones[each.dataset.shows].person ?? { name: "" });
    each.setAttribute("aria-pressed", each.dataset.shows === document.body.dataset.shown);
  }
}

// News

function listen() {
  const source = new EventSource(`news?since=${encodeURIComponent(state.news)}`);
  state.listens = true;
  const on = (kind, deed) => source.addEventListener(kind, (event) => deed(JSON.parse(event.data)));
  const take = (facts) => { Object.assign(state, facts); label(); };
  on("message", heard);
  on("people", take);
  on("clock", take);
  on("before", (facts) => { note(say("playing")); take(facts); });
  on("fault", ({ words }) => note(words));
  on("anew", begin);
  source.onerror = () => note(say("lost"));
  source.onopen = () => { if ($("#note").textContent === say("lost")) note(""); };
}

function heard({ chat, entry, heard: count }) {
  if (count !== undefined) state.heard[chat] = count;
  for (const phone of phones.filter((each) => each.chat === chat)) {
    phone.heard(entry);
    const spoken = say(entry.by === "me" ? "said" : "heard", { name: phone.person?.name, words: wordsOf(entry) });
    if (phone.isShown) $("#news").append(make("p", {}, spoken));
  }
  while ($("#news").children.length > 5) $("#news").firstChild.remove();
  label();
}

async function begin() {
  const found = await trying(() => ask("state"));
  if (!found) return;
  Object.assign(state, found);
  $("#scenes").replaceChildren(...state.scenes.map((name, number) => option([number, name])));
  $("#scenes").value = state.scene;
  if (!state.listens) listen();
  for (const each of all("[data-leap], [data-pace], .writing button, .writing input, .text, .who")) each.disabled = !state.ready;
  if (!state.ready) {
    for (const phone of phones) phone.clear();
    return note(say("playing"));
  }
  $("#about").textContent = state.about;
  const before = recall();
  state.seen = before.run === state.run ? before.seen : {};
  const client = state.people.find(({ role }) => role === "client") ?? state.people[0];
  const coach = state.people.find(({ number }) => number === client?.coach) ?? state.people[1] ?? client;
  const isThere = (chat) => state.people.some((person) => person.chat === chat);
  const chats = [client?.chat, coach?.chat].map((chat, at) => (isThere(before.chats?.[at]) ? before.chats[at] : chat));
  return Promise.all(phones.map((phone, at) => phone.show(chats[at])));
}

// What is kept over a reload; a browser that keeps nothing begins with the usual phones.
function recall() {
  try { return JSON.parse(sessionStorage.getItem("page")) ?? {}; } catch { return {}; }
}
addEventListener("pagehide", () => {
  const { run, seen } = state;
  sessionStorage.setItem("page", JSON.stringify({ run, seen, chats: phones.map((each) => each.chat) }));
});

for (const number of [0, 1]) phones.push(new Phone(number));

document.addEventListener("click", ({ target }) => {
  const { leap, pace, shows, chat } = target.dataset ?? {};
  if (leap) trying(async () => note((await ask("leap", { leap, chats: phones.map((each) => each.chat) })).note ?? ""));
  if (pace) trying(() => ask("pace", { pace }));
  if (shows) {
    document.body.dataset.shown = shows;
    phones[shows].toEnd();
    label();
  }
  if (chat) phones[state.people.find((each) => each.chat === chat)?.role === "coach" ? 1 : 0].show(chat);
  if (target.id === "afresh") trying(() => ask("begin", { scene: Number($("#scenes").value) }));
  if (target.id === "fold") target.setAttribute("aria-expanded", target.getAttribute("aria-expanded") !== "true");
});
document.addEventListener("visibilitychange", label);
begin();
