/**
 * The languages of answers, and which of them a wish gets.
 */

export {
  FALLBACK_LANGUAGE,
  type Language,
  languageFor,
  /** Languages that sentences can be said in; the first stands in for all others. */
  SPOKEN as SPOKEN_LANGUAGES,
  spokenFor,
} from '../domain/explain/words.js';
