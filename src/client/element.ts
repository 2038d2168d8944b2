/**
 * `<faying-fit part= vehicle=>`: whether a part fits, on any page. It shows the answer's sentence,
 * what else is needed, what is to be measured or told, and the cautions that are always shown.
 *
 * All texts are set as texts, never as markup, and there is no style, so that it runs under the
 * strictest policy of a page; `class` and `data-verdict` are there for the page's own style sheet.
 * It says of nothing that it fits unless the answer does, and then alone offers to take it:
 * `add` has the lines. Left out: what only a workshop needs, such as reasons and figures.
 */

import type { AnswerOf, FitAnswer, PartlyFitAnswer } from './contract.js';
import { type ElementWords, elementWords } from './element-words.js';
import { FayingClient, type FayingOptions } from './faying-client.js';
import { type OrderLine, orderLines } from './order-lines.js';
import { FayingProblem } from './problem.js';

/** What `add` has in its `detail`: a line for each thing to buy. */
export type AddedLine = Pick<OrderLine, 'sku' | 'packs' | 'part' | 'lot' | 'name'>;

declare global {
  interface HTMLElementTagNameMap {
    'faying-fit': FayingFitElement;
  }
}

type Answer = AnswerOf<'/v1/fit', 'get'>;
type SettlingAsk = PartlyFitAnswer['ask'][number];
type KitLine = NonNullable<FitAnswer['kit']>['lines'][number];

/** Attributes that are parameters of the question by the same name. */
const ASKED = ['part', 'vehicle', 'make', 'model', 'variant', 'year', 'built', 'position'] as const;

/** Where the service is, the key for it, and the language and the edition wished for. */
const SETTINGS = ['base-url', 'api-key', 'lang', 'edition'] as const;

/** Lines that say what is taken out or opened, and not what is needed. */
const NOT_NEEDED: ReadonlySet<string> = new Set(['remove', 'open']);

/** Goods that need no line: they are there, or are in a lot with a line of its own. */
const AT_HAND: ReadonlySet<string | null> = new Set(['present', 'lot']);

export class FayingFitElement extends HTMLElement {
  static readonly observedAttributes = [...ASKED, ...SETTINGS];

  /** What was chosen on the page, by parameter. */
  readonly #told = new Map<string, string>();
  #asking: AbortController | null = null;

  connectedCallback(): void {
    this.#askSoon();
  }

  disconnectedCallback(): void {
    this.#asking?.abort();
    this.#asking = null;
  }

  attributeChangedCallback(name: string, before: string | null, after: string | null): void {
    if (before === after || !this.isConnected) return;
    // Another vehicle or part: what was said of the last one says nothing of it.
    if ((ASKED as readonly string[]).includes(name)) this.#told.clear();
    this.#askSoon();
  }

  /** Once, however many attributes are set in a row. */
  #askSoon(): void {
    this.#asking?.abort();
    const asking = new AbortController();
    this.#asking = asking;
    queueMicrotask(() => {
      if (!asking.signal.aborted) void this.#ask(asking.signal);
    });
  }

  async #ask(signal: AbortSignal): Promise<void> {
    const lang = this.#lang();
    const words = elementWords(lang ?? '');
    this.#show('asking', null, [line('faying-state', words.asking)]);
    try {
      const answer = await this.#client(lang).get('/v1/fit', {
        params: { query: this.#question() },
        signal,
      });
      this.#showAnswer(answer);
    } catch (error) {
      if (signal.aborted) return;
      const text = error instanceof FayingProblem ? error.message : words.failed;
      this.#show('failed', null, [line('faying-state', text)]);
      this.dispatchEvent(new CustomEvent('failed', { detail: error, bubbles: true }));
    }
  }

  #client(lang: string | null): FayingClient {
    const key = this.getAttribute('api-key');
    const edition = this.getAttribute('edition');
    const options: FayingOptions = {
      baseUrl: this.getAttribute('base-url') ?? '',
      ...(key === null ? {} : { key }),
      ...(lang === null ? {} : { lang }),
      ...(edition === null ? {} : { edition: Number(edition) }),
    };
    return new FayingClient(options);
  }

  /** That of the element, else of the page around it; null leaves it to the browser. */
  #lang(): string | null {
    return this.closest('[lang]')?.getAttribute('lang') ?? null;
  }

  #question() {
    const fact: Record<string, string> = {};
    const told: Record<string, string> = {};
    for (const [name, value] of this.#told) (name.startsWith('fact.') ? fact : told)[name] = value;
    const { part = '', year, ...named } = { ...this.#attributes(), ...told };
    return {
      ...named,
      part,
      ...(year === undefined ? {} : { year: Number(year) }),
      ...(Object.keys(fact).length === 0 ? {} : { fact }),
    };
  }

  #attributes(): Partial<Record<(typeof ASKED)[number], string>> {
    const set = ASKED.map((name) => [name, this.getAttribute(name)] as const);
    return Object.fromEntries(set.filter(([, value]) => value !== null && value !== ''));
  }

  #showAnswer(answer: Answer): void {
    const words = elementWords(answer.lang);
    const fit = 'positions' in answer ? answer : answer.fit;
    const { verdict, summary } = answer;
    const needed = verdict === 'fits-with-changes' ? (fit?.kit?.lines ?? []) : [];
    const cautions = (fit ?? answer).cautions.filter(({ show }) => show === 'always');
    const asks = 'ask' in answer ? answer.ask : [];
    const added = addedLines(answer, fit);
    this.#show('answered', verdict, [
      line('faying-verdict', summary.text),
      ...listed('faying-needed', words.needed, needed.filter(isNeeded).map(lineText(words))),
      ...listed(
        'faying-measure',
        words.measure,
        (fit?.measure ?? []).map(({ text }) => text),
      ),
      ...this.#asked(asks, words),
      ...listed(
        'faying-cautions',
        words.cautions,
        cautions.map(({ text }) => text),
      ),
      ...(added.length === 0 ? [] : [this.#adding(added, words)]),
    ]);
    this.dispatchEvent(new CustomEvent('answered', { detail: answer, bubbles: true }));
  }

  /** A button for each thing that can be told; pressing one asks again. */
  #asked(asks: readonly SettlingAsk[], words: ElementWords): Node[] {
    if (asks.length === 0) return [];
    const parts = asks.flatMap((ask) => {
      const parameter = ask.fact === null ? ask.field : `fact.${ask.fact}`;
      const buttons = ask.values.map(({ value, label }) =>
        button('faying-value', label, () => {
          this.#told.set(parameter, value);
          this.#askSoon();
        }),
      );
      const how = ask.how === null ? [] : [line('faying-how', ask.how)];
      return [line('faying-question', ask.name), ...how, ...buttons];
    });
    return [section('faying-ask', words.ask, parts)];
  }

  #adding(lines: readonly AddedLine[], words: ElementWords): Node {
    return button('faying-add', words.add, () => {
      this.dispatchEvent(new CustomEvent('add', { detail: lines, bubbles: true }));
    });
  }

  #show(state: string, verdict: string | null, parts: readonly Node[]): void {
    this.setAttribute('aria-live', 'polite');
    this.dataset.state = state;
    if (verdict === null) delete this.dataset.verdict;
    else this.dataset.verdict = verdict;
    this.replaceChildren(...parts);
  }
}

/** Makes the element known to the page; once is enough. */
export function defineFayingFit(registry: CustomElementRegistry = customElements): void {
  if (registry.get('faying-fit') === undefined) registry.define('faying-fit', FayingFitElement);
}

/** What is bought where it fits: the lines of the kit, or the part alone; else nothing. */
function addedLines(answer: Answer, fit: FitAnswer | null): AddedLine[] {
  switch (answer.verdict) {
    case 'fits': {
      const { asked, part, name } = answer;
      const sku = asked.startsWith('sku:') ? asked.slice('sku:'.length) : null;
      return [{ sku, packs: null, part, lot: null, name }];
    }
    case 'fits-with-changes':
      return orderLines(fit?.kit?.lines ?? []).map(({ sku, packs, part, lot, name }) => ({
        sku,
        packs,
        part,
        lot,
        name,
      }));
    default:
      return [];
  }
}

function isNeeded({ action, source }: KitLine): boolean {
  return !NOT_NEEDED.has(action) && !AT_HAND.has(source);
}

/** Such as `8 × flywheel bolt`, `2.6 l gear oil`. */
function lineText({ point }: ElementWords): (line: KitLine) => string {
  return ({ name, quantity: { value, unit } }) => {
    if (value === null) return name;
    const amount = value.replace('.', point);
    return `${amount} ${unit === 'piece' ? '×' : unit} ${name}`;
  };
}

function listed(name: string, title: string, texts: readonly string[]): Node[] {
  if (texts.length === 0) return [];
  const list = document.createElement('ul');
  list.append(...texts.map((text) => textIn('li', text)));
  return [section(name, title, [list])];
}

function section(name: string, title: string, parts: readonly Node[]): Node {
  const made = document.createElement('section');
  made.className = name;
  made.append(line('faying-title', title), ...parts);
  return made;
}

function line(name: string, text: string): Node {
  const made = textIn('p', text);
  made.className = name;
  return made;
}

function button(name: string, text: string, pressed: () => void): Node {
  const made = textIn('button', text);
  made.className = name;
  made.setAttribute('type', 'button');
  made.addEventListener('click', pressed);
  return made;
}

function textIn(tag: string, text: string): HTMLElement {
  const made = document.createElement(tag);
  made.textContent = text;
  return made;
}
