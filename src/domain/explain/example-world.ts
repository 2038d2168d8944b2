/**
 * The parts, faces and values of the demo world that examples of reasons speak of, each named as
 * the demo catalogue and the built-in kinds name it.
 */

import type { Text } from '../catalogue/document.js';

/** A place of a vehicle. */
export interface ExamplePlace {
  readonly position: string;
  readonly name: Text;
}

/** A part, at its place where it has one in the example. */
export interface ExamplePart {
  readonly part: string;
  readonly name: Text;
  readonly place: ExamplePlace | null;
  readonly hand?: 'left' | 'right';
}

/** A face, by its kind; null where the face is not recorded. */
export interface ExampleFace {
  readonly face: string;
  readonly kind: Text | null;
}

export interface ExampleParameter {
  readonly parameter: string | null;
  readonly name: Text;
}

const place = (position: string, en: string, de: string): ExamplePlace => ({
  position,
  name: { en, de },
});

export const PLACES = {
  body: place('body', 'Body', 'Karosserie'),
  centreControl: place('centre-control', 'Centre control unit', 'Steuergerät Mittenkupplung'),
  clutch: place('clutch', 'Clutch', 'Kupplung'),
  engine: place('engine', 'Engine', 'Motor'),
  finalDrive: place('rear-final-drive', 'Rear final drive', 'Hinterer Achsantrieb'),
  flywheel: place('flywheel', 'Flywheel', 'Schwungrad'),
  frontHub: place('front-hub', 'Front hub', 'Vordere Nabe'),
  frontTyre: place('front-tyre', 'Front tyre', 'Vorderreifen'),
  frontWheel: place('front-wheel', 'Front wheel', 'Vorderrad'),
  gearbox: place('gearbox', 'Gearbox', 'Getriebe'),
  linkage: place('linkage', 'Gear linkage', 'Schaltgestänge'),
  propShaft: place('prop-shaft', 'Propeller shaft', 'Gelenkwelle'),
  rearHalfShaft: place('rear-half-shaft', 'Rear half-shaft', 'Hintere Antriebswelle'),
  rearHub: place('rear-hub', 'Rear hub', 'Hintere Nabe'),
  rearWheel: place('rear-wheel', 'Rear wheel', 'Hinterrad'),
  speedometer: place('speedometer', 'Speedometer', 'Tachometer'),
  subframe: place('rear-subframe', 'Rear subframe', 'Hinterer Fahrschemel'),
  transfer: place('transfer', 'Transfer case', 'Verteilergetriebe'),
} as const;

function made(at: ExamplePlace | null, part: string, en: string, de: string): ExamplePart {
  return { part, name: { en, de }, place: at };
}

const { finalDrive, frontHub, gearbox, propShaft, rearHalfShaft, rearHub } = PLACES;

const SHAFT_LEFT = made(
  rearHalfShaft,
  'rear-shaft-early-left',
  'Lirren I rear half-shaft, left',
  'hintere Antriebswelle Lirren I, links',
);

export const PARTS = {
  axle: made(
    finalDrive,
    'axle-early',
    'Lirren I rear final drive 43/11',
    'hinterer Achsantrieb Lirren I 43/11',
  ),
  axleHulvane: made(
    finalDrive,
    'axle-hulvane',
    'Hulvane rear final drive 43/12',
    'hinterer Achsantrieb Hulvane 43/12',
  ),
  axleLate: made(
    finalDrive,
    'axle-late',
    'Lirren II rear final drive 43/12',
    'hinterer Achsantrieb Lirren II 43/12',
  ),
  body: made(PLACES.body, 'body-lirren-1', 'Lirren I body', 'Karosserie Lirren I'),
  boxClutched: made(
    gearbox,
    'gearbox-6-lock',
    'Lirren II six-speed gearbox with centre clutch',
    'Sechsganggetriebe Lirren II mit Mittenkupplung',
  ),
  boxFive: made(
    gearbox,
    'gearbox-5-early',
    'Lirren I five-speed gearbox',
    'Fünfganggetriebe Lirren I',
  ),
  boxSix: made(
    gearbox,
    'gearbox-6-late',
    'Lirren II six-speed gearbox',
    'Sechsganggetriebe Lirren II',
  ),
  clutchPush: made(
    PLACES.clutch,
    'clutch-early',
    'Lirren I push clutch, 228 mm',
    'Kupplung Lirren I, gedrückt, 228 mm',
  ),
  clutchStrong: made(
    PLACES.clutch,
    'clutch-strong',
    'strong push clutch, 228 mm',
    'verstärkte Kupplung, gedrückt, 228 mm',
  ),
  control: made(
    PLACES.centreControl,
    'control-centre',
    'Lirren II centre control unit',
    'Steuergerät Mittenkupplung Lirren II',
  ),
  engine: made(
    PLACES.engine,
    'engine-early',
    'Lirren I two-litre engine',
    'Zweiliter-Motor Lirren I',
  ),
  engineLate: made(
    PLACES.engine,
    'engine-late',
    'Lirren II 2.2-litre engine',
    '2,2-Liter-Motor Lirren II',
  ),
  flywheel: made(PLACES.flywheel, 'flywheel-early', 'Lirren I flywheel', 'Schwungrad Lirren I'),
  hub: made(
    frontHub,
    'front-hub-early',
    'Lirren I front hub 5 x 106',
    'vordere Nabe Lirren I 5 x 106',
  ),
  hubLate: made(
    rearHub,
    'rear-hub-late',
    'Lirren II rear hub 5 x 117',
    'hintere Nabe Lirren II 5 x 117',
  ),
  hubUsed: made(
    frontHub,
    'front-hub-used',
    'Lirren I front hub 5 x 106, used, spigot turned',
    'vordere Nabe Lirren I 5 x 106, gebraucht, überdreht',
  ),
  prop: made(propShaft, 'prop-early', 'Lirren I propeller shaft', 'Gelenkwelle Lirren I'),
  propMade: made(
    propShaft,
    'prop-made-two',
    'two-piece propeller shaft, flange 70 mm, made to length',
    'zweiteilige Gelenkwelle, Flansch 70 mm, auf Länge',
  ),
  propMadeOne: made(
    propShaft,
    'prop-made-one',
    'one-piece propeller shaft, flange 70 mm, made to length',
    'einteilige Gelenkwelle, Flansch 70 mm, auf Länge',
  ),
  propRemade: made(
    propShaft,
    'prop-remade',
    'Lirren I propeller shaft, remade',
    'Gelenkwelle Lirren I, nachgefertigt',
  ),
  shaftHulvane: made(
    rearHalfShaft,
    'rear-shaft-hulvane',
    'Hulvane rear half-shaft',
    'hintere Antriebswelle Hulvane',
  ),
  shaftLeft: { ...SHAFT_LEFT, hand: 'left' },
  shaftRight: {
    ...made(
      rearHalfShaft,
      'rear-shaft-early-right',
      'Lirren I rear half-shaft, right',
      'hintere Antriebswelle Lirren I, rechts',
    ),
    hand: 'left',
  },
  speedometer: made(
    PLACES.speedometer,
    'speedometer-cable',
    'Lirren I speedometer, cable',
    'Tachometer Lirren I, Welle',
  ),
  starter: made(null, 'starter-early', 'Lirren I starter', 'Anlasser Lirren I'),
  tyre: made(
    PLACES.frontTyre,
    'tyre-195-60-15',
    'tyre 195/60 R 15 88 H',
    'Reifen 195/60 R 15 88 H',
  ),
  wheel: made(PLACES.frontWheel, 'wheel-15-106', '15-inch wheel 5 x 106', '15-Zoll-Rad 5 x 106'),
  wheelRear: made(PLACES.rearWheel, 'wheel-15-106', '15-inch wheel 5 x 106', '15-Zoll-Rad 5 x 106'),
} as const satisfies Readonly<Record<string, ExamplePart>>;

export const FACES = {
  disc: { face: 'disc', kind: null },
  gearboxControl: {
    face: 'control',
    kind: { en: 'electrical connector', de: 'Steckverbindung' },
  },
  housing: { face: 'housing', kind: { en: 'bell-housing', de: 'Kupplungsglocke' } },
  input: { face: 'input', kind: { en: 'involute spline', de: 'Zahnwellenverbindung' } },
  axleFlange: { face: 'side', kind: { en: 'bolted flange', de: 'Schraubflansch' } },
  axleSpline: { face: 'side', kind: { en: 'involute spline', de: 'Zahnwellenverbindung' } },
  controlBox: { face: 'box', kind: { en: 'electrical connector', de: 'Steckverbindung' } },
  shaftFlange: { face: 'inner', kind: { en: 'bolted flange', de: 'Schraubflansch' } },
  propFront: {
    face: 'front',
    kind: { en: 'propeller-shaft flange', de: 'Gelenkwellenflansch' },
  },
  boxRear: {
    face: 'rear',
    kind: { en: 'propeller-shaft flange', de: 'Gelenkwellenflansch' },
  },
  onHub: { face: 'wheel', kind: { en: 'wheel mount', de: 'Radbefestigung' } },
  onWheel: { face: 'hub', kind: { en: 'wheel mount', de: 'Radbefestigung' } },
  speed: {
    face: 'speed',
    kind: { en: 'road speed signal', de: 'Geschwindigkeitssignal' },
  },
  speedometerSignal: {
    face: 'signal',
    kind: { en: 'road speed signal', de: 'Geschwindigkeitssignal' },
  },
} as const satisfies Readonly<Record<string, ExampleFace>>;

const parameter = (id: string | null, en: string, de: string): ExampleParameter => ({
  parameter: id,
  name: { en, de },
});

export const PARAMETERS = {
  boltPlaces: parameter(
    'hole-positions',
    'positions of the bolt holes',
    'Lage der Schraubenlöcher',
  ),
  bore: parameter('bore', 'centre bore of the wheel', 'Mittenloch des Rads'),
  drivelineLength: parameter(null, 'driveline length', 'Länge des Antriebsstrangs'),
  ears: parameter(
    null,
    'Front ears of the rear subframe',
    'Vordere Laschen des hinteren Fahrschemels',
  ),
  family: parameter('family', 'spline family', 'Verzahnungsnorm'),
  frontPath: parameter(null, 'front path', 'Weg zur Vorderachse'),
  inputTorque: parameter('torque', 'rated input torque', 'Nenneingangsmoment'),
  length: parameter('length', 'length between the flanges', 'Länge zwischen den Flanschen'),
  pcd: parameter('pcd', 'pitch circle diameter', 'Lochkreisdurchmesser'),
  pulses: parameter('pulses', 'pulses a turn of the sender', 'Impulse je Umdrehung des Gebers'),
  ratedTorque: parameter('torque', 'rated torque', 'Nenndrehmoment'),
  rearPath: parameter(null, 'rear path', 'Weg zur Hinterachse'),
  register: parameter('register', 'register diameter', 'Zentrierdurchmesser'),
  span: parameter(
    'span',
    'distance from the engine to the middle of the rear axle',
    'Abstand vom Motor zur Mitte der Hinterachse',
  ),
  spigot: parameter('spigot', 'spigot diameter of the hub', 'Durchmesser der Nabenzentrierung'),
  teeth: parameter('teeth', 'number of teeth', 'Zähnezahl'),
  torque: parameter('torque', 'greatest torque', 'größtes Drehmoment'),
} as const satisfies Readonly<Record<string, ExampleParameter>>;
