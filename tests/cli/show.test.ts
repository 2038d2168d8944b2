/**
 * `faying show`: the lists and the single things of the catalogue, for people and for programs.
 * What programs get is what the service sends, to the byte.
 */

import { beforeAll, describe, expect, test } from 'vitest';
import { rigOf } from '../http/fixture.js';
import { GARAGE } from '../http/garage.js';
import { demoDocument } from '../memory-store.js';
import { freshDatabase, type Run, run } from './terminal.js';

const documents = { demo: demoDocument(), garage: GARAGE };
type Name = keyof typeof documents;
const databases: Record<Name, string> = { demo: freshDatabase(), garage: freshDatabase() };
const rigs = {
  demo: rigOf({ documents: [documents.demo] }),
  garage: rigOf({ documents: [documents.garage] }),
};

beforeAll(async () => {
  for (const name of ['demo', 'garage'] as const) {
    const input = JSON.stringify(documents[name]);
    const { code, err } = await run(['publish', '-'], { database: databases[name], input });
    if (code !== 0) throw new Error(err);
  }
});

function show(line: string, of: Name = 'demo'): Promise<Run> {
  const words = line.split(' ').map((word) => word.replaceAll('_', ' '));
  return run(['show', ...words], { database: databases[of] });
}

async function page(line: string, of: Name = 'demo'): Promise<string> {
  const { code, out, err } = await show(line, of);
  expect([line, code, err]).toEqual([line, 0, '']);
  return out;
}

describe('for programs', () => {
  test.each([
    ['part gearbox-6-late', '/v1/parts/gearbox-6-late'],
    [
      'part prop-made-one --units imperial --lang de',
      '/v1/parts/prop-made-one?units=imperial&lang=de',
    ],
    ['vehicle hulvane --edition 1', '/v1/vehicles/hulvane?edition=1'],
    ['vehicle gallivet-4 --lang de', '/v1/vehicles/gallivet-4?lang=de'],
    ['kind propshaft-flange', '/v1/kinds/propshaft-flange'],
    ['role engine --lang de', '/v1/roles/engine?lang=de'],
    ['layout long-awd', '/v1/layouts/long-awd'],
    ['layout --lang de', '/v1/layouts?lang=de'],
    ['kind', '/v1/kinds'],
    ['vehicle', '/v1/vehicles'],
    // Where more comes, the service goes on from there.
    ['role --limit 2', '/v1/roles?limit=2'],
    ['kind --limit 3 --edition 1', '/v1/kinds?limit=3&edition=1'],
    ['part --role gearbox --limit 2', '/v1/parts?role=gearbox&limit=2'],
    [
      'part --kind wheel-mount --superseded false --limit 4',
      '/v1/parts?kind=wheel-mount&superseded=false&limit=4',
    ],
    ['part --number cbl_2g6', '/v1/parts?number=cbl%202g6'],
    ['part --maker fennuld_spares --text drum', '/v1/parts?maker=fennuld%20spares&text=drum'],
    [
      'vehicle --make Corrablyn --model Lirren --year 2005',
      '/v1/vehicles?make=Corrablyn&model=Lirren&year=2005',
    ],
    ['vehicle --limit 1 --layout long-awd', '/v1/vehicles?limit=1&layout=long-awd'],
  ])('%s is %s', async (line, path) => {
    const { text } = await rigs.demo.client.get(path).expect(200);
    expect(await page(`${line} --json`)).toBe(`${text}\n`);
  });

  test.each([
    ['vehicle --replaced --limit 2', 'replaced=true&limit=2'],
    ['vehicle --fact axle-tag=a --variant early', 'fact.axle-tag=a&variant=early'],
    ['vehicle --built 2005-08 --text tarn', 'built=2005-08&text=tarn'],
  ])('and of vehicles that differ: %s', async (line, search) => {
    const { text } = await rigs.garage.client.get(`/v1/vehicles?${search}`).expect(200);
    expect(await page(`${line} --json`, 'garage')).toBe(`${text}\n`);
  });

  test('a list is whole where nothing limits it, which no page of the service is', async () => {
    const { items, next, counts } = JSON.parse(await page('part --json'));
    expect([items.length, next]).toEqual([counts.total, null]);
    expect(items.length).toBeGreaterThan(200);
  });
});

describe('lists, for people', () => {
  test('have id and name on one line each, then where they are from', async () => {
    const lines = (await page('layout')).split('\n');
    expect(lines.slice(0, 3)).toEqual([
      'frame-4x4   Part-time four-wheel drive on a frame, live axles',
      'long-awd    Engine lengthways, permanent four-wheel drive',
      'rear-irs    Engine lengthways, rear-wheel drive, independent rear axle',
    ]);
    expect(lines.slice(4)).toEqual(['', expect.stringMatching(/^Edition 1, engine /), '']);
    expect(await page('layout --lang de')).toContain(
      'long-awd    Motor längs, dauernder Allradantrieb',
    );
  });

  test('say how many there are where not all are listed, and where there is none', async () => {
    expect(await page('part --role gearbox --limit 3')).toMatch(/\n3 of 5\.\n/);
    expect(await page('part --role gearbox')).not.toContain(' of 5');
    expect(await page('part --text zzz')).toMatch(/^None\.\n/);
    expect(await page('part --text zzz --lang de')).toMatch(/^Keine\.\n/);
  });

  test('of vehicles end with what tells them apart, as an option', async () => {
    expect(await page('vehicle')).toContain(
      'What tells them apart:\n  - Make (--make): Brundivale, Corrablyn, Quenholt.\n',
    );
    const { out } = await show('vehicle --model 200 --make Tärn --lang de', 'garage');
    expect(out).toContain(
      'Was sie unterscheidet:\n  - Schild an der Achse (--fact axle-tag=…): Buchstabe A (a), ' +
        'Buchstabe B (b), C (c). Das Schild\n    lesen.\n',
    );
    expect(await page('vehicle --model 300', 'garage')).not.toContain('tells them apart');
  });
});

describe('one thing, for people', () => {
  /** The lines of a page as one text, so that it matters not where they break. */
  const flat = async (line: string, of: Name = 'demo') =>
    (await page(line, of)).replaceAll(/\s+/g, ' ');

  test('a part has faces with values, what they rest on, and what nobody recorded', async () => {
    const out = await flat('part gearbox-6-late');
    for (const text of [
      '“Lirren II six-speed gearbox” (gearbox-6-late). Role: gearbox. Maker: Corrablyn.',
      'Built: 09/2005 to 12/2010. Recorded: by the maker, ',
      '- rear: “propeller-shaft flange” (propshaft-flange), side spigot - bolt thread: M10x1.25',
      '- Not recorded: contact-diameter, latch.',
      '- housing: bell-housing, measured by own workshop on 2026-02-11, ',
      '- control: “electrical connector” (connector), side socket, may be left without a partner',
      'Values: - ',
      '- rated input torque: 360 N.m',
      'Cautions: - The maker’s figures come first',
    ]) {
      expect(out).toContain(text);
    }
    expect(await flat('part gearbox-6-late --units imperial')).not.toContain('360 N.m');
  });

  test('a vehicle has each place, what a fact would tell, and what to find out', async () => {
    const out = await flat('vehicle gallivet-4');
    for (const text of [
      '(gallivet-4). Layout: “Engine across, ',
      '- Rear half-shaft, left: “Gallivet rear half-shaft, left” (rear-shaft-gallivet-left)',
      // Alike on both sides, it is said once.
      '- Front hub: “Gallivet front hub 5 x 106” (hub-front-gallivet) - ',
      '- Rear caliper: not recorded; “Brake pack” would tell (',
      'To find out: - Brake pack (--fact brake-pack=…): small rear discs, solid, 258 mm (small), ',
      'A question may say otherwise: - Engine, greatest torque: 175 N.m (--torque)',
    ]) {
      expect(out).toContain(text);
    }
    const gaps = await flat('vehicle hulvane');
    expect(gaps).toContain('- Clutch: not recorded');
    expect(gaps).toContain('- Centre control unit (centre-control): nothing');
  });

  test('a kind, a role and a layout have what they ask for and compare', async () => {
    const kind = await flat('kind propshaft-flange');
    expect(kind).toContain('It comes with the program. Standard: ');
    expect(kind).toContain(
      '- holes: number of bolt holes, count, by count, usually 3 to 8 - pcd: ',
    );
    expect(kind).toContain('Checks: - equal-pattern: ');
    expect(kind).toContain('Not looked at: - flange thickness and bolt length');
    expect(await flat('role engine')).toContain(
      'Faces: housing, crank. Values: - speed: greatest speed, measured, rpm, usually 3000 to ' +
        '9000 rpm - torque: greatest torque, measured, N.m, usually 50 to ' +
        '1000 N.m, a question may say otherwise (torque)',
    );
    const layout = await flat('layout transverse');
    expect(layout).toContain(
      '- Front half-shaft: cross-front-shaft; 2 pieces; left and right; behind front-hub-nut; ' +
        '0.9 h to change; 0.7 h to get out of the way',
    );
    expect(layout).toMatch(
      /What meets: - [\w-]+: [\w.-]+ and [\w.-]+, (no adapter|\d adapters? at)/,
    );
    expect(layout).toMatch(/Computed values: - /);
  });

  test.each([
    'part gearbox-6-late',
    'vehicle gallivet-4',
    'vehicle hulvane',
    'kind connector',
    'role engine',
    'layout transverse',
  ])('%s has no English label in German', async (line) => {
    const out = await page(`${line} --lang de`);
    const labels = out.split('\n').map((one) => /^([A-Z][A-Za-z ]+):/.exec(one)?.[1] ?? '');
    const english =
      /^(Role|Maker|Numbers|Built|Recorded|Layout|Faces|Values|Checks|Cautions|Parts)$/;
    expect(labels.filter((label) => english.test(label))).toEqual([]);
    expect(out).toContain('Hinweise:\n'.slice(0, line.startsWith('layout') ? 0 : undefined));
    expect(out).toMatch(/Ausgabe 1, Programm /);
  });
});

describe('what is not there', () => {
  test.each([
    [
      'part gearbox-6-lat',
      'unknown-part',
      `There is no part "gearbox-6-lat". Did you mean 'gearbox-6-late'?`,
    ],
    ['vehicle hulvan', 'unknown-vehicle', `There is no vehicle "hulvan". Did you mean 'hulvane'?`],
    ['kind flange', 'unknown-kind', 'There is no kind "flange".'],
    ['role gear-box', 'unknown-role', `There is no role "gear-box". Did you mean 'gearbox'?`],
    ['layout long', 'unknown-layout', 'There is no layout "long".'],
    [
      'part --role gear-box',
      'unknown-role',
      `There is no role "gear-box". Did you mean 'gearbox'?`,
    ],
    ['vehicle --layout long', 'unknown-layout', 'There is no layout "long".'],
    ['part gearbox-6-late --edition 7', 'unknown-edition', 'There is no edition 7.'],
  ])('%s', async (line, code, text) => {
    const { code: exit, out, err } = await show(line);
    expect([exit, out, err]).toEqual([2, '', `faying: ${text}\n`]);
    const told = JSON.parse((await show(`${line} --json`)).err);
    expect(told).toMatchObject({ code, detail: text });
  });

  test('is told of a vehicle that others took the place of, as the service tells it', async () => {
    const { code, err } = await show('vehicle t2-rough', 'garage');
    expect([code, err]).toEqual([2, expect.stringContaining('t2-early, t2-late')]);
  });

  test('is said in the words of the service', async () => {
    const { text } = await rigs.demo.client.get('/v1/parts/gearbox-6-lat?lang=de').expect(404);
    const { detail, errors } = JSON.parse(text);
    const told = JSON.parse((await show('part gearbox-6-lat --lang de --json')).err);
    expect([told.detail, told.errors]).toEqual([detail, errors]);
  });
});
