/**
 * Which fields of what the catalogue records are shown to whom. The public is shown what a thing is
 * called and what it is for; how it was measured, and by whom, only the catalogue's own keepers.
 */

import { PAGE, type ShownObjects, TEXTS, VALUES } from './shown.js';

const PART = 'id name roles maker numbers hand supersededBy';
const VEHICLE = 'id label make model variant built layout facts replacedBy';

export const SHOWN_RECORDS: ShownObjects = {
  PartList: { public: `${PAGE} offers` },
  PartEntry: { public: PART, trade: 'spans built' },
  FoundPart: { public: `asked resolvedBy ${PART}`, trade: 'spans built' },
  PartNumber: { public: 'number of' },
  PartAnswer: {
    public: `${VALUES} ${PART} cautions`,
    trade: 'spans built values',
    full: 'interfaces notRecorded evidence',
  },
  Interface: { full: 'interface kind kindName side optional absent alternatives evidence' },
  Alternative: { full: 'parameters notRecorded' },
  NotRecorded: { full: 'interfaces values' },
  RecordedValue: {
    trade: 'parameter name form value items points',
    full: 'tool toolName evidence',
  },
  Evidence: { full: 'basis by on source times' },

  IdentifyPartAnswer: {
    public: `${VALUES} summary items next counts nearest excluded ask warnings cautions`,
  },
  PieceCandidate: { public: `${PART} spans built agreeing open failing why` },
  PieceFinding: { public: 'field index state code data text' },
  ExcludedParts: { public: 'field index name count parts' },
  ExcludedPart: { public: 'id name code data text' },
  PieceAsk: { public: 'field on tool toolName needed values more code data text' },
  PieceOutcome: { public: 'value noFace range label count parts' },

  RoleList: { public: PAGE },
  RoleEntry: { public: 'id name caution parts' },
  RoleAnswer: { public: `${VALUES} id name caution parts cautions`, trade: 'faces values' },
  RoleValue: {
    trade: 'parameter name type unit tool toolName usual list rating derived askedAs',
  },

  VehicleList: { public: `${PAGE} ask` },
  VehicleEntry: { public: VEHICLE },
  VehicleAnswer: {
    public: `${VALUES} ${VEHICLE} layoutName namedFacts cautions`,
    trade: 'like vin positions adapters values',
    full: 'evidence',
  },
  NamedFact: { public: 'fact name how value valueName values', trade: 'positions' },
  FactValue: { public: 'value name' },
  VinPattern: { trade: 'pattern serial' },
  VehiclePosition: {
    trade: 'position name hand cautionGroups occupant part partName option',
  },
  WorksOption: { trade: 'fact by' },
  FittedByFact: { trade: 'value valueName occupant part partName' },
  AskableValue: { trade: 'position hand part partName parameter name askedAs recorded' },
  WorksAdapters: { trade: 'mating between adapters' },
  Ask: { public: 'field fact position name how values' },
  AskValue: { public: 'value label count' },
  IdentifyAnswer: {
    public: `${TEXTS} vin candidates counts excluded ask warnings cautions`,
  },
  VinParts: {
    public: 'maker description indicator checkDigit checkDigitAgrees modelYears',
  },
  CandidateVehicle: { public: `${VEHICLE} why` },
  CandidateCounts: { public: 'total' },
  ExcludedVehicles: { public: 'field fact name count' },
  ToldOfVehicle: { public: 'field fact recorded text' },

  LayoutList: { public: PAGE },
  LayoutEntry: { public: 'id name positions vehicles' },
  LayoutAnswer: { public: `${TEXTS} id name positions matings checks terms` },
  Position: { public: 'position name roles count handed optional behind labourHours accessHours' },
  LayoutMating: { public: 'mating between adapters' },
  Term: { public: 'term name' },
  KindList: { public: PAGE },
  KindEntry: { public: 'id name builtIn caution parts' },
  KindAnswer: {
    public:
      `${VALUES} id name builtIn caution parts standard sides parameters checks notChecked ` +
      'cautions',
  },
  KindSide: { public: 'side name' },
  Parameter: { public: 'parameter name type unit tool toolName usual side optional unless' },
  DeclaredCheck: { public: 'check primitive severity text' },

  EditionList: { public: 'edition engine items next counts' },
  EditionEntry: { public: 'number hash publishedAt note counts' },
  EditionAnswer: { public: 'edition engine number hash publishedAt note counts' },
  ListCounts: { public: 'total' },
};
