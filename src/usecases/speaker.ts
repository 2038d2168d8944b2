/**
 * Says things of one catalogue in one language: names, values, reasons.
 */

import type { Catalogue, Layout, ValueSpec } from '../domain/catalogue/catalogue.js';
import type { Text } from '../domain/catalogue/document.js';
import { donorArticles } from '../domain/catalogue/donor-article.js';
import type {
  EmptyReading,
  FactAddress,
  Reading,
  SeveralReading,
} from '../domain/check/reading.js';
import type { Margin, Shown } from '../domain/check/shown.js';
import { textIn } from '../domain/explain/language.js';
import type {
  Named,
  NamedValue,
  Reason,
  ReasonData,
  ShownValue,
} from '../domain/explain/reason.js';
import { say, sayOfDonor, spokenFor } from '../domain/explain/words.js';
import type { End } from '../domain/judge/constraint.js';
import { point } from '../domain/quantity/interval.js';
import { absolute, larger } from '../domain/quantity/rational.js';
import { toolOf } from '../domain/quantity/tool.js';
import type { ShownUnits } from '../domain/quantity/unit.js';
import type { FactView, SaidReason } from './answer.js';
import { ValueWriter } from './value-writer.js';

export interface SpeakerContext {
  readonly catalogue: Catalogue;
  readonly layout: Layout | null;
  /** The language wished for. */
  readonly lang: string;
  /** The units wished for; as recorded where that is left out. */
  readonly units?: ShownUnits;
}

export class Speaker {
  readonly catalogue: Catalogue;
  readonly lang: string;
  readonly values: ValueWriter;
  readonly #layout: Layout | null;
  readonly #others: Set<string>;

  constructor(
    { catalogue, layout, lang, units = 'recorded' }: SpeakerContext,
    others = new Set<string>(),
  ) {
    this.catalogue = catalogue;
    this.lang = spokenFor(lang);
    this.values = new ValueWriter({ lang: this.lang, units });
    this.#layout = layout;
    this.#others = others;
  }

  /** Says the same with values as they are recorded. */
  inRecordedUnits(): Speaker {
    if (this.values.units === 'recorded') return this;
    return new Speaker({ catalogue: this.catalogue, layout: this.#layout, lang: this.lang });
  }

  /** Says things of another catalogue in the same answer, such as one with worked parts. */
  of(catalogue: Catalogue): Speaker {
    if (catalogue === this.catalogue) return this;
    const { lang, values } = this;
    const context = { catalogue, layout: this.#layout, lang, units: values.units };
    return new Speaker(context, this.#others);
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
    if (part !== undefined) return this.text(part.name);
    const taken = donorArticles(this.catalogue).get(id);
    if (taken === undefined) return id;
    const { position, hand, lot } = taken;
    const place = this.text(position.name);
    return sayOfDonor({ place, hand, lot: this.lotName(lot.id) }, this.lang);
  }

  lotName(id: string): string {
    const name = this.catalogue.lots.get(id)?.name ?? null;
    return name === null ? id : this.text(name);
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

  /** A position, an axle, a joint or a check of the layout, as its layout calls it. */
  placeName(id: string): string {
    const { axles = [], joints = [] } = this.#layout?.driveline ?? {};
    const named = [...axles, ...joints].find((one) => one.id === id);
    if (named !== undefined) return this.text(named.name);
    return this.positionName(id) ?? id.replaceAll('-', ' ');
  }

  factName(id: string): string {
    const fact = this.catalogue.facts.get(id);
    return fact === undefined ? id : this.text(fact.name);
  }

  /** The name of a parameter or value, in words where the catalogue has them. */
  parameterName(address: FactAddress): string | null {
    const { parameter, fact } = address;
    if (fact !== null) return this.factName(fact);
    if (parameter === null) return null;
    const spec = this.#specAt(address);
    return spec === null ? parameter.replaceAll('-', ' ') : this.specName(spec);
  }

  /** What the kind or the role declares of the value that stands there; null where neither does. */
  #specAt({ part: id, interface: face, parameter }: FactAddress): ValueSpec | null {
    const part = id === null ? undefined : this.catalogue.parts.get(id);
    if (part === undefined || parameter === null) return null;
    if (face !== null) return part.faces.get(face)?.kind?.parameters.get(parameter) ?? null;
    const specs = part.roles.flatMap(
      (role) => this.catalogue.roles.get(role)?.values.get(parameter) ?? [],
    );
    return specs.find(({ name }) => name !== null) ?? specs[0] ?? null;
  }

  /** The name of a value that the layout computes. */
  termName(term: string): string {
    const name = this.#layout?.termNames.get(term);
    return name === undefined ? term.replaceAll('-', ' ') : this.text(name);
  }

  /** The name of what a kind or a role declares. */
  specName({ id, name }: Pick<ValueSpec, 'id' | 'name'>): string {
    return name === null ? id.replaceAll('-', ' ') : this.text(name);
  }

  namedValue(address: FactAddress, value: ShownValue | null, term: string | null): NamedValue {
    const name = this.parameterName(address) ?? (term === null ? null : this.termName(term));
    return { ...this.named(address), parameter: address.parameter, parameterName: name, value };
  }

  value(shown: Shown): ShownValue {
    const { text, interval, dimension, codes, points, isRange } = shown;
    const { values } = this;
    if (codes !== null) return values.word(values.oneOf(codes));
    if (points !== null) return values.word(values.pointsText(points.points, points.dimension));
    if (interval === null || dimension === null) return values.word(text);
    const computed = values.interval(interval, dimension);
    const { low, high, unit } = computed;
    if (text !== null) {
      const { type = null } = this.#specAt(shown.address) ?? {};
      return {
        ...computed,
        text: values.recordedText({ text, interval, dimension, type, isRange }),
      };
    }
    // One value without a text and without an end was not recorded: that it is at least nothing
    // is no knowledge of it.
    const isHalf = low === null || high === null;
    if (isHalf && shown.address.parameter !== null) return { text, low: null, high: null, unit };
    return low === null && high === null ? { ...computed, text: null } : computed;
  }

  /** What is recorded where something is read; null where nothing is. */
  readingText(reading: Exclude<Reading, SeveralReading | EmptyReading>): string | null {
    const { text, address } = reading;
    if (text === null) return null;
    switch (reading.form) {
      case 'code':
        return text;
      case 'points':
        return this.values.pointsText(reading.points ?? [], reading.dimension);
      case 'list':
        return this.values.list((reading.items ?? []).map((one) => this.readingText(one) ?? ''));
      case 'choice':
        return this.values.oneOf(reading.options.map((one) => this.readingText(one) ?? ''));
      case 'number':
      case 'range': {
        const { domain: interval, dimension } = reading;
        const { type = null } = this.#specAt(address) ?? {};
        const isRange = reading.form === 'range';
        return this.values.recordedText({ text, interval, dimension, type, isRange });
      }
    }
  }

  fact(address: FactAddress): FactView {
    return { ...address, name: this.partName(address.part) };
  }

  margin({ interval, measure }: Margin): ShownValue {
    const isShare = measure === 'ratio' || measure === '%';
    return isShare ? this.values.share(interval, measure) : this.values.reserve(interval, measure);
  }

  /** A margin in one number: the greatest mismatch of a loop, the least reserve otherwise. */
  worstOf({ interval, measure }: Margin): ShownValue | null {
    const { low, high } = interval;
    if (measure === '%') {
      if (low === null || high === null) return null;
      return this.values.share(point(larger(absolute(low), absolute(high))), '%');
    }
    if (low === null) return null;
    return measure === 'ratio'
      ? this.values.share(point(low), measure)
      : this.values.least(low, measure);
  }
}
