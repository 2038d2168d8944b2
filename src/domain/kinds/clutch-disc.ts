/**
 * One side of a clutch disc against the plate that it is clamped to: flywheel or pressure plate.
 *
 * Standard: none; car makers' own. A disc lies between two plates, so it has two faces of this
 * kind, each with what stands out towards that plate: one meets the flywheel, one the pressure
 * plate of the cover. A cover of one car with a disc of another is common, where the hub has to
 * suit another gearbox; both must then share lining and thickness.
 *
 * The lining must lie on metal all over: on a flywheel with 2 mm to spare in diameter, like the
 * cover's own check. A pressure plate more than 6 mm larger than the lining is made for a larger
 * disc: it clamps, but carries less. The thickness of the new disc decides clamp load and finger
 * height: 0.3 mm either way. Hub and damper must clear crankshaft bolts and fingers, also when the
 * lining is worn by 1.5 mm on a side, and pass the edge of the plate with 1 mm to spare in
 * diameter. All these figures are common practice, no source. The room of a flywheel is measured
 * from the friction face to the heads of its bolts, that of a cover from the pressure plate to the
 * fingers at their innermost; bolts that stand above the face leave a room below zero.
 *
 * Left out: the spline of the hub, which is an interface of its own (involute-spline,
 * straight-spline); torque; spring rate of the damper.
 */

import type { BuiltInKind } from './kind.js';

const FLYWHEEL = { 'one-of': ['plate.plate', ['flywheel']] };
const PRESSURE_PLATE = { 'one-of': ['plate.plate', ['pressure-plate']] };

export const clutchDisc: BuiltInKind = {
  id: 'clutch-disc',
  name: { en: 'clutch disc against its plate', de: 'Kupplungsscheibe an ihrer Platte' },
  standard: 'none',
  sides: ['disc', 'plate'],
  sideNames: {
    disc: {
      en: 'the disc, seen from the plate that this side of it meets',
      de: 'die Scheibe, von der Platte aus, an der diese Seite liegt',
    },
    plate: {
      en: 'the flywheel, or the pressure plate in its cover',
      de: 'das Schwungrad, oder die Anpressplatte in ihrer Druckplatte',
    },
  },
  caution: 'driveline',
  parameters: {
    plate: {
      type: 'code',
      of: 'plate',
      name: { en: 'flywheel or pressure plate', de: 'Schwungrad oder Anpressplatte' },
      tool: 'visual-check',
    },
    'lining-outer': {
      type: 'measured',
      unit: 'mm',
      of: 'disc',
      name: { en: 'outer diameter of the lining', de: 'Außendurchmesser des Belags' },
      tool: 'caliper',
      usual: ['160 mm', '260 mm'],
    },
    'lining-inner': {
      type: 'measured',
      unit: 'mm',
      of: 'disc',
      name: { en: 'inner diameter of the lining', de: 'Innendurchmesser des Belags' },
      tool: 'caliper',
      usual: ['100 mm', '190 mm'],
    },
    'friction-outer': {
      type: 'measured',
      unit: 'mm',
      of: 'plate',
      name: { en: 'outer diameter of the friction face', de: 'Außendurchmesser der Reibfläche' },
      tool: 'caliper',
      usual: ['160 mm', '290 mm'],
    },
    'friction-inner': {
      type: 'measured',
      unit: 'mm',
      of: 'plate',
      name: { en: 'inner diameter of the friction face', de: 'Innendurchmesser der Reibfläche' },
      tool: 'caliper',
      usual: ['90 mm', '190 mm'],
    },
    thickness: {
      type: 'measured',
      unit: 'mm',
      name: { en: 'thickness of the new disc, clamped', de: 'Dicke der neuen Scheibe, geklemmt' },
      tool: 'caliper',
      usual: ['7 mm', '9.5 mm'],
    },
    protrusion: {
      type: 'measured',
      unit: 'mm',
      of: 'disc',
      name: {
        en: 'how far hub and damper stand out beyond the lining',
        de: 'Überstand von Nabe und Dämpfer über den Belag',
      },
      tool: 'depth-gauge',
      usual: ['0 mm', '30 mm'],
    },
    room: {
      type: 'measured',
      unit: 'mm',
      of: 'plate',
      name: {
        en: 'depth from the friction face to bolt heads or fingers',
        de: 'Tiefe von der Reibfläche zu Schraubenköpfen oder Zungen',
      },
      tool: 'depth-gauge',
      usual: ['0 mm', '50 mm'],
    },
    'damper-diameter': {
      type: 'measured',
      unit: 'mm',
      of: 'disc',
      name: {
        en: 'diameter of what stands out, damper and rivets',
        de: 'Durchmesser des Überstands, mit Dämpfer und Nieten',
      },
      tool: 'caliper',
      usual: ['40 mm', '180 mm'],
    },
    opening: {
      type: 'measured',
      unit: 'mm',
      of: 'plate',
      name: { en: 'diameter of the opening in the plate', de: 'Durchmesser der Plattenöffnung' },
      tool: 'caliper',
      usual: ['60 mm', '190 mm'],
    },
  },
  checks: [
    {
      id: 'known-plate',
      'one-of': ['plate.plate', ['flywheel', 'pressure-plate']],
      code: 'neither-plate',
      text: {
        en: 'A disc is clamped between a flywheel and a pressure plate: say which this is.',
        de: 'Die Scheibe liegt zwischen Schwungrad und Anpressplatte: angeben, was davon.',
      },
    },
    {
      id: 'lining-on-flywheel',
      clearance: ['plate.friction-outer', 'disc.lining-outer'],
      min: '2 mm',
      when: FLYWHEEL,
      code: 'lining-overhangs',
      text: {
        en: 'The friction face of the flywheel must be 2 mm larger than the lining.',
        de: 'Die Reibfläche des Schwungrads muss 2 mm größer sein als der Belag.',
      },
    },
    {
      id: 'lining-on-pressure-plate',
      'at-least': ['plate.friction-outer', 'disc.lining-outer'],
      when: PRESSURE_PLATE,
      code: 'lining-overhangs-pressure-plate',
      text: {
        en: 'The pressure plate must be as large as the lining.',
        de: 'Die Anpressplatte muss so groß sein wie der Belag.',
      },
    },
    {
      id: 'smaller-lining',
      clearance: ['plate.friction-outer', 'disc.lining-outer'],
      max: '6 mm',
      when: PRESSURE_PLATE,
      severity: 'caution',
      code: 'plate-for-larger-disc',
      text: {
        en: 'The cover is made for a larger disc: this one carries less torque.',
        de: 'Die Druckplatte ist für eine größere Scheibe: Diese überträgt weniger Drehmoment.',
      },
    },
    {
      id: 'lining-inside',
      'at-most': ['plate.friction-inner', 'disc.lining-inner'],
      code: 'lining-overhangs-inside',
      text: {
        en: 'The friction face must reach in as far as the lining does.',
        de: 'Die Reibfläche muss so weit nach innen reichen wie der Belag.',
      },
    },
    {
      id: 'thickness',
      within: ['disc.thickness', 'plate.thickness'],
      tolerance: '0.3 mm',
      when: PRESSURE_PLATE,
      code: 'thickness-differs',
      text: {
        en: 'The cover is set up for one thickness of disc: another moves fingers and clamp load.',
        de: 'Die Druckplatte ist für eine Dicke: Eine andere ändert Zungenhöhe und Anpresskraft.',
      },
    },
    {
      id: 'protrusion',
      'at-least': ['plate.room', 'disc.protrusion'],
      code: 'hub-touches',
      text: {
        en: 'Hub and damper must clear the crankshaft bolts, or the fingers.',
        de: 'Nabe und Dämpfer dürfen Kurbelwellenschrauben oder Zungen nicht berühren.',
      },
    },
    {
      id: 'protrusion-worn',
      clearance: ['plate.room', 'disc.protrusion'],
      min: '1.5 mm',
      severity: 'caution',
      code: 'hub-touches-when-worn',
      text: {
        en: 'With less than 1.5 mm to spare the hub may touch once the lining has worn.',
        de: 'Mit weniger als 1,5 mm Reserve kann die Nabe bei verschlissenem Belag anstehen.',
      },
    },
    {
      id: 'opening',
      clearance: ['plate.opening', 'disc.damper-diameter'],
      min: '1 mm',
      code: 'damper-touches-edge',
      text: {
        en: 'What stands out of the disc must enter the plate, with 1 mm to spare in diameter.',
        de: 'Was vorsteht, muss in die Platte gehen, mit 1 mm Reserve im Durchmesser.',
      },
    },
  ],
  notChecked: [
    { en: 'the spline of the hub', de: 'die Verzahnung der Nabe' },
    { en: 'which way round the disc was put in', de: 'wie herum die Scheibe eingelegt wurde' },
    { en: 'torque and spring rate of the damper', de: 'Drehmoment und Federrate des Dämpfers' },
    { en: 'sort and wear of the lining', de: 'Art und Verschleiß des Belags' },
    { en: 'run-out of disc and plate', de: 'Planlauf von Scheibe und Platte' },
  ],
};
