"use strict";
// The page's whole script. It shows what the server tells and sends what people do; it decides nothing.
// Whatever comes over the line becomes text of elements that are made here, never markup.

const $ = (selector, within = document) => within.querySelector(selector);
const TAGS = new Set(["b", "i", "u", "s", "code", "pre"]);
const MOST_SHOWN = 400; // what is further back is let go as new messages come
const MOST_READ = 1200; // what is newer is let go as somebody reads back

const state = { people: [], heard: {}, seen: {}, run: "", pace: "still", now: null, ready: false };
const phones = [];

// Words, of which all stand in the page itself

const says = Object.fromEntries([...document.querySelectorAll("#says li")].map((li) => [li.dataset.of, li.textContent]));
const say = (of, facts = {}) => says[of].replace(/\{(\w+)\}/g, (_, name) => facts[name] ?? "");

const formats = new Map();
function format(zone, kind) {
  const key = `${zone} ${kind}`;
  if (!formats.has(key)) {
    const how = {
      time: { hour: "2-digit", minute: "2-digit", hourCycle: "h23" },
      date: { weekday: "short", day: "numeric", month: "short", year: "numeric" },
      day: { weekday: "long", day: "numeric", month: "long", year: "numeric" },
    }[kind];
    formats.set(key, new Intl.DateTimeFormat("en-GB", { ...how, timeZone: zone }));
  }
  return formats.get(key);
}
const timeIn = (zone, at) => format(zone, "time").format(new Date(at));
const dayIn = (zone, at) => format(zone, "day").format(new Date(at));
const dateIn = (zone, at) => format(zone, "date").format(new Date(at));
const place = (zone) => zone.split("/").pop().replaceAll("_", " ");

function make(tag, facts = {}, ...inside) {
  const { dataset = {}, attributes = {}, ...others } = facts;
  const element = Object.assign(document.createElement(tag), others);
  Object.assign(element.dataset, dataset);
  for (const [name, value] of Object.entries(attributes)) element.setAttribute(name, value);
  element.append(...inside.filter((each) => each !== null));
  return element;
}

// Asking the server

async function ask(path, body) {
  const how = body === undefined ? {} : { method: "POST", body: body instanceof Blob ? body : JSON.stringify(body) };
  let answer;
  try {
    answer = await fetch(path, how);
  } catch {
    throw new Error(say("lost"));
  }
  if (!answer.ok) throw Object.assign(new Error(await answer.text()), { status: answer.status });
  return answer.json();
}

const note = (words) => { $("#note").textContent = words; };

async function trying(deed, tell = note) {
  tell("");
  try {
    return await deed();
  } catch (fault) {
    tell(fault.message);
    return undefined;
  }
}

// One phone

class Phone {
  constructor(place) {
    this.place = place;
    this.chat = null;
    this.entries = new Map();
    this.before = null;
    this.loading = false;
    this.below = 0;
    this.towards = null;
    this.sending = Promise.resolve();
    const root = $("#phone").content.cloneNode(true).firstElementChild;
    this.root = root;
    root.dataset.phone = place;
    for (const name of ["who", "there", "scroller", "older", "journal", "cut", "nothing", "below", "writing", "towards", "fault"]) {
      this[`$${name}`] = $(`.${name}`, root);
    }
    this.$text = $("textarea", root);
    this.$file = $("input[type=file]", root);
    this.$who.addEventListener("change", () => this.choose());
    this.$scroller.addEventListener("scroll", () => this.scrolled(), { passive: true });
    $("button", this.$older).addEventListener("click", () => this.loadOlder());
    $("button", this.$cut).addEventListener("click", () => this.show(this.chat));
    this.$below.addEventListener("click", () => (this.isCut ? this.show(this.chat) : this.toEnd()));
    this.$writing.addEventListener("submit", (event) => { event.preventDefault(); this.send(); });
    this.$text.addEventListener("input", () => this.fit());
    this.$text.addEventListener("keydown", (event) => {
      if (event.key === "Enter" && !event.shiftKey && !event.isComposing) { event.preventDefault(); this.send(); }
      if (event.key === "Escape") this.turnTo(null);
    });
    $("button", this.$towards).addEventListener("click", () => this.turnTo(null));
    this.$file.addEventListener("change", () => this.sendFile());
    this.$journal.addEventListener("click", (event) => this.touched(event));
    new ResizeObserver(() => { if (this.atEnd) this.toEnd(); }).observe(this.$journal);
    this.atEnd = true;
    this.top = 0;
    $(".phones").append(root);
  }

  get person() { return state.people.find((each) => each.chat === this.chat); }
  get zone() { return this.person?.zone ?? "UTC"; }
  get isShown() { return this.root.offsetParent !== null && document.visibilityState === "visible"; }

  tell(words) { this.$fault.textContent = words; }

  async choose() {
    if (this.$who.value === "+") {
      const found = await trying(() => ask("newcomer", {}), (words) => this.tell(words));
      if (found) await this.show(found.chat);
      else this.named();
    } else await this.show(this.$who.value);
    remember();
  }

  clear() {
    this.entries.clear();
    this.before = null;
    this.$journal.replaceChildren();
    this.$nothing.hidden = true;
    this.$older.hidden = true;
    this.$cut.hidden = true;
    this.turnTo(null);
  }

  async show(chat) {
    this.chat = chat;
    this.clear();
    this.named();
    this.atEnd = true;
    await this.load();
    this.toEnd();
    see();
  }

  named() {
    const person = this.person;
    const options = state.people.map((each) => {
      const count = unread(each.chat);
      const label = count ? say("unread", { name: each.name, count }) : each.name;
      return make("option", { value: each.chat, textContent: label, selected: each.chat === this.chat });
    });
    this.$who.replaceChildren(...options, make("option", { value: "+", textContent: say("add") }));
    if (!person) return;
    this.$there.textContent = person.role === "new" ? say("new") : `${say(person.role)}, ${place(person.zone)} ${state.now ? timeIn(person.zone, state.now) : ""}`;
    this.root.setAttribute("aria-label", say("phone of", { name: person.name }));
    this.$scroller.setAttribute("aria-label", say("journal of", { name: person.name }));
    $(".text .hidden", this.root).textContent = say("says", { name: person.name });
    this.$text.placeholder = say(`such as ${person.role}`, { name: person.name });
  }

  async load() {
    const chat = this.chat;
    this.loading = true;
    try {
      const before = this.before === null ? "" : `&before=${this.before.join(",")}`;
      const found = await trying(() => ask(`chat?of=${encodeURIComponent(chat)}${before}`), (words) => this.tell(words));
      if (!found || chat !== this.chat) return;
      this.before = found.before;
      const known = found.messages.filter((entry) => !this.entries.has(entry.id));
      const items = known.map((entry) => this.item(entry));
      this.$journal.prepend(...items);
      this.days();
      this.$older.hidden = this.before === null;
      this.$nothing.hidden = this.entries.size > 0;
    } finally {
      this.loading = false;
    }
  }

  async loadOlder() {
    if (this.loading || this.before === null) return;
    const scroller = this.$scroller;
    const fromEnd = scroller.scrollHeight - scroller.scrollTop;
    await this.load();
    scroller.scrollTop = scroller.scrollHeight - fromEnd;
    const items = [...this.$journal.children];
    if (items.length > MOST_READ) {
      for (const item of items.slice(MOST_SHOWN)) this.drop(item);
      this.$cut.hidden = false;
    }
    this.top = scroller.scrollTop;
  }

  get isCut() { return !this.$cut.hidden; }

  drop(item) {
    this.entries.delete(item.dataset.id);
    item.remove();
  }

  scrolled() {
    const { scrollTop, scrollHeight, clientHeight } = this.$scroller;
    const isNear = scrollHeight - scrollTop - clientHeight < 40;
    // What grows below does not move anybody away from the end: only who scrolls up has left it.
    if (isNear || scrollTop < this.top) this.atEnd = isNear;
    this.top = scrollTop;
    if (this.atEnd && !this.isCut) this.tellBelow(0);
    if (scrollTop < 600) this.loadOlder();
  }

  tellBelow(count) {
    this.below = count;
    this.$below.hidden = count === 0;
    this.$below.textContent = say("below", { count });
  }

  toEnd() {
    this.$scroller.scrollTop = this.$scroller.scrollHeight;
    this.top = this.$scroller.scrollTop;
    this.atEnd = true;
    this.tellBelow(0);
  }

  heard(entry) {
    const old = this.entries.get(entry.id);
    if (old) {
      const hadFocus = old.contains(document.activeElement);
      const item = this.item(entry, old);
      old.replaceWith(item);
      if (hadFocus) $(".more", item).focus({ preventScroll: true });
      this.days();
    } else if (this.isCut) {
      if (entry.by === "bot") this.tellBelow(this.below + 1);
    } else {
      const item = this.item(entry);
      item.classList.add("fresh");
      this.$journal.append(item);
      this.$nothing.hidden = true;
      this.days();
      if (!this.atEnd && entry.by === "bot") this.tellBelow(this.below + 1);
      if (this.atEnd) this.forget();
    }
    if (this.atEnd) this.toEnd();
  }

  // What lies far back is loaded again when somebody scrolls there.
  forget() {
    const items = [...this.$journal.children];
    const gone = items.length > MOST_SHOWN ? items.slice(0, items.length - MOST_SHOWN / 2) : [];
    if (gone.length === 0) return;
    const last = { i: 0, o: 0 };
    for (const item of items) last[item.dataset.id[0]] ||= Number(item.dataset.id.slice(1));
    for (const item of gone) {
      const kind = item.dataset.id[0];
      last[kind] = Math.max(last[kind], Number(item.dataset.id.slice(1)) + 1);
      this.drop(item);
    }
    this.before = [last.i, last.o];
    this.$older.hidden = false;
    this.days();
  }

  // A day stands above its first message.
  days() {
    let before = "";
    for (const item of this.$journal.children) {
      const { day } = item.dataset;
      const heading = $(".day", item);
      if (day !== before && !heading) item.prepend(make("h2", { className: "day", textContent: day }));
      if (day === before && heading) heading.remove();
      before = day;
    }
  }

  item(entry, old) {
    const time = timeIn(this.zone, entry.at);
    const id = `p${this.place}-${entry.id}`;
    const item = make("li", { className: `entry ${entry.by}`, dataset: { id: entry.id, day: dayIn(this.zone, entry.at) } });
    for (const kind of entry.kinds ?? []) item.classList.add(`has-${kind.replaceAll(" ", "-")}`);
    const more = make("button", {
      type: "button", className: "more",
      attributes: { "aria-expanded": "false", "aria-label": say("more of", { time }), "aria-controls": `${id}-about` },
    }, make("time", { dateTime: entry.at, textContent: time }));
    const body = make("div", { className: "body" });
    if (entry.answers) body.append(make("p", { className: "answers", textContent: say("in answer", { words: entry.answers }) }));
    if (entry.picture) body.append(this.picture(entry));
    if (entry.words.length) body.append(make("p", { className: "words" }, ...entry.words.map(stretch)));
    if (entry.file) body.append(this.fileLine(entry));
    if (entry.edited) body.append(make("small", { className: "edited", textContent: say("edited") }));
    if (entry.buttons?.length) {
      const buttons = entry.buttons.map(([label, data]) => make("button", { type: "button", textContent: label, dataset: { press: data } }));
      body.append(make("div", { className: "presses" }, ...buttons));
    }
    body.append(make("div", { className: "about", id: `${id}-about`, hidden: true }));
    item.append(make("div", { className: "row" }, more, body));
    item.entry = entry;
    this.entries.set(entry.id, item);
    if (old && !$(".about", old).hidden) this.open(item);
    return item;
  }

  picture(entry) {
    const src = `picture/${entry.id.slice(1)}`;
    const image = make("img", { src, alt: say("picture", { name: entry.picture }), loading: "lazy", className: "picture" });
    return make("a", { href: src, target: "_blank", rel: "noreferrer", className: "framed" }, image);
  }

  fileLine(entry) {
    if (entry.by === "me") return make("p", { className: "attached", textContent: say("sent file", { name: entry.file }) });
    const link = make("a", { href: `file/${entry.id.slice(1)}`, download: entry.file, textContent: say("get file", { name: entry.file }) });
    return make("p", { className: "attached" }, link);
  }

  touched(event) {
    const press = event.target.closest("[data-press]");
    const item = event.target.closest(".entry");
    if (press) {
      trying(() => ask("press", { chat: this.chat, button: press.dataset.press }), (words) => this.tell(words));
    } else if (event.target.closest("[data-do]")) {
      this.turnTo({ deed: event.target.closest("[data-do]").dataset.do, entry: item.entry });
    } else if (item && !event.target.closest("a, .about") && getSelection().isCollapsed) {
      if ($(".more", item).getAttribute("aria-expanded") === "true") this.shut(item);
      else this.open(item);
    }
  }

  shut(item) {
    $(".more", item).setAttribute("aria-expanded", "false");
    $(".about", item).hidden = true;
  }

  async open(item) {
    const about = $(".about", item);
    const { entry } = item;
    $(".more", item).setAttribute("aria-expanded", "true");
    about.hidden = false;
    const deeds = [];
    if (entry.key) deeds.push("reply");
    if (entry.key && entry.by === "me") deeds.push("edit");
    const buttons = deeds.map((deed) => make("button", { type: "button", textContent: say(deed), dataset: { do: deed } }));
    const behind = make("div", { className: "behind" });
    about.replaceChildren(make("div", { className: "deeds" }, ...buttons), behind);
    const found = await trying(() => ask(`understood/${entry.id}`), (words) => { behind.textContent = words; });
    if (found) showBehind(behind, entry, found);
    if (this.atEnd) this.toEnd();
  }

  // What is typed next: something new, a reply or a message typed anew

  turnTo(towards) {
    const was = this.towards;
    this.towards = towards;
    this.$towards.hidden = towards === null;
    if (towards === null) {
      if (was?.deed === "edit") this.$text.value = "";
    } else {
      const words = wordsOf(towards.entry).slice(0, 80);
      $("span", this.$towards).textContent = say(towards.deed === "edit" ? "editing" : "replying", { words });
      if (towards.deed === "edit") this.$text.value = wordsOf(towards.entry);
      this.$text.focus();
    }
    this.fit();
  }

  fit() {
    this.$text.style.height = "auto";
    this.$text.style.height = `${Math.min(this.$text.scrollHeight + 2, 160)}px`;
  }

  // What is sent goes one after the other; what could not be sent is there to be sent again.
  send() {
    const text = this.$text.value;
    if (!text.trim()) return;
    const { chat, towards } = this;
    const { deed, entry } = towards ?? {};
    const [path, body] = deed === "edit"
      ? ["edit", { chat, key: entry.key, text }]
      : ["say", { chat, text, replies_to: deed === "reply" ? entry.key : null }];
    this.turnTo(null);
    this.$text.value = "";
    this.fit();
    const back = deed !== "edit" && this.isCut ? this.show(chat) : Promise.resolve();
    if (deed !== "edit") this.toEnd();
    this.sending = Promise.all([this.sending, back]).then(async () => {
      const done = await trying(() => ask(path, body), (words) => this.tell(words));
      if (done || this.chat !== chat || this.$text.value) return;
      if (towards) this.turnTo(towards);
      this.$text.value = text;
      this.fit();
    });
  }

  async sendFile() {
    const [file] = this.$file.files;
    if (!file) return;
    this.$file.value = "";
    this.toEnd();
    const about = new URLSearchParams({ of: this.chat, name: file.name, size: file.size });
    const isFarTooLarge = file.size > state.largestFile;
    await trying(
      () => ask(`send?${about}`, isFarTooLarge ? new Blob([]) : file).catch((fault) => {
        if (fault.status !== 413) throw fault; // the bot says it in the chat
      }),
      (words) => this.tell(words),
    );
  }
}

function stretch([text, ...tags]) {
  let inside = document.createTextNode(text);
  for (const tag of tags.reverse()) if (TAGS.has(tag)) inside = make(tag, {}, inside);
  return inside;
}

// What the words of a message became, or the reasons of what it says: as the server tells it, in three parts
function showBehind(into, entry, { stretches, facts, note: words }) {
  const inside = [make("h3", { textContent: say(entry.by === "me" ? "understood" : "reasons") })];
  if (stretches.some(([, became]) => became.length)) {
    inside.push(make("p", { className: "stretches" }, ...stretches.map(([text, became]) => (became.length
      ? make("span", { className: "stretch" }, make("span", { textContent: text }), make("small", { textContent: became.join(", ") }))
      : make("span", { className: "left", textContent: text })))));
  }
  if (facts.length) {
    inside.push(make("dl", {}, ...facts.flatMap(([head, said, from]) => [
      make("dt", { textContent: head }),
      make("dd", { textContent: said }, from ? make("small", { textContent: say("from", { words: from }) }) : null),
    ])));
  }
  if (words) inside.push(make("p", { textContent: words }));
  into.replaceChildren(...inside);
}

const wordsOf = (entry) => entry.words.map(([text]) => text).join("") || entry.file || "";

// What is new for whom

const unread = (chat) => Math.max(0, (state.heard[chat] ?? 0) - (state.seen[chat] ?? 0));

function see() {
  for (const phone of phones) if (phone.isShown && phone.chat) state.seen[phone.chat] = state.heard[phone.chat] ?? 0;
  try { localStorage.setItem(`seen ${state.run}`, JSON.stringify(state.seen)); } catch { /* then it lasts as long as this tab */ }
  marks();
}

function marks() {
  const waiting = state.people.filter((person) => unread(person.chat) && !phones.some((phone) => phone.chat === person.chat));
  $("#unread").replaceChildren(...waiting.slice(0, 8).map((person) => make("button", {
    type: "button", textContent: say("unread", { name: person.name, count: unread(person.chat) }), dataset: { chat: person.chat },
  })));
  for (const phone of phones) phone.named();
  for (const button of document.querySelectorAll(".switch button")) {
    const phone = phones[button.dataset.phone];
    const name = phone.person?.name ?? "";
    const count = unread(phone.chat);
    button.textContent = count ? say("unread", { name, count }) : name;
  }
}

function remember() {
  try { sessionStorage.setItem("phones", JSON.stringify(phones.map((phone) => phone.chat))); } catch { /* as above */ }
}

// The clock

function tick({ now, pace }) {
  state.now = now ?? state.now;
  state.pace = pace ?? state.pace;
  const zone = phones[0]?.zone ?? "UTC";
  if (state.now) {
    $("#now").dateTime = state.now;
    $("#now").textContent = `${dateIn(zone, state.now)}, ${timeIn(zone, state.now)}`;
    $("#zone").textContent = say("where", { place: place(zone) });
  }
  for (const button of document.querySelectorAll("[data-pace]")) button.setAttribute("aria-pressed", button.dataset.pace === state.pace);
  for (const phone of phones) {
    const { person } = phone;
    if (person && person.role !== "new") phone.$there.textContent = `${say(person.role)}, ${place(person.zone)} ${timeIn(person.zone, state.now)}`;
  }
}

// News

let source = null;

function listen(since) {
  source?.close();
  source = new EventSource(`news?since=${encodeURIComponent(since)}`);
  const on = (kind, deed) => source.addEventListener(kind, (event) => deed(JSON.parse(event.data)));
  on("message", heard);
  on("people", ({ people }) => { state.people = people; marks(); tick({}); });
  on("clock", tick);
  on("before", ({ now }) => { note(say("playing")); state.now = now; $("#now").textContent = dateIn("UTC", now); });
  on("fault", ({ words }) => note(words));
  on("anew", () => begin());
  source.onerror = () => { if (source.readyState === EventSource.CLOSED) note(say("lost")); };
}

function heard({ chat, entry, heard: count }) {
  if (count !== undefined) state.heard[chat] = count;
  for (const phone of phones) {
    if (phone.chat !== chat) continue;
    phone.heard(entry);
    if (phone.isShown) announce(phone, entry);
  }
  see();
}

function announce(phone, entry) {
  const region = $("#news");
  const name = phone.person?.name ?? "";
  region.append(make("p", { textContent: say(entry.by === "me" ? "said" : "heard", { name, words: wordsOf(entry) }) }));
  while (region.children.length > 5) region.firstChild.remove();
}

async function begin() {
  const found = await trying(() => ask("state"));
  if (!found) return;
  Object.assign(state, found);
  $("#scenes").replaceChildren(...state.scenes.map((name, index) => make("option", { value: index, textContent: name, selected: index === state.scene })));
  if (!source) listen(state.news);
  for (const element of document.querySelectorAll("[data-leap], [data-pace], .writing button, textarea, .who")) element.disabled = !state.ready;
  if (!state.ready) {
    for (const phone of phones) phone.clear();
    note(say("playing"));
    return;
  }
  $("#about").textContent = state.about;
  try { state.seen = JSON.parse(localStorage.getItem(`seen ${state.run}`)) ?? {}; } catch { state.seen = {}; }
  let kept = [];
  try { kept = JSON.parse(sessionStorage.getItem("phones")) ?? []; } catch { /* then the usual ones */ }
  const is = (chat) => state.people.some((person) => person.chat === chat);
  const client = state.people.find((person) => person.role === "client") ?? state.people[0];
  const coach = state.people.find((person) => person.number === client?.coach) ?? state.people[1] ?? client;
  const wanted = [client, coach].map((person, index) => (is(kept[index]) ? kept[index] : person?.chat));
  await Promise.all(phones.map((phone, index) => phone.show(wanted[index])));
  tick({});
}

for (const index of [0, 1]) phones.push(new Phone(index));

document.addEventListener("click", (event) => {
  const { leap, pace, phone, chat } = event.target.dataset ?? {};
  if (leap) {
    trying(async () => {
      const { note: words } = await ask("leap", { leap, chats: phones.map((each) => each.chat) });
      if (words) note(words);
    });
  }
  if (pace) trying(() => ask("pace", { pace }));
  if (phone && event.target.closest(".switch")) {
    document.body.dataset.shown = phone;
    for (const button of document.querySelectorAll(".switch button")) button.setAttribute("aria-pressed", button === event.target);
    phones[phone].toEnd();
    see();
  }
  if (chat && event.target.closest("#unread")) {
    const person = state.people.find((each) => each.chat === chat);
    phones[person?.role === "coach" ? 1 : 0].show(chat).then(remember);
  }
});
$("#fold").addEventListener("click", (event) => {
  const button = event.currentTarget;
  button.setAttribute("aria-expanded", button.getAttribute("aria-expanded") !== "true");
});
$("#scene").addEventListener("submit", (event) => {
  event.preventDefault();
  trying(() => ask("begin", { scene: Number($("#scenes").value) }));
});
document.addEventListener("visibilitychange", see);
begin();
