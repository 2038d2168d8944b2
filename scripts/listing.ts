/**
 * Lists the demo catalogue for a person who runs a shop: what there is for which vehicle, by what
 * it is, with what it costs. Written by `npm run generate` into `db/demo/listing.md`.
 */

import type {
  CatalogueDocument,
  LayoutRecord,
  OfferRecord,
  PartRecord,
  Text,
  VehicleRecord,
} from '../src/domain/catalogue/document.js';
import { textIn } from '../src/domain/explain/language.js';

/** Markdown, in English. */
export function listingOf(document: CatalogueDocument): string {
  const lines = [
    '# What the demo catalogue has',
    '',
    'Written by `npm run generate` from `catalogue.ndjson`. All of it is invented. Prices are in',
    `${document.currency ?? ''}, each, without tax; a part without one is recorded, not offered.`,
    '',
    countsOf(document),
    '',
    ...(document.layouts ?? []).flatMap((layout) => vehiclesOf(layout, document)),
    '## Parts',
    '',
    ...partsOf(document),
    ...lotsOf(document),
    ...worksOf(document),
  ];
  return `${lines.join('\n').trimEnd()}\n`;
}

function countsOf({ parts = [], vehicles = [], layouts = [], offers = [] }: CatalogueDocument) {
  return (
    `${parts.length} parts, ${vehicles.length} vehicles of ${layouts.length} layouts, ` +
    `${offers.length} offers.`
  );
}

function vehiclesOf(layout: LayoutRecord, { vehicles = [] }: CatalogueDocument): string[] {
  const rows = vehicles
    .filter((one) => layoutOf(one, vehicles) === layout.id)
    .map(({ id, make, model, variant = '', built = [null, null] }) => {
      const [from, until] = built;
      const span = `${from ?? 'not known'} to ${until ?? 'today'}`;
      return `| \`${id}\` | ${make} ${model}${variant === '' ? '' : `, ${variant}`} | ${span} |`;
    });
  const head = ['| Vehicle | What it is | Built |', '| --- | --- | --- |'];
  return [`## ${english(layout.name ?? layout.id)}`, '', ...head, ...rows, ''];
}

function layoutOf(vehicle: VehicleRecord, vehicles: readonly VehicleRecord[]): string | undefined {
  if (vehicle.layout !== undefined || vehicle.like === undefined) return vehicle.layout;
  const other = vehicles.find(({ id }) => id === vehicle.like);
  return other === undefined ? undefined : layoutOf(other, vehicles);
}

/** By what they are; a part of several roles stands with the first. */
function partsOf(document: CatalogueDocument): string[] {
  const { roles = [], parts = [] } = document;
  return roles.flatMap(({ id, name }) => {
    const own = parts.filter((part) => part.roles[0] === id);
    return own.length === 0 ? [] : [`### ${english(name)}`, '', ...tableOf(own, document)];
  });
}

function tableOf(parts: readonly PartRecord[], { offers = [] }: CatalogueDocument): string[] {
  const rows = parts.map((part) => {
    const numbers = (part.numbers ?? []).map(({ number }) => number).join(', ');
    const maker = [part.maker ?? '', numbers].filter((word) => word !== '').join(' ');
    const own = offers.filter((offer) => offer.for === part.id).map(priceOf);
    return `| \`${part.id}\` | ${english(part.name)} | ${maker} | ${own.join('; ')} |`;
  });
  return ['| Part | Name | Maker | Price |', '| --- | --- | --- | --- |', ...rows, ''];
}

function priceOf({ price, condition, supplier, stock, pack }: OfferRecord): string {
  const words = [condition, supplier, stock === undefined ? undefined : `${stock} in stock`];
  const said = words.filter((word) => word !== undefined).join(', ');
  const of = pack === undefined || pack === '1' ? '' : ` for ${pack}`;
  return said === '' ? `${price}${of}` : `${price}${of} (${said})`;
}

function lotsOf({ lots = [], offers = [] }: CatalogueDocument): string[] {
  if (lots.length === 0) return [];
  const rows = lots.map(({ id, name, contains }) => {
    const things = contains.map((one) => {
      if ('vehicle' in one) return `${one.position} of \`${one.vehicle}\``;
      const many = one.quantity === undefined ? '' : `${one.quantity} x `;
      return `${many}\`${one.part}\``;
    });
    const own = offers.filter((offer) => offer.for === id).map(priceOf);
    return `| \`${id}\` | ${english(name ?? id)} | ${things.join(', ')} | ${own.join('; ')} |`;
  });
  const head = ['| Lot | Name | What is in it | Price |', '| --- | --- | --- | --- |'];
  return ['## Sold as one', '', ...head, ...rows, ''];
}

function worksOf({ works = [], offers = [] }: CatalogueDocument): string[] {
  if (works.length === 0) return [];
  const rows = works.map(({ id, name, labour, signOff }) => {
    const own = offers.filter((offer) => offer.for === id).map(priceOf);
    const signed = signOff ?? 'nobody need sign';
    const words = [`\`${id}\``, english(name), labour ?? '', signed, own.join('; ')];
    return `| ${words.join(' | ')} |`;
  });
  const head = [
    '| Work | Name | Labour | Signed off by | Price |',
    '| --- | --- | --- | --- | --- |',
  ];
  return ['## Work on parts', '', ...head, ...rows, ''];
}

function english(text: Text): string {
  return textIn(text, 'en', 'en').text;
}
