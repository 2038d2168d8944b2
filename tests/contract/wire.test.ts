/**
 * The answers of the use-cases and the shapes on the wire: neither has what the other has not.
 * Most of it is held when the tests are compiled.
 */

import { describe, expectTypeOf, test } from 'vitest';
import type { z } from 'zod';
import type { editionAnswerSchema, editionsAnswerSchema } from '../../src/contract/editions.js';
import type { fitAnswerSchema } from '../../src/contract/fit-answer.js';
import type { inspectAnswerSchema } from '../../src/contract/inspect.js';
import type { kindAnswerSchema, kindsAnswerSchema } from '../../src/contract/kinds.js';
import type { kitAnswerSchema } from '../../src/contract/kit-answer.js';
import type { layoutAnswerSchema, layoutsAnswerSchema } from '../../src/contract/layouts.js';
import type { mateAnswerSchema } from '../../src/contract/mate.js';
import type {
  foundPartSchema,
  partAnswerSchema,
  partEntrySchema,
} from '../../src/contract/parts.js';
import type { roleAnswerSchema, rolesAnswerSchema } from '../../src/contract/roles.js';
import type { vehicleAnswerSchema } from '../../src/contract/vehicle.js';
import type { vehiclesAnswerSchema } from '../../src/contract/vehicles.js';
import type { Beyond, Wire } from '../../src/contract/wire.js';
import type { FitAnswer, InspectAnswer, MateAnswer } from '../../src/usecases/answer.js';
import type { LayoutAnswer, LayoutEntry } from '../../src/usecases/catalogue-view.js';
import type { KitAnswer } from '../../src/usecases/kit-answer.js';
import type { EditionAnswer } from '../../src/usecases/list-editions.js';
import type { ListAnswer } from '../../src/usecases/listing.js';
import type { FoundPartEntry, PartAnswer, PartEntry } from '../../src/usecases/part-view.js';
import type { EditionHead } from '../../src/usecases/ports.js';
import type { VehicleAnswer, VehiclesAnswer } from '../../src/usecases/vehicle-view.js';
import type {
  KindAnswer,
  KindEntry,
  RoleAnswer,
  RoleEntry,
} from '../../src/usecases/vocabulary-view.js';

type Editions = z.infer<typeof editionsAnswerSchema>['items'][number];

describe('the shapes on the wire', () => {
  test('have everything that the use-cases give', () => {
    expectTypeOf<Beyond<FitAnswer, z.infer<typeof fitAnswerSchema>>>().toBeNever();
    // What names a question has in one of several forms, `answers.test.ts` holds.
    type Kits = Omit<z.infer<typeof kitAnswerSchema>, 'question'>;
    expectTypeOf<Beyond<Omit<KitAnswer, 'question'>, Kits>>().toBeNever();
    expectTypeOf<Beyond<InspectAnswer, z.infer<typeof inspectAnswerSchema>>>().toBeNever();
    expectTypeOf<Beyond<MateAnswer, z.infer<typeof mateAnswerSchema>>>().toBeNever();
    expectTypeOf<Beyond<EditionHead, Editions>>().toBeNever();
    expectTypeOf<Beyond<EditionAnswer, z.infer<typeof editionAnswerSchema>>>().toBeNever();
    expectTypeOf<Beyond<PartAnswer, z.infer<typeof partAnswerSchema>>>().toBeNever();
    expectTypeOf<Beyond<VehicleAnswer, z.infer<typeof vehicleAnswerSchema>>>().toBeNever();
    expectTypeOf<Beyond<KindAnswer, z.infer<typeof kindAnswerSchema>>>().toBeNever();
    expectTypeOf<Beyond<RoleAnswer, z.infer<typeof roleAnswerSchema>>>().toBeNever();
    expectTypeOf<Beyond<LayoutAnswer, z.infer<typeof layoutAnswerSchema>>>().toBeNever();
  });

  test('and lists have everything of their entries', () => {
    type List<Entry> = Omit<ListAnswer<Entry>, 'next'>;
    expectTypeOf<Beyond<List<KindEntry>, z.infer<typeof kindsAnswerSchema>>>().toBeNever();
    expectTypeOf<Beyond<List<RoleEntry>, z.infer<typeof rolesAnswerSchema>>>().toBeNever();
    expectTypeOf<Beyond<PartEntry, z.infer<typeof partEntrySchema>>>().toBeNever();
    expectTypeOf<Beyond<FoundPartEntry, z.infer<typeof foundPartSchema>>>().toBeNever();
    expectTypeOf<Beyond<List<LayoutEntry>, z.infer<typeof layoutsAnswerSchema>>>().toBeNever();
    type Vehicles = Omit<VehiclesAnswer, 'next'>;
    expectTypeOf<Beyond<Vehicles, z.infer<typeof vehiclesAnswerSchema>>>().toBeNever();
  });

  test('and a name that they lack is found, however deep', () => {
    type Given = { a: readonly { b: { c: string; d: number } | null }[] };
    expectTypeOf<Beyond<Given, { a: { b: { c: string } | null }[] }>>().toEqualTypeOf<'d'>();
    expectTypeOf<Beyond<Given, { a: { b: { c: string; d: number } | null }[] }>>().toBeNever();
    expectTypeOf<Beyond<Given, { b: 1 }>>().toEqualTypeOf<'a'>();
  });

  test('a use-case that gives something else does not compile', () => {
    type Same = Wire<{ readonly a: readonly string[] }, { a: string[] }>;
    expectTypeOf<Same>().toEqualTypeOf<{ a: string[] }>();
    // @ts-expect-error A number is no text.
    type Other = Wire<{ readonly a: number }, { a: string }>;
    // @ts-expect-error What the shape wants is not given.
    type Less = Wire<{ readonly a: string }, { a: string; b: string }>;
    expectTypeOf<[Other, Less]>().not.toBeAny();
  });
});
