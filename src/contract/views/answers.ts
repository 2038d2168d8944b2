/**
 * Which fields of answers about fitting are shown to whom: fit, lists, kits, inspection. The public
 * is shown the verdict, what else is needed with its names and packs, why in a sentence, and every
 * caution; not the values that decided, nor prices.
 */

import { REASON, type ShownObjects, TEXTS, VALUES } from './shown.js';

const NAMED_ON = 'position positionName hand part partName interface kindName';

/** Where a value stands that is measured. */
const PLACED = 'position hand part name interface parameter fact mating';

/** What a list says of a part, and of a vehicle. */
const LISTED = 'alone verdict complete at ambiguous positions';

const FIT_ANSWERS: ShownObjects = {
  FitAnswer: {
    public:
      `${VALUES} changes asked resolvedBy vehicle part name supersededBy offers named alone ` +
      'verdict complete present ambiguous at summary positions currency kit conflict ' +
      'notChecked cautions',
    trade: 'measure',
  },
  FitPosition: {
    public: 'position name replaces present alone verdict',
    trade: 'matings checks choices rules places statements order',
  },
  PartlyFitAnswer: {
    public:
      `${TEXTS} changes asked part name verdict complete summary vehicles counts outcomes ask ` +
      'settles cautions fit',
  },
  MeantVehicle: { public: 'vehicle label alone verdict complete' },
  MeantCounts: { public: 'total' },
  OutcomeCount: { public: 'verdict count' },
  SettlingAsk: { public: 'field fact position name how values' },
  SettlingValue: { public: 'value label count verdict outcomes' },
  FittingPartList: { public: `${TEXTS} items next counts vehicle label offers` },
  FittingPart: { public: `part name maker numbers supersededBy donor kit ${LISTED}` },
  NamedFittingPart: {
    public: `asked resolvedBy part name maker numbers supersededBy donor kit ${LISTED}`,
  },
  DonorPlace: { public: 'position name' },
  DonorKit: { public: 'comesWith alsoNeeded' },
  KitPiece: { public: 'position mating part name' },
  FittedVehicleList: { public: `${TEXTS} items next counts part name` },
  FittedVehicle: { public: `vehicle label make model variant built ${LISTED}` },
  FittedModel: { public: 'make model label built counts' },
  FitsCounts: { public: 'total holds open fails' },
  FitsPosition: { public: 'position name alone' },
  FitsFeedStart: { public: 'edition from engine lang form role alone part vehicle' },
  FitsFeedEnd: { public: 'lines alone gone' },
  FitBatchStart: { public: 'edition offers engine lang units changes form' },
  FitBatchEnd: { public: 'lines answers errors alone verdict problems' },
  InspectAnswer: {
    public: `${VALUES} vehicle offers named state summary notChecked cautions`,
    trade: 'judged order measure',
  },
  MateAnswer: {
    public: `${VALUES} offers named state summary mating measure notChecked cautions`,
  },
  DrivelineAnswer: {
    public: `${VALUES} vehicle offers named sections figures measure cautions`,
  },
  FigureRow: { public: 'section figure name before after change' },
  Figure: { public: 'value outcome' },
  FigureMeasure: { public: 'id on now needed tool purpose settles helps code data text figures' },
};

const JUDGED: ShownObjects = {
  Judged: { public: 'matings checks choices rules places statements' },
  Mating: {
    public:
      'mating hand state computed ends other adapters basis builtOn statement code data text ' +
      'checks',
  },
  AdapterInMating: { public: 'part name' },
  End: { public: 'position positionName part name interface occupant' },
  Constraint: {
    public: 'id form hand positions severity state computed basis statement code data text checks',
  },
  Check: {
    public: 'check primitive severity state left right margin basis code data text caution',
  },
  CautionReason: { public: 'code data text' },
  Side: {
    public: 'position hand part name interface parameter parameterName term value said',
  },
  Order: { public: 'on value code data text' },
  Measure: { public: 'id on now needed tool purpose settles helps code data text' },
  FactPlace: { public: PLACED },
};

const KITS: ShownObjects = {
  KitAnswer: {
    public: `${VALUES} offers currency tax question vehicle named complete more routes conflict`,
    // A summary of ways says what they cost.
    trade: 'summary bound compare',
  },
  PartlyKitAnswer: {
    public:
      `${VALUES} offers currency tax named grade complete more routes conflict vehicles counts ` +
      'outcomes ask settles cautions kits',
    trade: 'summary',
  },
  SharedRoute: { public: 'grade changes lines recommended totals', trade: 'order' },
  SharedLine: {
    public:
      'key action position positionName mating hand part lot work name maker skus numbers ' +
      'quantity offer source leftOver signOff reversible',
    trade: 'unitPrice price fromLot labourHours labour',
  },
  MeantKits: { public: 'vehicle label grade complete', trade: 'summary' },
  GradeCount: { public: 'grade count' },
  KitSettlingAsk: { public: 'field fact position name how values' },
  KitSettlingValue: { public: 'value label count grade outcomes' },
  Bound: { public: 'grade cost' },
  Route: {
    public: 'key digest grade beatenBy changes lines recommended totals loses notChecked cautions',
    trade:
      'summary weakest loads driveline matings checks choices rules places statements order ' +
      'measure',
  },
  Compare: { public: 'same rows' },
  CompareRow: { public: 'key name values' },
  Weakest: { public: 'position positionName margin' },
  LoadMargin: { public: 'check position positionName before after' },
  RouteDriveline: { public: 'loops better worse' },
  ChangedFigure: { public: 'figure name before after' },
  KitMeasure: {
    public: 'id on now needed tool purpose settles helps code data text settlesRoutes',
  },
  KitLine: {
    public:
      'key action position positionName mating hand part lot work name maker skus numbers ' +
      'quantity offer source why substitutes leftOver signOff reversible',
    // What another part costs more stands in its sentence.
    trade: 'alternatives unitPrice price labourHours labour fromLot',
  },
  LineOffer: {
    public: 'sku pack packs over',
    trade: 'condition leadDays',
    full: 'id supplier stock',
  },
  Quantity: { public: 'value unit' },
  Why: { public: 'after code text', trade: 'constraint data' },
  OtherPart: { public: 'part name priceDifference openPoints code data text' },
  Substitute: { public: 'part name code text', trade: 'data' },
  LeftOver: { public: 'part name quantity' },
  KitTotals: {
    public: 'changedPositions signOff reversible',
    trade: 'parts works labourHours labour cost unpriced untimed leadDays unknownLimits',
  },
  Conflict: { public: 'demands smallest more', trade: 'path relaxations' },
  Demand: { public: 'demand at code text', trade: 'data' },
  DroppedDemand: { public: 'demand at code data text takes' },
  Relaxation: { public: 'drop grade changes totals code data text' },
  PathStep: { public: 'constraint state changed code data text' },
  PathPart: { public: 'position mating part name' },
};

/** What a kit question came to: the client's own, with what it means where it said nothing. */
const ASKED: ShownObjects = {
  AskedKit: {
    public:
      'edition lang units vehicle facts fitted adapters torque use ignorePresent want keep avoid ' +
      'owned lots workUpTo limits labourRate ruleset unknowns from offers offersMode measured ' +
      'prefer routes undominated steps',
  },
  AskedLimits: { public: 'cost changedPositions labourHours leadDays inStock' },
  AskedLot: { public: 'lot whole' },
  AskedMeasured: { public: 'on value tool' },
  AskedPart: { public: 'part position hand renew' },
  AskedIdentity: { public: 'on value' },
  AvoidedPart: { public: 'part' },
  AvoidedSupplier: { public: 'supplier' },
  PlaceCondition: { public: 'position condition' },
  WantedLoad: { public: 'load atLeast' },
  OwnOfferOfPart: { public: 'part price stock leadDays pack' },
  OwnOfferOfLot: { public: 'lot price stock leadDays pack' },
  OwnOfferOfWork: { public: 'work price stock leadDays pack' },
  OwnOfferUnderSku: { public: 'sku price stock leadDays pack' },
};

const SAID: ShownObjects = {
  SaidReason: REASON,
  ReasonData: {
    public:
      'left right missing odd choices says a b adapters part margin vehicles basis ' +
      'because statement between order text count needed tool names places facts price asked ' +
      'takes unpriced more cheapest',
  },
  Named: { public: NAMED_ON },
  NamedValue: { public: `${NAMED_ON} parameter parameterName value` },
  NamedPart: { public: 'at asked part name resolvedBy supersededBy' },
  ShownValue: { public: 'text low high unit' },
  ShownPoint: { public: 'text x y' },
  Caution: { public: 'code group show text' },
  LostName: { public: 'asked error' },
  ItemProblem: { public: 'type title status detail lang code retry ask errors limit' },
  Fault: { public: 'pointer parameter code data text lang' },
};

export const SHOWN_ANSWERS: ShownObjects = {
  ...FIT_ANSWERS,
  ...JUDGED,
  ...KITS,
  ...ASKED,
  ...SAID,
};
