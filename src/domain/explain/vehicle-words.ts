/**
 * What people are asked of their vehicle, and how months of building are said, by language.
 */

export interface VehicleWords {
  /** What is asked for, and how to find it out; null where that needs no word. */
  readonly fields: Readonly<Record<VehicleField, FieldWords>>;
  /** What is fitted at a place. */
  readonly lookedAt: LookedAtWords;
  /** What is told of a vehicle agrees with its record, or nobody recorded it. */
  readonly agrees: (name: string) => string;
  readonly notRecorded: (name: string) => string;
  /** From the one to the other; null is not known, or still going on. Never both. */
  readonly built: (from: string | null, until: string | null) => string;
}

export type VehicleField = 'make' | 'model' | 'variant' | 'year' | 'built' | 'vin';

export interface FieldWords {
  readonly name: string;
  readonly how: string | null;
}

export interface LookedAtWords {
  readonly how: string;
  /** Where nothing is fitted. */
  readonly nothing: string;
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
    vin: {
      name: 'Vehicle identification number',
      how: 'It stands on a plate and is stamped into the body; papers may have it wrong.',
    },
  },
  lookedAt: {
    how: 'Look at what is fitted there now, whatever the works fitted: its number tells it best.',
    nothing: 'nothing',
  },
  agrees: (name) => `${name}: as recorded.`,
  notRecorded: (name) => `${name}: not recorded, so it may be.`,
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
    vin: {
      name: 'Fahrzeug-Identifizierungsnummer',
      how: 'Sie steht auf einem Schild und ist eingeschlagen; Papiere können sich irren.',
    },
  },
  lookedAt: {
    how: 'Nachsehen, was jetzt dort eingebaut ist, gleich was ab Werk: am besten an der Nummer.',
    nothing: 'nichts',
  },
  agrees: (name) => `${name}: wie erfasst.`,
  notRecorded: (name) => `${name}: nicht erfasst, also möglich.`,
  built: (from, until) => {
    if (until === null) return `ab ${from}`;
    return from === null ? `bis ${until}` : `${from} bis ${until}`;
  },
};
