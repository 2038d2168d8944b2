/**
 * Says things of one catalogue in one language: names, values, reasons.
 */

import type { Catalogue, Layout, ValueSpec } from '../domain/catalogue/catalogue.js';
import type { Text } from '../domain/catalogue/document.js';
import type { FactAddress } from '../domain/check/reading.js';
import type { Margin, Shown } from '../domain/check/shown.js';
import { textIn } from '../domain/explain/language.js';
import type {
  Named,
  NamedValue,
  Reason,
  ReasonData,
  ShownPoint,
  ShownValue,
} from '../domain/explain/reason.js';
import { say, spokenFor } from '../domain/explain/words.js';
import type { End } from '../domain/judge/constraint.js';
import { type Interval, point } from '../domain/quantity/interval.js';
import type { PlanePoint } from '../domain/quantity/plane-point.js';
import { formatQuantity } from '../domain/quantity/quantity.js';
import {
  absolute,
  exactText,
  larger,
  type Rational,
  shortText,
} from '../domain/quantity/rational.js';
import { toolOf } from '../domain/quantity/tool.js';
import type { FactView, SaidReason, SideView } from './answer.js';
import { roundedOutwards } from './rounded.js';

export interface SpeakerContext {
  readonly catalogue: Catalogue;
  readonly layout: Layout | null;
  /** The language wished for. */
  readonly lang: string;
}

export class Speaker {
  readonly catalogue: Catalogue;
  readonly lang: string;
  readonly #layout: Layout | null;
  readonly #others = new Set<string>();

  constructor({ catalogue, layout, lang }: SpeakerContext) {
    this.catalogue = catalogue;
    this.lang = spokenFor(lang);
    this.#layout = layout;
  }

  text(text: Text): string {
    const said = textIn(text, this.lang, this.catalogue.lang);
    if (said.lang !== this.lang) this.#others.add(said.lang);
    return said.text;
  }

  /** Languages that texts were said in so far, for want of any in the language spoken. */
  get textLang(): readonly string[] {
    return [...this.#others].sort();
  }

  partName(id: string | null): string | null {
    if (id === null) return null;
    const part = this.catalogue.parts.get(id);
    return part === undefined ? id : this.text(part.name);
  }

  toolName(id: string): string {
    const tool = toolOf(id);
    return tool === undefined ? id : this.text(tool.name);
  }

  positionName(id: string | null): string | null {
    const position = id === null ? undefined : this.#layout?.positions.get(id);
    return position === undefined ? null : this.text(position.name);
  }

  said(code: string, data: ReasonData): SaidReason {
    const reason: Reason = { code, data };
    return { code, data, text: say(reason, this.lang) };
  }

  named(address: FactAddress): Named {
    const { position, hand, part, interface: face } = address;
    return {
      position,
      positionName: this.positionName(position),
      hand,
      part,
      partName: this.partName(part),
      interface: face,
      kindName: this.#kindName(part, face),
    };
  }

  namedEnd(end: End): Named {
    const part = end.occupant.is === 'part' ? end.occupant.part : null;
    return {
      position: end.position,
      positionName: this.positionName(end.position),
      hand: null,
      part,
      partName: this.partName(part),
      interface: end.interface,
      kindName: this.#kindName(part, end.interface),
    };
  }

  #kindName(part: string | null, face: string | null): string | null {
    if (part === null || face === null) return null;
    const kind = this.catalogue.parts.get(part)?.faces.get(face)?.kind;
    return kind === null || kind === undefined ? null : this.text(kind.name);
  }

  /** The name of a parameter or value, in words where the catalogue has them. */
  parameterName(address: FactAddress): string | null {
    const { part: id, interface: face, parameter, fact } = address;
    if (fact !== null) {
      const known = this.catalogue.facts.get(fact);
      return known === undefined ? fact : this.text(known.name);
    }
    if (parameter === null) return null;
    const part = id === null ? undefined : this.catalogue.parts.get(id);
    const name =
      face === null
        ? part?.roles
            .map((role) => this.catalogue.roles.get(role)?.values.get(parameter)?.name)
            .find((found) => found !== null && found !== undefined)
        : part?.faces.get(face)?.kind?.parameters.get(parameter)?.name;
    if (name !== null && name !== undefined) return this.text(name);
    return parameter.replaceAll('-', ' ');
  }

  /** The name of what a kind or a role declares. */
  specName({ id, name }: Pick<ValueSpec, 'id' | 'name'>): string {
    return name === null ? id.replaceAll('-', ' ') : this.text(name);
  }

  namedValue(address: FactAddress, value: ShownValue | null, term: string | null): NamedValue {
    const name = this.parameterName(address) ?? term?.replaceAll('-', ' ') ?? null;
    return { ...this.named(address), parameter: address.parameter, parameterName: name, value };
  }

  value(shown: Shown): ShownValue {
    const { text, interval, dimension, codes } = shown;
    if (codes !== null) return this.word(codes.join(' or '));
    if (interval === null || dimension === null) return this.word(text);
    const { low, high, unit, text: formatted } = formatQuantity(interval, dimension);
    if (text !== null) return { text, low, high, unit };
    // One value without a text and without an end was not recorded: that it is at least nothing
    // is no knowledge of it.
    const isHalf = low === null || high === null;
    if (isHalf && shown.address.parameter !== null) return { text, low: null, high: null, unit };
    return { text: low === null && high === null ? null : formatted, low, high, unit };
  }

  interval(interval: Interval, dimension: string): ShownValue {
    return formatQuantity(interval, dimension);
  }

  /** A value that has no ends: a code, a list of points. */
  word(text: string | null): ShownValue {
    return { text, low: null, high: null, unit: '' };
  }

  /** As recorded; what may be ordered, picked or measured has its ends beside. */
  recorded(text: string, interval: Interval | null, dimension: string): ShownValue {
    return interval === null ? this.word(text) : { ...this.interval(interval, dimension), text };
  }

  point({ text, x, y }: PlanePoint, dimension: string): ShownPoint {
    return { text, x: this.interval(x, dimension), y: this.interval(y, dimension) };
  }

  side(shown: Shown): SideView {
    const { position, hand, part, interface: face, parameter } = shown.address;
    return {
      position,
      hand,
      part,
      name: this.partName(part),
      interface: face,
      parameter,
      term: shown.term,
      value: this.value(shown),
    };
  }

  fact(address: FactAddress): FactView {
    return { ...address, name: this.partName(address.part) };
  }

  margin({ interval, measure }: Margin): ShownValue {
    const { low, high } = interval;
    if (measure !== 'ratio' && measure !== '%') return formatQuantity(interval, measure);
    const ends = { low: exact(low), high: exact(high), unit: measure };
    const suffix = measure === '%' ? ' %' : '';
    const [from, to] = [low, high].map((end) => (end === null ? '…' : shortText(end, 2)));
    const text = from === to ? `${from}${suffix}` : `${from} to ${to}${suffix}`;
    return { ...ends, text };
  }

  /** A margin in one number: the greatest mismatch of a loop, the least reserve otherwise. */
  worstOf(margin: Margin): ShownValue | null {
    const { low, high } = margin.interval;
    if (margin.measure === '%') {
      if (low === null || high === null) return null;
      return this.margin({ ...margin, interval: point(larger(absolute(low), absolute(high))) });
    }
    if (low === null) return null;
    const shown = this.margin({ ...margin, interval: point(low) });
    if (margin.measure === 'ratio') return shown;
    // In few digits, and never more than there is.
    const known = roundedOutwards(point(low), margin.measure).low ?? low;
    return { ...shown, text: formatQuantity(point(known), margin.measure).text };
  }
}

function exact(end: Rational | null): string | null {
  return end === null ? null : exactText(end);
}
