/**
 * The schema of GraphQL, made of the contract: one root for the catalogue, `edition`, so that one
 * query never mixes two of them; every question about it is a field of that.
 */

import {
  type GraphQLFieldConfig,
  type GraphQLFieldConfigArgumentMap,
  type GraphQLFieldConfigMap,
  GraphQLInputObjectType,
  GraphQLInt,
  GraphQLList,
  GraphQLNonNull,
  GraphQLObjectType,
  GraphQLSchema,
  GraphQLString,
  isNonNullType,
} from 'graphql';
import { CALCULATE_OPERATIONS, listCalculationsOperation } from '../../contract/calculate.js';
import { listEditionsOperation, readEditionOperation } from '../../contract/editions.js';
import { usualFits } from '../../contract/fits.js';
import type { Operation } from '../../contract/operation.js';
import type { View } from '../../contract/view.js';
import { Schemas } from '../json-schema.js';
import { type Answer, ask, type Context, spend } from './asking.js';
import {
  CONNECTION_ARGUMENTS,
  connectionOf,
  connectionType,
  limitFor,
  placeOf,
} from './connection.js';
import { Inputs, jsonOf } from './inputs.js';
import { Outputs } from './outputs.js';
import { EDITION_QUESTIONS, PROGRAM_QUESTIONS, type Question } from './questions.js';
import { capitalised } from './scalars.js';
import { withChanges } from './selection.js';
import { VIEW_TYPE } from './view-type.js';

type Field = GraphQLFieldConfig<Asked, Context, Given>;

/** The arguments of a field. */
type Given = Readonly<Record<string, unknown>>;

interface OfPage extends Given {
  readonly first?: number | null;
  readonly after?: string | null;
}

interface OfCalculation extends Given {
  readonly name: string;
  readonly given: readonly { readonly key: string; readonly value: string }[];
  readonly lang?: string | null;
}

/** Nothing is asked of an edition at the root. */
type Asked = Edition | undefined;

/** The edition that the fields of a query ask. */
interface Edition extends Answer {
  readonly number: number;
  /** What the query says of language and view; as the request says it where it is left out. */
  readonly asked: { readonly lang?: string; readonly view?: View };
}

/** What stands in the place of these in a connection. */
const OF_PAGES = ['limit', 'cursor'];

/** What the edition of a query says for all of its fields. */
const OF_EDITION = ['edition', 'lang', 'view'];

class SchemaOf {
  readonly #schemas = new Schemas();
  readonly #outputs = new Outputs(this.#schemas);
  readonly #inputs = new Inputs(this.#schemas);

  schema(): GraphQLSchema {
    const edition = new GraphQLObjectType<Asked, Context>({
      name: 'Edition',
      description: 'One immutable, numbered state of the catalogue, and every question about it.',
      fields: () => this.#editionFields(),
    });
    const query = new GraphQLObjectType<Asked, Context>({
      name: 'Query',
      fields: {
        edition: {
          type: edition,
          description: 'The newest where no number is given.',
          args: {
            number: { type: GraphQLInt },
            lang: { type: GraphQLString },
            view: { type: VIEW_TYPE },
          },
          resolve: (_, given: EditionGiven, context) => editionOf(given, context),
        },
        editions: this.#listField(
          { field: 'editions', operation: listEditionsOperation, cost: 1 },
          'Edition',
        ),
        ...this.#fieldsOf(PROGRAM_QUESTIONS),
        calculations: this.#plainField({
          field: 'calculations',
          operation: listCalculationsOperation,
          cost: 1,
        }),
        calculate: this.#calculateField(),
      },
    });
    const types = this.#outputs.named;
    return new GraphQLSchema({ query, types });
  }

  #editionFields(): GraphQLFieldConfigMap<Asked, Context> {
    const answer = this.#schemas.answerOf(readEditionOperation);
    const own = this.#outputs.fieldsOf(answer, 'Edition', ['edition']);
    return {
      ...(own as GraphQLFieldConfigMap<Asked, Context>),
      ...this.#fieldsOf(EDITION_QUESTIONS),
    };
  }

  #fieldsOf(questions: readonly Question[]): GraphQLFieldConfigMap<Asked, Context> {
    return Object.fromEntries(
      questions.map((question) => {
        const { field, operation } = question;
        const isList = 'limit' in (this.#schemas.questionOf(operation).properties ?? {});
        const made = isList
          ? this.#listField(question, capitalised(field))
          : this.#plainField(question);
        return [field, made];
      }),
    );
  }

  #plainField(question: Question): Field {
    const { operation, form } = question;
    const without = [...OF_EDITION, ...(form?.without ?? [])];
    const { args, fields } = this.#argumentsOf(operation, without, form?.required ?? []);
    const answer =
      form === undefined ? this.#schemas.answerOf(operation) : this.#schemas.component(form.answer);
    const type = this.#outputs.typeOf(answer, `${capitalised(question.field)}Answer`);
    return {
      type,
      description: operation.summary,
      args,
      resolve: async (edition, given, context, info) => {
        const json = jsonOf(fields, given);
        const { id, ...asked } = withChanges(question, json, info);
        spend(costOf(question, asked), context);
        const segment = operation.segment === null ? null : String(id);
        return ask(
          { operation, segment, question: { ...asked, ...pinOf(edition, operation) } },
          context,
        );
      },
    };
  }

  #listField(question: Question, name: string): Field {
    const { operation } = question;
    const { args, fields } = this.#argumentsOf(operation, [...OF_EDITION, ...OF_PAGES]);
    const answer = this.#schemas.answerOf(operation);
    const items = this.#schemas.read(answer).schema.properties?.items?.items ?? {};
    const without = ['items', 'next'];
    const type = connectionType(
      name,
      this.#outputs.typeOf(items, `${name}Entry`),
      this.#outputs.fieldsOf(answer, `${name}Connection`, without),
    );
    return {
      type,
      description: operation.summary,
      args: { ...CONNECTION_ARGUMENTS, ...args },
      resolve: async (edition, { first, after, ...given }: OfPage, context) => {
        const json = jsonOf(fields, given);
        const number = edition?.number ?? null;
        const place = placeOf(after, number);
        const limit = limitFor(first, place, usualFits(json));
        const isSearch = json.changes === 'yes';
        spend(costOf(question, json) * (isSearch ? limit : 1), context);
        const { id, ...asked } = json;
        const isNamed = isNamedIn(operation, asked);
        const page = {
          ...(isNamed ? {} : { limit }),
          ...(place.cursor === null ? {} : { cursor: place.cursor }),
        };
        const segment = operation.segment === null ? null : String(id);
        const found = await ask(
          { operation, segment, question: { ...asked, ...page, ...pinOf(edition, operation) } },
          context,
        );
        return connectionOf(found, place, number);
      },
    };
  }

  #argumentsOf(operation: Operation, without: readonly string[], required: readonly string[] = []) {
    const schema = this.#schemas.questionOf(operation);
    const owner = capitalised(operation.tag);
    const fields = this.#inputs.fieldsOf(schema, without, owner);
    const args: GraphQLFieldConfigArgumentMap = {};
    const { segment } = operation;
    if (segment !== null) {
      const description = segment.description;
      args.id = { type: new GraphQLNonNull(GraphQLString), description };
    }
    for (const [name, { type }] of fields) {
      const { description } = this.#schemas.read(schema.properties?.[name] ?? {});
      const isNeeded = required.includes(name) && !isNonNullType(type);
      args[name] = { type: isNeeded ? new GraphQLNonNull(type) : type, description };
    }
    const named = segment === null ? fields : new Map([...fields, ['id', AS_TEXT] as const]);
    return { args, fields: named };
  }

  /** All calculators, by name: what each takes, `calculations` says. */
  #calculateField(): Field {
    const [, some] = CALCULATE_OPERATIONS;
    if (some === undefined) throw new Error('there are calculators');
    const input = new GraphQLInputObjectType({
      name: 'GivenInput',
      description: 'One value that is given, or several with commas between them.',
      fields: {
        key: { type: new GraphQLNonNull(GraphQLString) },
        value: { type: new GraphQLNonNull(GraphQLString) },
      },
    });
    return {
      type: this.#outputs.typeOf(this.#schemas.answerOf(some), 'CalculationAnswer'),
      description: 'A formula of the driveline.',
      args: {
        name: { type: new GraphQLNonNull(GraphQLString), description: 'As in `calculations`.' },
        given: { type: new GraphQLNonNull(new GraphQLList(new GraphQLNonNull(input))) },
        lang: { type: GraphQLString },
      },
      resolve: async (_, asked, context) => {
        const { name, given, lang = null } = asked as OfCalculation;
        spend(1, context);
        const path = `/v1/calculate/${encodeURIComponent(name)}`;
        const values = given.map(({ key, value }) => [key, value] as const);
        const question = { ...Object.fromEntries(values), ...(lang === null ? {} : { lang }) };
        return ask({ operation: { ...some, path }, segment: null, question }, context);
      },
    };
  }
}

const AS_TEXT = { type: GraphQLString, toJson: (given: unknown) => given };

interface EditionGiven {
  readonly number?: number | null;
  readonly lang?: string | null;
  readonly view?: View | null;
}

async function editionOf(
  { number = null, lang = null, view = null }: EditionGiven,
  context: Context,
): Promise<Edition> {
  spend(1, context);
  const segment = number === null ? 'latest' : String(number);
  const found = await ask({ operation: readEditionOperation, segment, question: {} }, context);
  const asked = { ...(lang === null ? {} : { lang }), ...(view === null ? {} : { view }) };
  return { ...(found as Edition), asked };
}

/** What pins a question: its edition and language, as far as the operation takes them. */
function pinOf(
  edition: Edition | undefined,
  { query, body }: Operation,
): Readonly<Record<string, unknown>> {
  if (edition?.number === undefined) return {};
  const takes = (name: string) =>
    body !== null || query.parameters.some((one) => one.name === name);
  return {
    ...(takes('edition') ? { edition: edition.number } : {}),
    ...Object.fromEntries(Object.entries(edition.asked).filter(([name]) => takes(name))),
  };
}

/** Entries that are named one by one have no pages. */
function isNamedIn({ operationId }: Operation, asked: Readonly<Record<string, unknown>>): boolean {
  if (operationId === 'listParts' || operationId === 'listFittingParts') return 'part' in asked;
  return operationId === 'listFittedVehicles' && 'vehicle' in asked;
}

function costOf(
  { cost, costOfChanges }: Question,
  asked: Readonly<Record<string, unknown>>,
): number {
  return asked.changes === 'yes' ? (costOfChanges ?? cost) : cost;
}

/** The schema, which is made when it is first asked for. */
export function graphqlSchema(): GraphQLSchema {
  made ??= new SchemaOf().schema();
  return made;
}

let made: GraphQLSchema | null = null;
