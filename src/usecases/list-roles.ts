/**
 * What can a part be, and which faces and values does such a part have?
 */

import type { Role, RoleValue } from '../domain/catalogue/catalogue.js';
import { cautionsOf } from './cautions.js';
import { withHead, withValuesHead } from './head.js';
import type { Library } from './library.js';
import { specView } from './list-kinds.js';
import { type ListAnswer, type ListInput, pageOf } from './listing.js';
import { type PartDirectory, partDirectory } from './part-directory.js';
import { oneOf, type ReadValuesInput } from './read-one.js';
import { Speaker } from './speaker.js';
import type { RoleAnswer, RoleEntry, RoleValueView } from './vocabulary-view.js';

/** In the order of their ids. */
export function listRoles(library: Library, input: ListInput): ListAnswer<RoleEntry> {
  const edition = library.edition(input.edition);
  const { catalogue } = edition;
  const speaker = new Speaker({ catalogue, layout: null, lang: input.lang });
  const directory = partDirectory(catalogue);
  const { rows, next, total } = pageOf(catalogue.roles.values(), ({ id }) => [id], input);
  const items = rows.map((role) => entryOf(role, directory, speaker));
  return withHead(edition, speaker, { items, next, counts: { total } });
}

export function readRole(library: Library, input: ReadValuesInput): RoleAnswer {
  const edition = library.edition(input.edition);
  const { catalogue } = edition;
  const role = oneOf(catalogue.roles, 'role', input);
  const speaker = new Speaker({ catalogue, layout: null, lang: input.lang, units: input.units });
  const { faces, values, caution } = role;
  return withValuesHead(edition, speaker, {
    ...entryOf(role, partDirectory(catalogue), speaker),
    faces: faces === null ? null : [...faces],
    values: [...values.values()].map((value) => valueView(value, speaker)),
    cautions: cautionsOf([caution], speaker),
  });
}

function entryOf(role: Role, directory: PartDirectory, speaker: Speaker): RoleEntry {
  const { id, name, caution } = role;
  return { id, name: speaker.text(name), caution, parts: directory.countOfRole(id) };
}

function valueView(value: RoleValue, speaker: Speaker): RoleValueView {
  const { id, isList: list, isRating: rating, term, askedAs } = value;
  return {
    parameter: id,
    ...specView(value, speaker),
    list,
    rating,
    derived: term !== null,
    askedAs,
  };
}
