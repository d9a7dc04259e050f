import { MATERIALS, type MaterialKey } from '../../../rules/covers/material-table.ts';
import type { ComparedRow, Comparison, LeftOutRow } from './comparison.ts';

/** Air films on both sides of a pane in a heated house, which printed R-values include and ours do not. [m² K W⁻¹] */
const FILMS_M2K_PER_W = 0.17;

const light = (key: MaterialKey) => MATERIALS[key].skin.sunTransmittedFraction;
const longwave = (key: MaterialKey) => MATERIALS[key].skin.longwaveTransmittedDryFraction;
const wetLongwave = (key: MaterialKey) => MATERIALS[key].skin.longwaveTransmittedWetFraction;
const resistance = (key: MaterialKey) => MATERIALS[key].skin.resistanceM2KPerW + FILMS_M2K_PER_W;

type Printed = readonly [id: string, ours: number, theirs: number, excuse?: string];

const GRAY_INDEX =
  'Its 7 % is what glass loses by its own emission; as such glass lets no longwave through, which is what our number says.';

const LIGHT: readonly Printed[] = [
  ['insect-weight nonwoven, retail guide', light('fabric-light'), 0.85],
  ['window glass, Hanson 1963', light('glass'), 0.88],
  ['polyethylene film, Hanson 1963', light('film'), 0.73, 'A film of 1963; every later source has 0.85 to 0.90.'],
  ['clear glass, Pieters', light('glass'), 0.89],
  ['polyethylene dry, Pieters', light('film'), 0.9],
  [
    'polyethylene with drops, Pieters',
    light('film'),
    0.67,
    'The model keeps the light of a dry film: a wet one warms a bed a quarter less by day than computed.',
  ],
  ['twin-wall polycarbonate, extension course', light('twin-wall-4'), 0.8],
  ['single glass, trade overview', light('glass'), 0.88],
  ['polyethylene 6 mil, trade overview', light('film'), 0.85],
];

const LONGWAVE: readonly Printed[] = [
  ['window glass, Hanson 1963', longwave('glass'), 0.07, GRAY_INDEX],
  ['polyethylene film, Hanson 1963', longwave('film'), 0.74],
  ['thermic polyethylene, Kalfas 1988', longwave('film-infrared'), 0.2],
];

const RESISTANCE: readonly Printed[] = [
  ['any single glazing, extension course', resistance('glass'), 0.16],
  ['single glass, trade chart', resistance('glass'), 0.17],
  ['twin-wall 6 mm, trade chart', (2 * resistance('twin-wall-4') + resistance('twin-wall-10')) / 3, 0.27],
  ['twin-wall 8 mm, trade chart', (resistance('twin-wall-4') + 2 * resistance('twin-wall-10')) / 3, 0.3],
  ['single glass, trade overview', resistance('glass'), 0.16],
  ['polyethylene 6 mil, trade overview', resistance('film'), 0.15],
];

const REMEMBERED: readonly Printed[] = [
  ['polyethylene dry, light', light('film'), 0.88],
  ['polyethylene dry, longwave', longwave('film'), 0.7],
  ['polyethylene wet, longwave', wetLongwave('film'), 0.15],
  ['thermic polyethylene, light', light('film-infrared'), 0.88],
  ['thermic polyethylene, longwave', longwave('film-infrared'), 0.25],
  ['horticultural glass, light', light('glass'), 0.89],
  ['horticultural glass, longwave', longwave('glass'), 0.01],
  ['twin-wall 10 mm, light', light('twin-wall-10'), 0.79],
  ['twin-wall 10 mm, longwave', longwave('twin-wall-10'), 0.01],
  ['wet or iced fabric, longwave', wetLongwave('fabric-medium'), 0.2],
];

const NO_KEY = 'No cover of ours is made of it.';

const LEFT_OUT: readonly LeftOutRow[] = [
  { id: 'polyvinyl-fluoride film, Hanson 1963', reason: NO_KEY },
  { id: 'polyester film, Hanson 1963', reason: NO_KEY },
  { id: 'polystyrene film, Hanson 1963', reason: NO_KEY },
  { id: 'low-emissivity glass, Pieters', reason: NO_KEY },
  { id: 'diffusive polyethylene dry, Pieters', reason: NO_KEY },
  { id: 'diffusive polyethylene with drops, Pieters', reason: NO_KEY },
  { id: 'double glazing, extension course', reason: NO_KEY },
  { id: 'double glass, trade chart', reason: NO_KEY },
  { id: 'triple-wall polycarbonate, trade chart', reason: NO_KEY },
  { id: 'five-wall polycarbonate, trade chart', reason: NO_KEY },
  { id: 'double inflated polyethylene 6 mil, trade overview', reason: 'Two films are two covers with air between.' },
  { id: 'double polyethylene 5 mil, trade overview', reason: 'Two films are two covers with air between.' },
  { id: 'PVC film, Nijskens 1984', reason: NO_KEY },
  {
    id: 'infrared-additive polyethylene, trade magazine',
    reason: 'A saving of a heated house, not an optical number.',
  },
  { id: 'wet against dry film, Feuilloley', reason: 'No number; that wet film is warmer is a line of its own.' },
  { id: 'fabric under perforated film, Acta Horticulturae 187', reason: 'No temperature in the abstract.' },
  { id: 'water bottles, community garden', reason: 'No number.' },
  { id: 'plastic jug cloche, Geographical Bulletin 1997', reason: 'No figure in the abstract.' },
];

/** Light, longwave and resistance of the covers' materials: the rows of the compilation that print no gain. */
export function coverMaterialComparisons(): readonly Comparison[] {
  return [
    {
      quantity: 'Light through covers',
      unit: 'share',
      source: 'measured and trade',
      standing: 'read',
      tolerance: '0.05: new, clean and dry against a season outdoors',
      rows: compared(LIGHT, 0.055),
      leftOut: LEFT_OUT,
    },
    {
      quantity: 'Longwave through covers',
      unit: 'share',
      source: 'Hanson 1963, Kalfas 1988',
      standing: 'read',
      tolerance: '0.06: half the spread of films of one kind',
      rows: compared(LONGWAVE, 0.06),
    },
    {
      quantity: 'Resistance of panes, air films included',
      unit: 'm²K/W',
      source: 'extension and trade charts',
      standing: 'read',
      tolerance: '0.025: the charts differ among themselves by that much',
      rows: compared(RESISTANCE, 0.025),
    },
    {
      quantity: 'Light and longwave of covers',
      unit: 'share',
      source: 'textbooks and makers',
      standing: 'memory',
      tolerance: '0.06, as above',
      rows: compared(REMEMBERED, 0.06),
    },
  ];
}

function compared(printed: readonly Printed[], tolerance: number): readonly ComparedRow[] {
  return printed.map(([id, ours, theirs, excuse]) => ({
    id,
    ours,
    theirs,
    tolerance,
    ...(excuse !== undefined && { excuse }),
  }));
}
