/**
 * A workshop's system, from an enquiry to an order: which vehicle is it, does the part fit, which
 * ways are there, and what has to be ordered for the best of them.
 *
 *     node workshop.js http://127.0.0.1:8080 gearbox-6-late make=Corrablyn model=Lirren year=2004
 *
 * All questions go to one edition, so that what is quoted goes together. Exit code 1 where the
 * customer has to be asked first, or where there is no way that is proven.
 */

import { FayingClient, FayingProblem, orderLines, type Schemas } from 'faying/client';

type Told = Pick<Schemas['IdentifyQuestion'], 'make' | 'model' | 'variant' | 'year' | 'built'>;

async function quote(baseUrl: string, part: string, told: Told): Promise<number> {
  const faying = await new FayingClient({ baseUrl }).pinned();
  console.log(`Edition ${faying.edition} of the catalogue.`);

  const { candidates, ask } = await faying.post('/v1/vehicles/identify', { body: told });
  const [vehicle, ...others] = candidates;
  if (vehicle === undefined || others.length > 0) {
    console.log(`${candidates.length} vehicles may be meant.`);
    for (const { name, values } of ask) {
      console.log(`Ask: ${name}? ${values.map(({ label }) => label).join(', ')}`);
    }
    return 1;
  }
  console.log(`Vehicle: ${vehicle.label}`);

  const query = { vehicle: vehicle.id, part };
  const fit = await faying.get('/v1/fit', { params: { query } });
  console.log(`${fit.name}: ${fit.summary.text}`);

  const body = { vehicle: vehicle.id, want: [{ part }], routes: 2 };
  const kits = await faying.post('/v1/kits', { body });
  // Of a vehicle that is known in part there would be another answer.
  if (!('vehicle' in kits)) throw new Error('one vehicle was asked about');
  const { routes, currency } = kits;
  for (const [at, { summary, changes }] of routes.entries()) {
    // What a way costs is told from the view `trade` on.
    console.log(`Way ${at + 1}. ${summary?.text ?? `${changes.length} places change.`}`);
  }
  const best = routes.find(({ grade }) => grade === 'proven');
  if (best === undefined) return 1;

  console.log('To order:');
  for (const { packs, sku, name, price } of orderLines(best.lines)) {
    const cost = price === null ? 'price to be asked for' : `${price} ${currency ?? ''}`;
    console.log(`  ${packs ?? '?'} x ${sku ?? 'no code'}: ${name}, ${cost}`);
  }
  // All of them: those marked `trade` are meant for whoever does the work.
  for (const { text } of best.cautions) console.log(`! ${text}`);
  return 0;
}

function toldBy(words: readonly string[]): Told {
  const pairs = words.map((word): [string, string] => {
    const [field = '', value = ''] = word.split('=');
    return [field, value];
  });
  const { year, ...texts } = Object.fromEntries<string>(pairs);
  return year === undefined ? texts : { ...texts, year: Number(year) };
}

const [baseUrl, part, ...words] = process.argv.slice(2);
if (baseUrl === undefined || part === undefined) {
  console.error('workshop.js <address of the service> <part> [make=… model=… year=…]');
  process.exitCode = 2;
} else {
  try {
    process.exitCode = await quote(baseUrl, part, toldBy(words));
  } catch (error) {
    if (!(error instanceof FayingProblem)) throw error;
    // What the service says is meant for people; `code` and `errors` are for programs.
    console.error(`${error.code}: ${error.message}`);
    process.exitCode = 2;
  }
}
