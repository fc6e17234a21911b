/* anchor-counter, version 1: asks an anchorcalc server what a customer at a chandler's counter asks. No dependencies. MIT licence.

   <script type="module" src="https://…/widget/1/anchor-counter.js" integrity="sha384-…" crossorigin="anonymous"></script>
   <anchor-counter units="metric" action="Put in basket"></anchor-counter>

   Attributes: api (base address of the server, else where this file came from), units (metric or us), counters (which to offer, such as
   "out buy"), action (words of a button under each answer). Words: the property `words`, or a child <script type="application/json">.
   Events, all bubbling: `answer` {question, inputs, answer}, `choose` the same when the button is pressed, `unanswered` {question, why}.
   Looks: --counter-ink, -paper, -line, -accent, -on-accent, -danger, -font, -radius; ::part(field), (answer), (headline).
   Cautions can be reworded, not removed. */

const WORDS = {
  title: "Anchoring: ask at the counter", what: "What do you want to know?", units: "Units", metric: "metres", us: "feet",
  "counter.out": "Rode to let out", "counter.deep": "Deepest anchorage", "counter.buy": "Length to buy", "counter.tackle": "Chain and anchor",
  depth: "Depth of water now", "depth.buy": "Deepest water you mean to anchor in", bow_height: "Height of the bow roller above the water",
  tide_rise: "Rise of tide still to come", scope: "Scope, rode out over height", rode_aboard: "Rode aboard, chain and line",
  chain: "Chain at the anchor", reserve: "Kept aboard, not let out", boat_length: "Length of the boat", wind: "Strongest wind, gusts included",
  boat_form: "Kind of boat", anchor_kind: "Kind of anchor", bottom: "Bottom", chain_size: "Size of chain, if you have one in mind",
  "hint.must": "needed", "hint.may": "may be left out", "hint.bare": "a plain number counts as {unit}", "hint.size": "such as 8 mm or 5/16 in",
  choose: "choose …", unsaid: "not said",
  motor: "motor boat", sail: "sailing boat", multihull: "multihull", pivoting_fluke: "pivoting fluke", plough: "plough", scoop: "scoop",
  claw: "claw", fisherman: "fisherman", grapnel: "grapnel", mushroom: "mushroom", sand: "sand", mud: "mud", clay: "clay", grass: "weed",
  gravel: "gravel", rock: "rock", coral: "coral", nylon_3_strand: "three-strand nylon",
  cautions: "Take care", working: "How it was worked out", sources: "What it stands on", assumed: "Taken, since nothing was said: {list}.",
  read: "Read as: {list}.", aside: "Not used: {list}.", fault: "{given} {why}; {would_do} would do.", missing: "This is needed.",
  needed: "Still needed: {list}.", slow: "Still asking; the server is slow to answer.", busy: "Too many questions just now. Wait a little and try again.",
  absent: "The server cannot be reached. What you typed is kept.", again: "Try again",
  ask: "Or ask in your own words", "ask.example": "How much rode in 4 m of water, bow 1 m up, at 6:1?", "ask.button": "Ask",
  unclear: "That can be read in more than one way. Which did you mean?", can_ask: "This can be asked:",
};
const COUNTERS = {
  out: { must: ["depth"], may: ["bow_height", "tide_rise", "scope", "rode_aboard", "chain"], asks: ["rode_to_let_out"] },
  deep: { must: ["rode_aboard"], may: ["bow_height", "tide_rise", "scope", "reserve"], asks: ["deepest_anchorage"] },
  buy: { must: ["depth"], may: ["bow_height", "tide_rise", "scope", "reserve"], asks: ["rode_to_carry"] },
  tackle: { must: ["boat_length", "wind", "anchor_kind", "bottom"], may: ["boat_form", "scope", "chain_size"], asks: ["chain_and_line", "anchor_size"] },
};
const TAKES = {
  rode_to_let_out: ["depth", "bow_height", "tide_rise", "scope", "chain", "rode_aboard"],
  deepest_anchorage: ["rode_aboard", "bow_height", "tide_rise", "scope", "reserve"],
  rode_to_carry: ["depth", "bow_height", "tide_rise", "scope", "reserve"],
  chain_and_line: ["boat_length", "wind", "boat_form", "chain_size"],
  anchor_size: ["boat_length", "wind", "boat_form", "anchor_kind", "bottom", "scope"],
};
const CHOICES = {
  boat_form: ["motor", "sail", "multihull"],
  anchor_kind: ["pivoting_fluke", "plough", "scoop", "claw", "fisherman", "grapnel", "mushroom"],
  bottom: ["sand", "mud", "clay", "grass", "gravel", "rock", "coral"],
};
const BARE = /^[\d.,/\s+-]*\d[\d.,/\s]*$/; // a number, a fraction or a range without a unit
const AFTER_TYPING = 40, SLOW = 700, PATIENCE = 10000; // ms

const LOOK = new CSSStyleSheet();
LOOK.replaceSync(`
:host { display: block; color-scheme: light dark; container-type: inline-size;
  --ink: var(--counter-ink, light-dark(#16222e, #eef3f6)); --paper: var(--counter-paper, light-dark(#fbf7ec, #18232e));
  --line: var(--counter-line, light-dark(#5c6b77, #8fa0ad)); --accent: var(--counter-accent, light-dark(#1d5a7d, #9fd0ec));
  --on-accent: var(--counter-on-accent, light-dark(#ffffff, #10202c)); --danger: var(--counter-danger, light-dark(#8f1450, #ffb3d1)); }
:host([hidden]) { display: none; }
* { box-sizing: border-box; }
.counter { font: 1rem/1.45 var(--counter-font, system-ui, sans-serif); color: var(--ink); background: var(--paper); padding: 1rem;
  border: 1px solid var(--line); border-radius: var(--counter-radius, .25rem); }
h2 { font-size: 1.2rem; margin: 0 0 .75rem; } h3 { font-size: 1rem; margin: .75rem 0 .25rem; } p { margin: .4rem 0; }
fieldset { border: 0; margin: 0 0 .75rem; padding: 0; min-width: 0; } legend { padding: 0; font-weight: 600; margin-bottom: .25rem; }
.choices { display: flex; flex-wrap: wrap; gap: .5rem; }
.choices label { display: flex; align-items: center; gap: .5rem; min-height: 2.75rem; padding: .25rem .75rem; border: 1px solid var(--line);
  border-radius: var(--counter-radius, .25rem); cursor: pointer; }
.choices label:has(:checked) { border-color: var(--accent); box-shadow: inset 0 0 0 2px var(--accent); font-weight: 600; }
input[type=radio] { width: 1.15rem; height: 1.15rem; margin: 0; accent-color: var(--accent); }
.fields { display: grid; grid-template-columns: 1fr; gap: .75rem; margin-bottom: .75rem; }
.beside { display: grid; gap: 1rem; margin: .75rem 0; align-items: start; }
@container (min-width: 34rem) { .fields { grid-template-columns: 1fr 1fr; } }
@container (max-width: 24rem) { .picture { margin-inline: -1rem; } }
@container (min-width: 46rem) { .beside { grid-template-columns: 1fr 1fr; } }
.field > label, .ask label { display: block; font-weight: 600; margin-bottom: .3rem; } .hint { display: block; font-size: .875rem; margin-top: .3rem; }
input[type=text], select { width: 100%; min-height: 2.75rem; padding: .4rem .6rem; font: inherit; color: inherit; background: transparent;
  border: 1px solid var(--line); border-radius: var(--counter-radius, .25rem); }
::placeholder { color: var(--line); opacity: 1; }
option { color: #16222e; background: #fff; }
[aria-invalid=true] { border: 2px solid var(--danger) !important; } .error { color: var(--danger); font-weight: 600; margin: .2rem 0 0; }
.error:empty, .state:empty, [hidden] { display: none; }
button { min-height: 2.75rem; padding: .4rem 1rem; font: inherit; font-weight: 600; color: var(--on-accent); background: var(--accent);
  border: 1px solid var(--accent); border-radius: var(--counter-radius, .25rem); cursor: pointer; }
button.quiet { color: inherit; background: transparent; border-color: var(--line); text-align: start; display: block; margin: .4rem 0; width: 100%; }
:focus-visible { outline: 3px solid var(--accent); outline-offset: 2px; }
.answer { border-top: 1px solid var(--line); margin-top: 1rem; padding-top: .5rem; } .answer:has(.headline:empty) { display: contents; }
.headline:empty { margin: 0; } .stale { opacity: .55; }
.headline { font-size: 1.25rem; font-weight: 700; } .picture svg { display: block; width: 100%; max-width: 32rem; height: auto; }
.cautions h3 { margin-top: 0; }
.cautions { border-inline-start: 4px solid var(--danger); padding-inline-start: .75rem; } ul, ol { margin: .25rem 0; padding-inline-start: 1.25rem; }
summary { cursor: pointer; min-height: 2.75rem; padding: .6rem 0; font-weight: 600; }
.row { display: flex; gap: .5rem; } .row input { flex: 1; min-width: 0; } .ask { border-top: 1px solid var(--line); margin-top: 1rem; padding-top: 1rem; }`);

/** Make an element: properties, attributes where there is no such property, children (texts stay texts). */
function make(tag, given = {}, ...children) {
  const element = document.createElement(tag);
  for (const [name, value] of Object.entries(given)) name in element ? (element[name] = value) : element.setAttribute(name, value);
  element.append(...children.filter((child) => child !== null));
  return element;
}

/** One answer on the page: headline, picture, what was read, working, and the cautions, which are never hidden. */
class AnswerView {
  constructor(counter) {
    this.counter = counter;
    this.headline = make("p", { className: "headline", role: "status", part: "headline" });
    this.rest = make("div");
    this.box = make("div", { className: "answer", part: "answer" }, this.headline, this.rest);
  }

  clear() {
    this.shown = null;
    this.headline.textContent = "";
    this.rest.replaceChildren();
    this.stale(false);
  }

  stale(yes) {
    this.box.classList.toggle("stale", yes);
    this.box.ariaBusy = String(yes);
  }

  show(answer, inputs) {
    const { counter } = this, list = (texts) => make("ul", {}, ...texts.map((text) => make("li", {}, text)));
    const detail = { question: answer.question, inputs, answer };
    this.shown = detail;
    this.stale(false);
    this.headline.textContent = counter.headline(answer);
    const picture = make("div", { className: "picture" });
    const read = (from) => Object.entries(answer.read).filter(([, one]) => from(one.from)).map(([name, one]) => counter.said(name, one)).join("; ");
    const assumed = read((from) => from === "assumed"), aside = (answer.left_aside ?? []).map((one) => one.text).join("; ");
    const told = inputs ? "" : read((from) => from !== "assumed");
    this.rest.replaceChildren(
      ...[told && ["read", told], assumed && ["assumed", assumed], aside && ["aside", aside]].filter(Boolean)
        .map(([name, text]) => make("p", { className: name }, counter.word(name, { list: text }))),
      make("div", { className: "beside" },
        make("div", { className: "cautions", hidden: !answer.cautions.length }, make("h3", {}, counter.word("cautions")),
          list(answer.cautions.map((one) => counter.words[`caution.${one.code}`] || one.text))),
        picture),
      make("details", {}, make("summary", {}, counter.word("working")), list(answer.working), make("h3", {}, counter.word("sources")), list(answer.sources)),
    );
    const action = counter.getAttribute("action");
    if (action) this.rest.append(make("button", { type: "button", onclick: () => counter.tell("choose", detail) }, action));
    counter.draw(answer, inputs, (svg) => this.shown === detail && picture.replaceChildren(svg));
    counter.tell("answer", detail);
  }
}

class AnchorCounter extends HTMLElement {
  static observedAttributes = ["api", "units", "counters", "action"];
  #typed = new Map();
  #words = {};
  #counter = "";
  #units = "metric";
  #turn = 0;
  #views = [];
  #retry = null;

  /** Words of the page's own; those that it leaves out stay as they are. */
  get words() { return { ...WORDS, ...this.#words }; }
  set words(words) { this.#words = { ...words }; if (this.isConnected) this.#build(); }

  word(name, parts = {}) { return (this.words[name] ?? name).replace(/\{(\w+)\}/g, (whole, part) => parts[part] ?? whole); }
  tell(name, detail) { this.dispatchEvent(new CustomEvent(name, { detail, bubbles: true, composed: true })); }
  said(name, one) { return `${this.words[`said.${name}`] ?? name.replaceAll("_", " ")} ${this.words[one.shown] ?? one.shown}`; }
  headline(answer) {
    const shown = Object.fromEntries(Object.entries({ ...answer.read, ...answer.results }).map(([name, one]) => [name, one?.shown ?? String(one)]));
    return this.words[`answer.${answer.question}`] ? this.word(`answer.${answer.question}`, shown) : answer.headline;
  }

  connectedCallback() {
    if (!this.shadowRoot) this.attachShadow({ mode: "open" }).adoptedStyleSheets = [LOOK];
    if (document.readyState === "loading") addEventListener("DOMContentLoaded", () => this.#read(), { once: true }); // children may come yet
    this.#units = this.getAttribute("units") === "us" ? "us" : "metric";
    this.#read();
    addEventListener("online", this.#again);
  }
  disconnectedCallback() { removeEventListener("online", this.#again); }
  attributeChangedCallback(name, before, now) {
    if (!this.shadowRoot || before === now) return;
    if (name === "units") this.#switch(now === "us" ? "us" : "metric");
    this.#build();
  }
  #again = () => this.#retry?.();

  // --- what is on the page ---

  /** Take the words that the page set inside the element; where they cannot be read, the usual ones stay. */
  #read() {
    try {
      const said = this.querySelector('script[type="application/json"]');
      if (said) this.#words = { ...JSON.parse(said.textContent), ...this.#words };
    } catch (error) { console.error("anchor-counter: its words are no JSON", error); }
    this.#build();
  }

  #build() {
    const offered = (this.getAttribute("counters") ?? "").split(/\s+/).filter((name) => name in COUNTERS);
    const counters = offered.length ? offered : Object.keys(COUNTERS);
    if (!counters.includes(this.#counter)) this.#counter = counters[0];
    const radios = (legend, name, values, now, label, pick) =>
      make("fieldset", { className: name }, make("legend", {}, this.word(legend)), make("div", { className: "choices" }, ...values.map((value) =>
        make("label", {}, make("input", { type: "radio", name, value, checked: value === now, onchange: () => pick(value) }), this.word(label + value)))));
    this.form = make("form", { noValidate: true, onsubmit: (event) => { event.preventDefault(); this.#ask(true); } });
    this.state = make("p", { className: "state", role: "status" });
    this.again = make("button", { type: "button", className: "again", hidden: true, onclick: this.#again }, this.word("again"));
    this.answers = make("div");
    this.shadowRoot.replaceChildren(make("div", { className: "counter" },
      make("h2", {}, this.word("title")),
      radios("what", "which", counters, this.#counter, "counter.", (value) => { this.#counter = value; this.#fields(); }),
      radios("units", "units", ["metric", "us"], this.#units, "", (value) => { this.#switch(value); this.#fields(); }),
      this.form, this.state, this.again, this.answers, this.#inWords()));
    this.#fields();
  }

  #fields() {
    const { must, may, asks } = COUNTERS[this.#counter];
    this.form.replaceChildren(make("div", { className: "fields" }, ...[...must, ...may].map((name) => this.#field(name, must.includes(name)))),
      make("button", { type: "submit", hidden: true }));
    this.#views = asks.map(() => new AnswerView(this));
    this.answers.replaceChildren(...this.#views.map((view) => view.box));
    this.#ask(false);
  }

  #field(name, must) {
    const hints = [this.word(must ? "hint.must" : "hint.may")], unit = this.#unit(name);
    if (unit) hints.push(this.word("hint.bare", { unit }));
    if (name === "chain_size") hints.push(this.word("hint.size"));
    const shared = { id: name, name, required: must, "aria-describedby": `${name}-hint ${name}-error` }, kept = this.#typed.get(name) ?? "";
    const entry = CHOICES[name]
      ? make("select", shared, make("option", { value: "" }, this.word(must ? "choose" : "unsaid")), ...CHOICES[name].map((value) => make("option", { value }, this.word(value))))
      : make("input", { ...shared, type: "text", inputMode: unit && unit !== "kn" ? "decimal" : "text", autocomplete: "off", spellcheck: false, maxLength: 80 });
    entry.value = kept;
    entry.addEventListener("input", () => {
      this.#typed.set(name, entry.value.trim());
      clearTimeout(this.typing);
      this.typing = setTimeout(() => this.#ask(false), AFTER_TYPING);
    });
    return make("div", { className: "field", part: "field" }, make("label", { htmlFor: name }, this.words[`${name}.${this.#counter}`] ?? this.word(name)),
      entry, make("span", { className: "hint", id: `${name}-hint` }, hints.join(", ")), make("p", { className: "error", id: `${name}-error` }));
  }

  #unit(name) {
    if (CHOICES[name] || name === "scope" || name === "chain_size") return "";
    return name === "wind" ? "kn" : this.#units === "us" ? "ft" : "m";
  }

  /** Change the units; what was typed without one keeps the unit that it had, so that no number changes its meaning. */
  #switch(units) {
    for (const [name, text] of this.#typed) if (BARE.test(text) && this.#unit(name)) this.#typed.set(name, `${text} ${this.#unit(name)}`);
    this.#units = units;
  }

  // --- asking ---

  #inputs(question) {
    const inputs = {};
    for (const name of TAKES[question]) {
      const text = this.#typed.get(name);
      if (text) inputs[name] = BARE.test(text) && this.#unit(name) ? `${text} ${this.#unit(name)}` : text;
    }
    return inputs;
  }

  #mark(name, text) {
    const entry = this.form.elements[name];
    if (!entry) return false;
    entry.setAttribute("aria-invalid", String(Boolean(text)));
    this.shadowRoot.getElementById(`${name}-error`).textContent = text;
    return true;
  }

  #clean() {
    for (const name of [...COUNTERS[this.#counter].must, ...COUNTERS[this.#counter].may]) this.#mark(name, "");
    this.#say("");
  }

  #say(text, retry = null) {
    this.state.textContent = text;
    this.#retry = retry;
    this.again.hidden = !retry;
  }

  async #ask(pressed) {
    const turn = ++this.#turn, { must, asks } = COUNTERS[this.#counter];
    this.#clean();
    const lacking = must.filter((name) => !this.#typed.get(name));
    if (lacking.length && (pressed || [...must].some((name) => this.#typed.get(name))))
      this.#say(this.word("needed", { list: lacking.map((name) => this.words[`${name}.${this.#counter}`] ?? this.word(name)).join("; ") }));
    if (pressed && lacking.length) {
      for (const name of lacking) this.#mark(name, this.word("missing"));
      this.form.elements[lacking[0]].focus();
    }
    await Promise.all(asks.map((question, at) => {
      const view = this.#views[at];
      if (lacking.some((name) => TAKES[question].includes(name))) return view.clear();
      view.stale(true);
      return this.#one(question, view, turn);
    }));
  }

  async #one(question, view, turn) {
    const inputs = this.#inputs(question);
    const query = new URLSearchParams({ ...inputs, units: this.#units });
    const reply = await this.#fetch(`v1/${question.replaceAll("_", "-")}?${query}`, {}, () => turn === this.#turn, () => this.#ask(false));
    if (turn !== this.#turn || reply === null) return;
    if (reply.status === "answered") return view.show(reply, inputs);
    view.clear();
    if (!reply.absent) this.#faults(question, reply);
  }

  #faults(question, problem) {
    const loose = [];
    for (const one of problem.errors ?? []) {
      const text = this.word(this.words[`fault.${one.code}`] ? `fault.${one.code}` : "fault", one).trim();
      if (!this.#mark(one.input, text)) loose.push(`${one.input}: ${text}`);
    }
    if (loose.length || !problem.errors?.length) this.#say(loose.join(" ") || problem.detail || problem.title);
    this.tell("unanswered", { question, why: problem });
  }

  /** Return the server's reply as an object; where there is none, say so, and offer to try again. Null: nobody waits for it any more. */
  async #fetch(path, options, current, retry) {
    const stop = new AbortController(), slow = setTimeout(() => current() && this.#say(this.word("slow")), SLOW);
    const patience = setTimeout(() => stop.abort(), PATIENCE);
    try {
      const response = await fetch(this.address(path), { ...options, signal: stop.signal, credentials: "omit" });
      const reply = await response.json();
      if (current() && this.state.textContent === this.word("slow")) this.#say("");
      if (response.status === 429 && current()) this.#say(this.word("busy"), retry);
      return response.status === 429 ? { absent: true } : { ...reply, status: response.ok ? reply.status : "refused" };
    } catch (error) {
      if (current()) {
        this.#say(this.word("absent"), retry);
        this.tell("unanswered", { question: path.slice(3).split("?")[0].replaceAll("-", "_"), why: { detail: String(error) } });
      }
      return current() ? { absent: true } : null;
    } finally {
      clearTimeout(slow);
      clearTimeout(patience);
    }
  }

  address(path) {
    const api = this.getAttribute("api");
    return new URL(path, api ? new URL(api.endsWith("/") ? api : `${api}/`, document.baseURI) : new URL("../../", import.meta.url));
  }

  /** Fetch the picture as a parsed document, so that no markup is ever made from a text here. */
  draw(answer, inputs, done) {
    const given = inputs ?? Object.fromEntries(Object.entries(answer.read).filter(([, one]) => one.from !== "assumed" && !Array.isArray(one.value))
      .map(([name, one]) => [name, one.unit && one.low === undefined ? `${one.value} ${one.unit}` : one.shown]));
    if (!inputs && given.boat_length && given.wind) delete given.load; // the load came from these two, and only one of the ways may be given
    const request = new XMLHttpRequest();
    request.open("GET", this.address(`v1/${answer.question.replaceAll("_", "-")}.svg?${new URLSearchParams({ ...given, units: this.#units })}`));
    request.responseType = "document";
    request.overrideMimeType("image/svg+xml");
    request.timeout = PATIENCE;
    request.onload = () => {
      const svg = request.status === 200 && request.response?.documentElement;
      if (svg?.localName === "svg") done(document.importNode(svg, true));
    };
    request.send();
  }

  // --- in the customer's own words ---

  #inWords() {
    const text = make("input", { type: "text", id: "words", autocomplete: "off", maxLength: 500, placeholder: this.word("ask.example"), "aria-describedby": "words-said" });
    const label = make("label", { htmlFor: "words" }, this.word("ask")), said = make("p", { id: "words-said", role: "status" }), more = make("div");
    const view = new AnswerView(this);
    let before = null, turn = 0;
    const send = async () => {
      const mine = ++turn, body = { text: text.value.trim(), units: this.#units, ...(before ? { before } : {}) };
      if (!body.text) return text.focus();
      view.stale(true);
      const options = { method: "POST", headers: { "Content-Type": "application/json" }, body: JSON.stringify(body) };
      const reply = await this.#fetch("v1/ask", options, () => mine === turn, send);
      if (mine !== turn || reply === null || reply.absent) return view.clear();
      before = reply.status === "needs" ? reply : null;
      label.textContent = before ? reply.prompt : this.word("ask");
      said.textContent = { needs: reply.prompt, unclear: this.word("unclear"), cannot: reply.why, refused: reply.detail ?? reply.title }[reply.status] ?? "";
      const offers = reply.status === "unclear" ? reply.choices.map((one) => one.text) : (reply.can_ask ?? []);
      more.replaceChildren(...offers.map((offer) => make("button", { type: "button", className: "quiet", onclick: () => { before = null; text.value = offer; send(); } }, offer)));
      if (reply.status === "cannot" && offers.length) more.prepend(make("p", {}, this.word("can_ask")));
      if (reply.status === "needs") { text.value = ""; text.focus(); }
      if (reply.status === "answered") return view.show(reply, null);
      view.clear();
      this.tell("unanswered", { question: reply.question ?? "", why: reply });
    };
    return make("form", { className: "ask", noValidate: true, onsubmit: (event) => { event.preventDefault(); this.#say(""); send(); } },
      label, make("div", { className: "row" }, text, make("button", { type: "submit" }, this.word("ask.button"))), said, more, view.box);
  }
}

customElements.define("anchor-counter", AnchorCounter);
