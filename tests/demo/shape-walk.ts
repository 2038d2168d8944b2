/**
 * Walks a document along the shapes of its form, and lists what of the form it uses: fields by
 * where they are declared, so that one declared once and used in several places counts once; and
 * the ways in which a text, a value and whatever else can be told apart may be written.
 */

import { EVIDENCE, type Field, type Fields, type Shape } from '../../src/domain/catalogue/shape.js';

/** A field, one of several shapes that may stand in one place, or a way to write. */
type Item = Field | Shape | string;

type Json = Readonly<Record<string, unknown>>;

const VALUE_FORMS = ['one', 'list', 'is', 'is.evidence', 'is.tool', 'choose', 'choose.of'];
const TEXT_FORMS = ['text', 'texts by language'];

/** Everything that the shapes have, each with a place where it may stand. */
export function allOf(fields: Fields): ReadonlyMap<Item, string> {
  const found = new Map<Item, string>();
  const visit = (shape: Shape, path: string): void => {
    if (shape.is === 'value') for (const form of VALUE_FORMS) found.set(`value: ${form}`, path);
    if (shape.is === 'text') for (const form of TEXT_FORMS) found.set(form, path);
    if (shape.is === 'list' || shape.is === 'map' || shape.is === 'nullable') {
      visit(shape.of, `${path}${shape.is === 'nullable' ? '' : '/*'}`);
    }
    if (shape.is === 'either') {
      for (const one of shape.of) {
        found.set(one, path);
        visit(one, path);
      }
    }
    if (shape.is !== 'object') return;
    visitFields(shape.fields, path);
    if (shape.rest !== undefined) visit(shape.rest, `${path}/*`);
  };
  const visitFields = (own: Fields, path: string): void => {
    for (const [name, field] of Object.entries(own)) {
      if (found.has(field)) continue;
      found.set(field, `${path}/${name}`);
      visit(field.shape, `${path}/${name}`);
    }
  };
  visitFields(fields, '');
  return found;
}

/** What of the shapes a document uses. */
export function usedIn(document: Json, fields: Fields): ReadonlySet<Item> {
  const used = new Set<Item>();
  const visit = (shape: Shape, raw: unknown): void => {
    switch (shape.is) {
      case 'value':
        visitValue(raw);
        break;
      case 'text':
        used.add(TEXT_FORMS[isJson(raw) ? 1 : 0] ?? '');
        break;
      case 'nullable':
        if (raw !== null) visit(shape.of, raw);
        break;
      case 'list':
        for (const item of raw as unknown[]) visit(shape.of, item);
        break;
      case 'map':
        for (const item of Object.values(raw as Json)) visit(shape.of, item);
        break;
      case 'either': {
        const meant = shape.of.find((one) => suits(one, raw));
        if (meant === undefined) throw new Error(`none of ${shape.says}`);
        used.add(meant);
        visit(meant, raw);
        break;
      }
      case 'object':
        visitFields(shape.fields, raw as Json, shape.rest);
        break;
      default:
        used.add(shape);
        break;
    }
  };
  const visitFields = (own: Fields, raw: Json, rest?: Shape): void => {
    for (const [name, item] of Object.entries(raw)) {
      const field = Object.hasOwn(own, name) ? own[name] : undefined;
      if (field !== undefined) {
        used.add(field);
        visit(field.shape, item);
      } else if (rest !== undefined) visit(rest, item);
    }
  };
  const visitValue = (raw: unknown): void => {
    if (!isJson(raw)) used.add(`value: ${Array.isArray(raw) ? 'list' : 'one'}`);
    else {
      for (const key of Object.keys(raw)) {
        if (key === 'is') used.add('value: is');
        else if (key === 'choose') used.add(`value: choose${isJson(raw.choose) ? '.of' : ''}`);
        else used.add(`value: is.${key}`);
      }
      if (raw.evidence !== undefined) visit(EVIDENCE, raw.evidence);
    }
  };
  visitFields(fields, document);
  return used;
}

/** Whether a form could be the one that is meant, by what the value is. */
function suits(shape: Shape, raw: unknown): boolean {
  switch (shape.is) {
    case 'object': {
      if (!isJson(raw)) return false;
      const isTold = shape.tag === undefined || Object.hasOwn(raw, shape.tag);
      const needed = Object.entries(shape.fields).filter(([, { required }]) => required);
      return isTold && needed.every(([name]) => Object.hasOwn(raw, name));
    }
    case 'nullable':
      return raw === null || suits(shape.of, raw);
    case 'list':
      return Array.isArray(raw);
    default:
      return typeof raw === 'string';
  }
}

function isJson(raw: unknown): raw is Json {
  return typeof raw === 'object' && raw !== null && !Array.isArray(raw);
}
