// What happens on the page: it shows what the server tells and sends what people do; it decides nothing. Whatever
// comes over the line becomes text of elements that are made here, never markup.

const $ = (selector, within = document) => within.querySelector(selector);
const all = (selector) => document.querySelectorAll(selector);

// Words, all of which stand in the page itself, and times

const says = Object.fromEntries([...all("#says li")].map((li) => [li.dataset.of, li.textContent]));
const say = (of, facts = {}) => says[of].replace(/\{(\w+)\}/g, (_, name) => facts[name] ?? "");

const FORMATS = {
  time: { hour: "2-digit", minute: "2-digit", hourCycle: "h23" },
  day: { weekday: "long", day: "numeric", month: "long", year: "numeric" },
  date: { weekday: "short", day: "numeric", month: "long", year: "numeric" },
};
const formats = {}; // to make a format takes longer than all else about a message
const formatOf = (kind, timeZone) => (formats[kind + timeZone] ??= new Intl.DateTimeFormat("en-GB", { ...FORMATS[kind], timeZone }));
const inWords = (kind, zone, at) => formatOf(kind, zone).format(new Date(at));
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
const TAGS = new Set(["b", "i", "u", "s", "code", "pre"]);
const stretch = ([text, ...tags]) => tags.reduceRight((inside, tag) => (TAGS.has(tag) ? make(tag, {}, inside) : inside), text);
const wordsOf = (entry) => entry.words.map(([text]) => text).join("") || entry.file || "";

// A message: when, under its day, and what there is of it; what lies behind it has a place that is empty at first.
function messageItem(entry, zone, named) {
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
function dayAbove(item) {
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
function behindIt(entry, { stretches, facts, note: words }) {
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

// What people do, and what comes of it

const state = { people: [], heard: {}, seen: {}, run: "", pace: "still", now: null, ready: false };

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

// One phone. All that was read of its chat is in `entries`; of these only a stretch stands in the page, those
// about where somebody reads, so that a long past makes nothing slow.

const MOST_STANDING = 240;
const STEP = 60;
const NEAR = 600; // pixels from an edge at which more is brought

class Phone {
  constructor(number) {
    this.number = number;
    this.sending = Promise.resolve();
    this.root = $("#phone").content.cloneNode(true).firstElementChild;
    this.root.dataset.phone = number;
    for (const name of ["who", "there", "scroller", "older", "journal", "nothing", "below", "sent", "text", "towards", "fault"]) {
      this[`$${name}`] = $(`.${name}`, this.root);
    }
    this.clear();
    this.root.onclick = (event) => this.touched(event);
    this.root.onsubmit = (event) => this.send(event);
    this.$who.onchange = () => this.show(this.$who.value);
    this.$scroller.onscroll = () => this.scrolled();
    this.$sent.onchange = ({ target }) => this.sendFile(target);
    this.$text.onkeydown = (event) => {
      if (event.key === "Escape") this.leave();
      if (event.key === "Enter" && !event.shiftKey && !event.isComposing) this.send(event);
    };
    new ResizeObserver(() => { if (this.atEnd) this.toEnd(); }).observe(this.$journal);
    $(".phones").append(this.root);
  }

  get person() { return state.people.find((each) => each.chat === this.chat); }
  get isShown() { return this.root.offsetParent !== null && document.visibilityState === "visible"; }
  trying(deed) { return trying(deed, (words) => this.$fault.replaceChildren(words)); }

  async show(chat) {
    this.chat = chat === "+" ? (await this.trying(() => ask("newcomer", {})))?.chat ?? this.chat : chat;
    this.clear();
    await this.load();
    this.toEnd();
    label();
  }

  clear() {
    this.$journal.replaceChildren();
    Object.assign(this, { entries: [], from: 0, to: 0, before: null, towards: null, top: 0, atEnd: true });
    this.$older.hidden = this.$nothing.hidden = this.$towards.hidden = true;
  }

  // Everything that is not a message: who this is, and what time it is there
  label() {
    const options = [...state.people.map((each) => [each.chat, called(each)]), ["+", say("add")]];
    if (this.options !== JSON.stringify(options)) this.$who.replaceChildren(...options.map(option));
    this.options = JSON.stringify(options); // a list that is open would shut if it were made anew
    this.$who.value = this.chat;
    if (!this.person) return;
    const { name, role, zone } = this.person;
    const facts = { role: say(role), place: placeOf(zone), time: inWords("time", zone, state.now) };
    this.$there.textContent = say(role === "new" ? "new" : "there", facts);
    this.root.ariaLabel = say("phone of", { name });
    this.$scroller.ariaLabel = say("journal of", { name });
    this.$text.ariaLabel = say("says", { name });
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
    const earlier = found.messages.filter(({ id }) => !this.entries.some((entry) => entry.id === id));
    this.entries.unshift(...earlier);
    Object.assign(this, { from: this.from + earlier.length, to: this.to + earlier.length, before: found.before });
  }

  // Let these entries stand in the page, and no others; who reads further up stays where they are.
  stand(from, to) {
    const { $journal, $scroller } = this;
    const hadFocus = $scroller.contains(document.activeElement);
    const topOf = (element) => element.getBoundingClientRect().top;
    const kept = this.atEnd ? [] : [...$journal.children].slice(Math.max(0, from - this.from), to - this.from);
    const held = kept.findLast((item) => topOf(item) <= topOf($scroller)) ?? kept[0];
    const stood = held && topOf(held);
    for (; this.from < from; this.from += 1) $journal.firstChild.remove();
    for (; this.to > to; this.to -= 1) $journal.lastChild.remove();
    while (this.from > from) $journal.prepend(this.made(this.entries[this.from -= 1]));
    for (; this.to < to; this.to += 1) $journal.append(this.made(this.entries[this.to]));
    for (const item of $journal.children) dayAbove(item);
    this.$older.hidden = from === 0 && this.before === null;
    this.$nothing.hidden = this.entries.length > 0;
    if (held) this.top = $scroller.scrollTop += topOf(held) - stood;
    if (hadFocus && !document.activeElement.offsetParent) $scroller.focus({ preventScroll: true });
  }

  async older() {
    if (this.loading || (this.from === 0 && !this.before)) return;
    if (this.from === 0) await this.load();
    const from = Math.max(0, this.from - STEP);
    this.brings(from, Math.min(this.to, from + MOST_STANDING));
  }

  newer() {
    const to = Math.min(this.to + STEP, this.entries.length);
    if (to > this.to) this.brings(Math.max(this.from, to - MOST_STANDING), to);
  }

  // Who has gone on to the edge meanwhile cannot scroll there, and is seen to anyhow.
  brings(from, to) {
    this.stand(from, to);
    requestAnimationFrame(() => this.scrolled());
  }

  // What grows below does not move anybody away from the end: only who scrolls up has left it.
  scrolled() {
    const { scrollTop, scrollHeight, clientHeight } = this.$scroller;
    const below = scrollHeight - scrollTop - clientHeight;
    const isNear = below < 40 && this.to === this.entries.length;
    if (isNear || scrollTop < this.top) this.atEnd = isNear;
    if (this.atEnd) this.$below.hidden = true;
    this.top = scrollTop;
    if (scrollTop < NEAR) this.older();
    if (below < NEAR) this.newer();
  }

  toEnd() {
    const { length } = this.entries;
    this.atEnd = true;
    if (this.to < length || this.from === length) {
      this.$journal.replaceChildren();
      this.from = this.to = length;
      this.stand(Math.max(0, length - STEP), length);
    }
    this.top = this.$scroller.scrollTop = this.$scroller.scrollHeight - this.$scroller.clientHeight;
    this.$below.hidden = true;
  }

  heard(entry) {
    const at = this.entries.findLastIndex(({ id }) => id === entry.id);
    const isAbove = Number(entry.id.slice(1)) < (this.before?.[entry.by === "me" ? 0 : 1] ?? 0);
    if (at >= 0) this.changed(at, entry);
    if (at >= 0 || isAbove) return;
    const to = this.entries.push(entry);
    if (this.to === to - 1 && (this.atEnd || to - this.from <= MOST_STANDING)) {
      this.stand(Math.max(this.from, to - MOST_STANDING), to);
      this.$journal.lastChild.classList.add("fresh");
    }
    if (this.atEnd) this.toEnd();
    else if (entry.by === "bot") this.$below.hidden = false;
  }

  changed(at, entry) {
    this.entries[at] = { ...entry, isOpen: this.entries[at].isOpen };
    const old = this.$journal.children[at - this.from];
    if (!old) return;
    const hadFocus = old.contains(document.activeElement);
    const item = this.made(this.entries[at]);
    old.replaceWith(item);
    dayAbove(item);
    if (hadFocus) $(".more", item).focus({ preventScroll: true });
    if (this.atEnd) this.toEnd();
  }

  made(entry) {
    const item = messageItem(entry, this.person?.zone ?? "UTC", `about-${this.number}-${entry.id}`);
    item.entry = entry;
    if (entry.isOpen) this.open(item);
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
    entry.isOpen = opens;
    if (!opens) return;
    const deeds = ["reply", "edit"].slice(0, !entry.key ? 0 : entry.by === "me" ? 2 : 1);
    const behind = make("div", { class: "behind" });
    about.replaceChildren(make("div", { class: "deeds" }, ...deeds.map((deed) => button(say(deed), { "data-deed": deed }))), behind);
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

const phones = [0, 1].map((number) => new Phone(number));

// Who and when: what is new for whom, and the clock

const unread = (chat) => Math.max(0, (state.heard[chat] ?? 0) - (state.seen[chat] ?? 0));
const called = ({ name, chat }) => (unread(chat) ? say("unread", { name, count: unread(chat) }) : name);

function label() {
  if (!state.now) return;
  for (const { isShown, chat } of phones) if (isShown) state.seen[chat] = state.heard[chat] ?? 0;
  const zone = phones[0].person?.zone ?? "UTC";
  $("#now").dateTime = state.now;
  $("#now").textContent = `${inWords("date", zone, state.now)}, ${inWords("time", zone, state.now)}`;
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
  const before = state.run ? kept() : recall();
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
  state.seen = before.run === state.run ? before.seen : {};
  const client = state.people.find(({ role }) => role === "client") ?? state.people[0];
  const coach = state.people.find(({ number }) => number === client?.coach) ?? state.people[1] ?? client;
  const isThere = (chat) => state.people.some((person) => person.chat === chat);
  const chats = [client?.chat, coach?.chat].map((chat, at) => (isThere(before.chats?.[at]) ? before.chats[at] : chat));
  return Promise.all(phones.map((phone, at) => phone.show(chats[at])));
}

// What is kept over a reload; a browser that keeps nothing begins with the usual phones.
const kept = () => ({ run: state.run, seen: state.seen, chats: phones.map(({ chat }) => chat) });
function recall() {
  try { return JSON.parse(sessionStorage.getItem("page")) ?? {}; } catch { return {}; }
}
addEventListener("pagehide", () => sessionStorage.setItem("page", JSON.stringify(kept())));

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
