/**
 * A catalogue of the size of a whole trade: parts of twelve roles in a row, each of which meets the
 * next, in families that differ in pattern and size; vehicles of these families, which have some of
 * the parts; and a load that each part carries or does not.
 */

import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { Random } from './random.js';

export interface Extent {
  readonly parts: number;
  readonly vehicles: number;
  readonly families: number;
}

const PLACES = 12;
/** Articles of a family that vehicles of it may have at a place. */
const VARIANTS = 4;

export function largeCatalogue({ parts, vehicles, families }: Extent): CatalogueDocument {
  const random = new Random(1);
  const places = Array.from({ length: PLACES }, (_, index) => `place-${index}`);
  const perPlace = Math.ceil(parts / PLACES);
  return {
    catalogue: 1,
    lang: 'en',
    currency: 'EUR',
    evidence: { basis: 'maker' },
    kinds: [
      {
        id: 'joint',
        name: 'joint',
        sides: ['spigot', 'bore'],
        parameters: {
          pattern: { type: 'code', name: 'pattern' },
          size: { type: 'measured', unit: 'mm', name: 'size' },
        },
        checks: [
          { equal: 'pattern' },
          { clearance: ['bore.size', 'spigot.size'], min: '0 mm', max: '0.4 mm' },
        ],
      },
    ],
    roles: places.map((id) => ({
      id: `role-${id}`,
      name: id,
      values: { torque: { type: 'measured', unit: 'N.m', name: 'torque', rating: true } },
    })),
    layouts: [
      {
        id: 'row',
        positions: places.map((id) => ({ id, name: id, roles: [`role-${id}`] })),
        matings: places.slice(1).map((id, index) => ({
          id: `joint-${index}`,
          between: [`${places[index]}.rear`, `${id}.front`],
        })),
        checks: places.slice(1).map((id) => ({
          id: `load-${id}`,
          carries: `${id}.torque`,
          demand: 'place-0.torque',
        })),
      },
    ],
    parts: places.flatMap((place, at) =>
      Array.from({ length: perPlace }, (_, number) => {
        const family = number % families;
        const wide = Math.floor(number / families) % VARIANTS;
        return {
          id: `${place}-${number}`,
          name: `${place} ${number}`,
          roles: [`role-${place}`],
          interfaces: {
            ...(at === 0 ? {} : { front: face('bore', family, at, 30.2 + wide / 10) }),
            ...(at === PLACES - 1 ? {} : { rear: face('spigot', family, at + 1, 30) }),
          },
          values: { torque: `${200 + 20 * random.below(8)} ±5 N.m` },
        };
      }),
    ),
    vehicles: Array.from({ length: vehicles }, (_, number) => {
      const family = random.below(families);
      const fitted = places.map((place): [string, string] => {
        return [place, `${place}-${family + families * random.below(VARIANTS)}`];
      });
      return {
        id: `vehicle-${number}`,
        make: `Make ${number % 12}`,
        model: `Model ${Math.floor(number / 12) % 40}`,
        built: [`${1990 + (number % 30)}-01`, `${1992 + (number % 30)}-12`],
        layout: 'row',
        fitted: Object.fromEntries(fitted),
      };
    }),
  };
}

function face(side: string, family: number, joint: number, size: number) {
  return {
    kind: 'joint',
    side,
    pattern: `p-${family}-${joint}`,
    size: `${size.toFixed(1)} ±0.05 mm`,
  };
}
