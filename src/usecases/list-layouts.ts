/**
 * Which vehicle architectures does the catalogue know, and what is in each?
 */

import type { Catalogue, Layout, Position } from '../domain/catalogue/catalogue.js';
import type { Check } from '../domain/check/check.js';
import { exactText, type Rational } from '../domain/quantity/rational.js';
import type {
  DeclaredCheckView,
  LayoutAnswer,
  LayoutEntry,
  PositionView,
} from './catalogue-view.js';
import { withHead } from './head.js';
import type { Library } from './library.js';
import { type ListAnswer, type ListInput, pageOf } from './listing.js';
import { oneOf, type ReadInput } from './read-one.js';
import { Speaker } from './speaker.js';

/** In the order of their ids. */
export function listLayouts(library: Library, input: ListInput): ListAnswer<LayoutEntry> {
  const edition = library.edition(input.edition);
  const { catalogue } = edition;
  const speaker = new Speaker({ catalogue, layout: null, lang: input.lang });
  const vehicles = vehiclesByLayout(catalogue);
  const { rows, next, total } = pageOf(catalogue.layouts.values(), ({ id }) => [id], input);
  const items = rows.map((layout) => ({
    id: layout.id,
    name: layout.name === null ? null : speaker.text(layout.name),
    positions: layout.positions.size,
    vehicles: vehicles.get(layout.id) ?? 0,
  }));
  return withHead(edition, speaker, { items, next, counts: { total } });
}

function vehiclesByLayout({ vehicles }: Catalogue): ReadonlyMap<string, number> {
  const counts = new Map<string, number>();
  for (const { layout } of vehicles.values()) {
    counts.set(layout.id, (counts.get(layout.id) ?? 0) + 1);
  }
  return counts;
}

export function readLayout(library: Library, input: ReadInput): LayoutAnswer {
  const edition = library.edition(input.edition);
  const { catalogue } = edition;
  const layout = oneOf(catalogue.layouts, 'layout', input);
  const speaker = new Speaker({ catalogue, layout, lang: input.lang });
  const view = layoutView(layout, speaker);
  return withHead(edition, speaker, view);
}

function layoutView(layout: Layout, speaker: Speaker) {
  return {
    id: layout.id,
    name: layout.name === null ? null : speaker.text(layout.name),
    positions: [...layout.positions.values()].map((one) => positionView(one, speaker)),
    matings: [...layout.matings.values()].map(({ id, ends, adapters }) => ({
      mating: id,
      between: ends.map((end) => `${end.position}.${end.interface}`),
      adapters,
    })),
    checks: layout.checks.map((check) => declaredCheck(check, speaker)),
    terms: [...layout.terms.keys()].map((term) => ({ term, name: speaker.termName(term) })),
  };
}

function positionView(position: Position, speaker: Speaker): PositionView {
  const { id, name, roles, count, isHanded, isOptional, behind, labour, access } = position;
  return {
    position: id,
    name: speaker.text(name),
    roles: [...roles],
    count,
    handed: isHanded,
    optional: isOptional,
    behind: [...behind],
    labourHours: hours(labour),
    accessHours: hours(access),
  };
}

function hours(time: Rational | null): string | null {
  return time === null ? null : exactText(time);
}

export function declaredCheck(check: Check, speaker: Speaker): DeclaredCheckView {
  const { id, spelling, severity, text } = check;
  const said = text === null ? null : speaker.text(text);
  return { check: id, primitive: spelling, severity, text: said };
}
