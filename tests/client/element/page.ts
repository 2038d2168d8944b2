/**
 * A page in a small DOM, and the element on it. Only what belongs to documents is taken from
 * there: questions are asked by Node's own `fetch`, over the network, as a browser asks them.
 */

import { Window } from 'happy-dom';

const window = new Window({ url: 'https://shop.example/parts/1' });
const { document, customElements, HTMLElement, Node, Event, CustomEvent } = window;
Object.assign(globalThis, { document, customElements, HTMLElement, Node, Event, CustomEvent });

// What extends an element can only be read once there are elements.
const { defineFayingFit } = await import('../../../src/client/element.js');
defineFayingFit();

/** When an element has an answer, or knows that there is none. */
export function settledOnce(element: HTMLElement): Promise<void> {
  return new Promise((resolve) => {
    for (const name of ['answered', 'failed']) {
      element.addEventListener(name, () => resolve(), { once: true });
    }
  });
}

/** The texts of what a selector finds, one after the other. */
export function texts(within: ParentNode, selector: string): string[] {
  return [...within.querySelectorAll(selector)].map(({ textContent }) => textContent);
}

/** Presses the button that a selector finds, or that of them with a text. */
export function press(within: ParentNode, selector: string, text?: string): void {
  const buttons = [...within.querySelectorAll<HTMLElement>(selector)];
  const found = buttons.find((one) => text === undefined || one.textContent === text);
  if (found === undefined) throw new Error(`there is no ${selector} ${text ?? ''}`);
  found.click();
}
