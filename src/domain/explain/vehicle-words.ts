/**
 * What people are asked of their vehicle, and how months of building are said, by language.
 */

export interface VehicleWords {
  /** What is asked for, and how to find it out; null where that needs no word. */
  readonly fields: Readonly<Record<VehicleField, FieldWords>>;
  /** From the one to the other; null is not known, or still going on. Never both. */
  readonly built: (from: string | null, until: string | null) => string;
}

export type VehicleField = 'make' | 'model' | 'variant' | 'year' | 'built';

export interface FieldWords {
  readonly name: string;
  readonly how: string | null;
}

export const ENGLISH_VEHICLES: VehicleWords = {
  fields: {
    make: { name: 'Make', how: null },
    model: { name: 'Model', how: null },
    variant: { name: 'Variant', how: null },
    year: {
      name: 'Year of building',
      how: 'The year it was built in can be an earlier one than that of its first registration.',
    },
    built: {
      name: 'Month of building',
      how: 'The month it was built in can be an earlier one than that of its first registration.',
    },
  },
  built: (from, until) => {
    if (until === null) return `from ${from}`;
    return from === null ? `until ${until}` : `${from} to ${until}`;
  },
};

export const GERMAN_VEHICLES: VehicleWords = {
  fields: {
    make: { name: 'Marke', how: null },
    model: { name: 'Modell', how: null },
    variant: { name: 'Ausführung', how: null },
    year: {
      name: 'Baujahr',
      how: 'Das Baujahr kann vor dem Jahr der Erstzulassung liegen.',
    },
    built: {
      name: 'Baumonat',
      how: 'Der Baumonat kann vor dem Monat der Erstzulassung liegen.',
    },
  },
  built: (from, until) => {
    if (until === null) return `ab ${from}`;
    return from === null ? `bis ${until}` : `${from} bis ${until}`;
  },
};
