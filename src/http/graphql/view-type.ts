/**
 * How much of an answer is shown, as an argument of GraphQL.
 */

import { GraphQLEnumType } from 'graphql';
import { VIEWS, viewField } from '../../contract/view.js';
import { enumName } from './scalars.js';

export const VIEW_TYPE = new GraphQLEnumType({
  name: 'View',
  description: viewField.meta()?.description ?? '',
  values: Object.fromEntries(VIEWS.map((view) => [enumName(view), { value: view }])),
});
