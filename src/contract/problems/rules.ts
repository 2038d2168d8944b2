/**
 * Rules that fields have beyond their type and length, by the fault of a field that breaks one. A
 * schema gives the code as the message of its rule; the door finds the rest here.
 */

import { LIMITS } from '../limits.js';
import type { FaultOf } from './fault.js';

export const NO_UNSEEN_CHARACTERS: FaultOf<'unseen-characters'> = {
  code: 'unseen-characters',
  data: {},
};

export const A_PLACE: FaultOf<'not-a-place'> = {
  code: 'not-a-place',
  data: { most: LIMITS.placeCharacters.value },
};

export const FEW_PLACES: FaultOf<'too-many-places'> = {
  code: 'too-many-places',
  data: { most: LIMITS.placesInBody.value, limit: 'placesInBody' },
};

export const A_LANGUAGE_TAG: FaultOf<'not-a-language-tag'> = {
  code: 'not-a-language-tag',
  data: {},
};

export const A_MONTH: FaultOf<'not-a-month'> = { code: 'not-a-month', data: {} };

export const AN_EDITION: FaultOf<'not-an-edition'> = { code: 'not-an-edition', data: {} };

export const NOT_BESIDE_NAMES: FaultOf<'not-beside-names'> = {
  code: 'not-beside-names',
  data: {},
};

export const NOT_BESIDE_VEHICLE: FaultOf<'not-beside-vehicle'> = {
  code: 'not-beside-vehicle',
  data: {},
};

export const RULES = [
  NO_UNSEEN_CHARACTERS,
  A_PLACE,
  FEW_PLACES,
  A_LANGUAGE_TAG,
  A_MONTH,
  AN_EDITION,
  NOT_BESIDE_NAMES,
  NOT_BESIDE_VEHICLE,
] as const;
