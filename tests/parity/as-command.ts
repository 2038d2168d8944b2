/**
 * A question of REST as the words of a command; null where no command says it.
 */

import type { Operation } from '../../src/contract/operation.js';

type Question = Readonly<Record<string, unknown>>;

/** Options that have another name than the field, or stand for each of its entries. */
const OPTIONS: Readonly<Record<string, string>> = {
  facts: 'fact',
  adapters: 'adapter',
  ignorePresent: 'ignore-present',
  changes: 'changes',
  numbers: 'number',
  nameExcluded: 'name-excluded',
};

/** What is said by arguments, and what the command says by itself. */
const ARGUMENTS = ['vehicle', 'part', 'want', 'a', 'b'];

export function wordsFor({ operationId, path }: Operation, id: string | null, question: Question) {
  const words = commandFor(operationId, path, id, question);
  // The command lists all that there is, where the service gives a page.
  const isSearch = path.endsWith('/fits') && question.changes === 'yes';
  const asked = isSearch ? { limit: 20, ...question } : question;
  const { measured, ...others } = asked;
  const isPiece = operationId === 'identifyPart';
  const options = words === null ? null : optionsOf(isPiece ? others : asked);
  if (words === null || options === null) return null;
  return [...words, ...options, ...(isPiece ? readingsOf(measured) : []), '--json'];
}

function commandFor(
  operationId: string,
  path: string,
  id: string | null,
  { vehicle, part, want, a, b }: Question,
): string[] | null {
  switch (operationId) {
    case 'checkFit':
    case 'askFit':
      return ['fit', ...[vehicle ?? []].flat().map(String), String(part)];
    case 'findKits':
    case 'askKits': {
      const wants = (want ?? []) as readonly { readonly part?: unknown }[];
      const isPlain = wants.every(
        (one) => typeof one.part === 'string' && Object.keys(one).length === 1,
      );
      const names = [vehicle ?? [], wants.map((one) => one.part)].flat().map(String);
      return isPlain ? ['kits', ...names] : null;
    }
    case 'identifyPart':
      return ['identify-part', ...(typeof vehicle === 'string' ? ['--vehicle', vehicle] : [])];
    case 'identifyVehicle':
      return ['identify'];
    case 'inspectVehicle':
      return ['inspect', String(vehicle)];
    case 'mateFaces': {
      const ends = [a, b] as { readonly part: string; readonly interface?: string }[];
      const faces = ends.flatMap((end, index) =>
        end.interface === undefined ? [] : [`--${'ab'[index] ?? ''}-face`, end.interface],
      );
      return ['mate', ...ends.map((end) => end.part), ...faces];
    }
    case 'listFittingParts':
      return part === undefined ? ['fits', 'vehicle', String(id)] : null;
    case 'listFittedVehicles':
      return vehicle === undefined ? ['fits', 'part', String(id)] : null;
    case 'listCodes':
      return ['codes'];
    case 'listEditions':
      return ['editions'];
    default: {
      const [, word] = /^\/v1\/(part|vehicle|kind|role|layout)s(\/|$)/.exec(path) ?? [];
      if (word === undefined || part !== undefined) return null;
      return ['show', word, ...(id === null ? [] : [id])];
    }
  }
}

interface Reading {
  readonly on: Readonly<Record<'interface' | 'kind' | 'side' | 'parameter', string | undefined>>;
  readonly value: string;
  readonly tool?: string;
}

/** What was read on a piece: where, what, and with which tool. */
function readingsOf(measured: unknown): string[] {
  return ((measured ?? []) as readonly Reading[]).flatMap(({ on, value, tool }) => {
    const face = on.kind === undefined ? on.interface : `kind:${on.kind}`;
    const place = [face, on.side, on.parameter].filter((one) => one !== undefined).join('.');
    return [
      '--measured',
      `${place}=${value}`,
      ...(tool === undefined ? [] : ['--tool', `${place}=${tool}`]),
    ];
  });
}

/** Options that are said once for each of their values. */
const REPEATED = ['keep', 'numbers'];

function optionsOf(question: Question): string[] | null {
  const options: string[] = [];
  for (const [field, value] of Object.entries(question)) {
    if (ARGUMENTS.includes(field)) continue;
    const name = `--${OPTIONS[field] ?? field}`;
    if (value === true) options.push(name);
    else if (Array.isArray(value)) {
      if (value.some((one) => typeof one !== 'string')) return null;
      options.push(
        ...(REPEATED.includes(field) ? value.flatMap((one) => [name, one]) : [name, value.join()]),
      );
    } else if (typeof value === 'object' && value !== null) {
      for (const [key, one] of Object.entries(value)) {
        if (typeof one !== 'string') return null;
        options.push(name, `${key}=${one}`);
      }
    } else options.push(name, String(value));
  }
  return options;
}
