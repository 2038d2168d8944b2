/**
 * Which fields of which objects a view shows. What is in no list is in no view: a new field is
 * hidden until somebody decides.
 */

import { VIEWS, type View } from '../../domain/access.js';
import { SHOWN_ANSWERS } from './answers.js';
import { SHOWN_OF_PROGRAM } from './program.js';
import { SHOWN_RECORDS } from './records.js';
import type { ShownObjects } from './shown.js';

export const SHOWN_OBJECTS: ShownObjects = {
  ...SHOWN_ANSWERS,
  ...SHOWN_RECORDS,
  ...SHOWN_OF_PROGRAM,
};

/** The fields that come with a view and are in no narrower one. */
export function fieldsAddedBy(view: View, object: string): readonly string[] {
  return SHOWN_OBJECTS[object]?.[view]?.split(' ') ?? [];
}

/** The fields of an object that only some views show. */
export function hiddenFields(object: string): ReadonlySet<string> {
  return new Set(HIDING.flatMap((view) => fieldsAddedBy(view, object)));
}

const HIDING = VIEWS.filter((view) => view !== 'public');

/** Every field of an object that a view shows. */
export function fieldsIn(view: View, object: string): ReadonlySet<string> {
  const shown = VIEWS.slice(0, VIEWS.indexOf(view) + 1);
  return new Set(shown.flatMap((one) => fieldsAddedBy(one, object)));
}
