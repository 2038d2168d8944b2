/**
 * Parses a document of GraphQL. Its tokens and brackets are counted before that, since the parser
 * goes as deep into the stack as they stand inside each other.
 */

import { type DocumentNode, type GraphQLError, Lexer, parse, Source, TokenKind } from 'graphql';
import { LIMITS } from '../../contract/limits.js';
import { tooMuch } from './rules.js';

const OPENING: ReadonlySet<TokenKind> = new Set([
  TokenKind.BRACE_L,
  TokenKind.BRACKET_L,
  TokenKind.PAREN_L,
]);

const CLOSING: ReadonlySet<TokenKind> = new Set([
  TokenKind.BRACE_R,
  TokenKind.BRACKET_R,
  TokenKind.PAREN_R,
]);

/** Throws `GraphQLError` for what is too much, and for what is no document. */
export function parsed(text: string): DocumentNode {
  const source = new Source(text);
  const refusal = tooMuchIn(source);
  if (refusal !== null) throw refusal;
  return parse(source);
}

function tooMuchIn(source: Source): GraphQLError | null {
  const lexer = new Lexer(source);
  let [tokens, open] = [0, 0];
  for (;;) {
    const { kind } = lexer.advance();
    if (kind === TokenKind.EOF) return null;
    tokens += 1;
    if (tokens > LIMITS.graphqlTokens.value) return tooMuch('graphqlTokens', 'tokens');
    if (CLOSING.has(kind)) open -= 1;
    if (!OPENING.has(kind)) continue;
    open += 1;
    if (open > LIMITS.graphqlBrackets.value) {
      return tooMuch('graphqlBrackets', 'brackets inside each other');
    }
  }
}
