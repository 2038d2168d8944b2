/**
 * An answer says which languages it had to take texts of the catalogue from, since the catalogue
 * has none in the language of the answer.
 */

import { describe, expect, test } from 'vitest';
import type { CatalogueDocument } from '../../src/domain/catalogue/document.js';
import { checkFit, type FitInput } from '../../src/usecases/check-fit.js';
import { inspectVehicle } from '../../src/usecases/inspect-vehicle.js';
import { listLayouts } from '../../src/usecases/list-layouts.js';
import { mateFaces } from '../../src/usecases/mate-faces.js';
import { lintDocument } from '../../src/usecases/publish-edition.js';
import type { VehicleInput } from '../../src/usecases/question.js';
import { libraryOf } from '../memory-store.js';

/** Two flanges that the works built together although their bolts are on different circles. */
const CART = {
  catalogue: 1,
  lang: 'de',
  currency: 'EUR',
  evidence: { basis: 'measured' },
  roles: [
    { id: 'motor', name: { en: 'Motor', de: 'Motor' }, faces: ['end'] },
    { id: 'box', name: { en: 'Box', de: 'Getriebe' }, faces: ['front'] },
  ],
  parts: [
    part('motor-a', 'motor', 'Motor A', { end: flange('spigot', '60 mm') }),
    part('box-a', 'box', { en: 'box A', de: 'Getriebe A' }, { front: flange('recess', '70 mm') }),
    part('box-b', 'box', { en: 'box B' }, { front: flange('recess', '60 mm') }),
  ],
  layouts: [
    {
      id: 'cart',
      name: { en: 'cart', de: 'Karren' },
      positions: [
        { id: 'motor', name: { en: 'Motor', de: 'Motor' }, roles: ['motor'] },
        { id: 'box', name: { en: 'Box', de: 'Getriebe' }, roles: ['box'] },
      ],
      matings: [{ id: 'flange', between: ['motor.end', 'box.front'] }],
    },
  ],
  vehicles: [
    {
      id: 'cart-1',
      layout: 'cart',
      make: 'Tarn',
      model: '200',
      fitted: { motor: 'motor-a', box: 'box-a' },
    },
  ],
} as unknown as CatalogueDocument;

function flange(side: string, pcd: string) {
  const bolts = { holes: 4, pcd, bolt: 'M10x1.5', register: side === 'spigot' ? '47 h7' : '47 H7' };
  return { kind: 'propshaft-flange', side, ...bolts };
}

function part(id: string, role: string, name: unknown, interfaces: object) {
  return { id, roles: [role], name, interfaces };
}

const library = libraryOf(CART);
const common = {
  edition: null,
  facts: {},
  fitted: {},
  adapters: {},
  measured: [],
  torque: null,
  use: null,
};
const vehicle: Omit<VehicleInput, 'lang'> = {
  ...common,
  units: 'recorded',
  vehicle: 'cart-1',
  ignorePresent: false,
};

function ask(id: string, lang: string) {
  const input: FitInput = { ...vehicle, lang, part: id, position: null, with: {}, changes: 'no' };
  return checkFit(library, input);
}

describe('the languages of texts', () => {
  test('are none beside that of the answer where the catalogue has all of its texts', () => {
    expect(ask('box-a', 'de')).toMatchObject({ lang: 'de', textLang: [], name: 'Getriebe A' });
    expect(inspectVehicle(library, { ...vehicle, lang: 'de' }).textLang).toEqual([]);
    expect(
      listLayouts(library, { edition: null, lang: 'en', limit: 10, after: null }).textLang,
    ).toEqual([]);
  });

  test('are told of a part that lacks the language, and of a plain text', () => {
    expect(ask('box-b', 'de')).toMatchObject({ lang: 'de', textLang: ['en'], name: 'box B' });
    expect(ask('box-b', 'en')).toMatchObject({ lang: 'en', textLang: ['de'], name: 'box B' });
    expect(ask('box-b', 'en').positions[0]?.matings[0]?.text).toBe('“Motor A” meets “box B”.');
  });

  test('are told of a part that the answer names and says nothing else of', () => {
    const lit = libraryOf({
      ...CART,
      roles: [...(CART.roles ?? []), { id: 'lamp', name: { en: 'Lamp', de: 'Lampe' } }],
      parts: [...(CART.parts ?? []), part('lamp-a', 'lamp', { en: 'lamp A' }, {})],
      layouts: (CART.layouts ?? []).map((layout) => ({
        ...layout,
        positions: [
          ...layout.positions,
          { id: 'lamp', name: { en: 'Lamp', de: 'Lampe' }, roles: ['lamp'] },
        ],
      })),
    });
    const asked: FitInput = {
      ...vehicle,
      lang: 'de',
      part: 'box-a',
      position: null,
      with: {},
      fitted: { lamp: 'lamp-a' },
      changes: 'no',
    };
    const answer = checkFit(lit, asked);
    expect(answer.named).toMatchObject([{ part: 'lamp-a', name: 'lamp A' }]);
    expect(JSON.stringify({ ...answer, named: [] })).not.toContain('lamp A');
    expect(answer.textLang).toEqual(['en']);
  });

  test('are none for the faces that a question writes out, which have names in each', () => {
    const inline = (side: string) => ({ inline: flange(side, '60 mm') });
    const input = {
      edition: null,
      units: 'recorded' as const,
      lang: 'de',
      a: inline('spigot'),
      b: inline('recess'),
    };
    const answer = mateFaces(library, { ...input, adapters: [], use: null });
    expect(answer).toMatchObject({ lang: 'de', textLang: [] });
    expect(answer.mating.text).toBe('„Teil a der Frage“ passt an „Teil b der Frage“.');
  });
});

test('what is doubtful in a document is said in English, whatever language it is in', () => {
  const [doubt] = lintDocument(CART).warnings.filter(({ code }) => code === 'fails-as-built');
  expect(doubt?.text).toMatch(
    /^As the works built it: By the records “Motor A” and “box A” do not meet/,
  );
});
