import type { BedAsLaid, CoverKey } from '../../../rules/index.ts';
import { difference, temperature } from '../../ground/units.ts';
import { COUNTED_BED_M2 } from '../../language/conditions/measures.ts';
import type { Understood } from '../../language/understood.ts';
import { isCover } from '../../text/night-words.ts';
import type { Reader } from '../../text/reader.ts';
import type { AskedNight } from './asked-night.ts';

/** A difference that no thermometer in a bed shows (judgement). [K] */
const NOTHING_K = 0.3;
const JUG_KG = 3.8;
const BED = { us: '4 by 8 ft', metric: '1.2 by 2.4 m' } as const;
const JUG = { us: 'gallon jugs', metric: '4-litre bottles' } as const;

/** What is done besides covering, each with what it brings tonight; worked out with it and without. */
export function measureLines(
  covers: readonly CoverKey[],
  understood: Understood,
  night: AskedNight,
  reader: Reader,
): string[] {
  const telling = { covers, understood, night, reader };
  return [openingLine(telling), waterLine(telling), heatLine(telling), soilLine(telling), placeLine(telling)].filter(
    (line) => line !== undefined,
  );
}

interface Telling {
  readonly covers: readonly CoverKey[];
  readonly understood: Understood;
  readonly night: AskedNight;
  readonly reader: Reader;
}

function low(night: AskedNight, bed: BedAsLaid): number {
  const found = night.under(bed);
  return found.kind === 'unsound' ? Number.NaN : found.leafLowC;
}

/** "bring about 3 °F (leaf low about 24 °F with, 21 °F without)". */
function brings(withC: number, withoutC: number, { units }: Reader): string {
  const gainK = withC - withoutC;
  if (Math.abs(gainK) < NOTHING_K) return 'next to nothing tonight';
  const lows = `leaf low about ${temperature(withC, units)} with, ${temperature(withoutC, units)} without`;
  const word = gainK > 0 ? 'about' : 'a loss of about';
  return `${word} ${difference(Math.abs(gainK), units)} (${lows})`;
}

const SHUT = { areaRatio: 0, heightM: 0 } as const;
const OPEN_WORDS = {
  open: 'Open all night',
  end: 'With an end or door open',
  ajar: 'Left ajar',
  hole: 'With the hole',
} as const;
const SHUT_WORDS = {
  open: 'Shut it first',
  end: 'Shut it first',
  ajar: 'Shut it first',
  hole: 'Tape the hole first',
} as const;

function openingLine({ covers, understood: { measures }, night, reader }: Telling): string | undefined {
  const opening = measures?.opening;
  if (opening === undefined || !covers.some(isCover)) return undefined;
  const openC = low(night, { covers });
  const shutC = low(night, { covers, opening: SHUT });
  const lostK = shutC - openC;
  const lost = lostK < NOTHING_K ? 'costs next to nothing tonight' : `costs about ${difference(lostK, reader.units)}`;
  return `${SHUT_WORDS[opening]}. ${OPEN_WORDS[opening]} it ${lost} (leaf low about ${temperature(openC, reader.units)}; shut ${temperature(shutC, reader.units)}).`;
}

function waterLine({ covers, understood, night, reader }: Telling): string | undefined {
  const { waterKg } = understood.measures ?? {};
  if (!covers.includes('jugs')) return undefined;
  const bare = covers.filter((key) => key !== 'jugs');
  if (!bare.some(isCover))
    return 'Water jugs in the open bring nothing: their warmth is gone with the air. Put a cover over them.';
  const count = waterKg === undefined ? undefined : Math.round(waterKg / JUG_KG);
  const kilograms = waterKg ?? DEFAULT_KG;
  const said = count === undefined ? `About ${Math.round(DEFAULT_KG / JUG_KG)}` : String(count);
  const gain = brings(low(night, { covers }), low(night, { covers: bare }), reader);
  const more = low(night, { covers, waterKgPerM2: Math.min(200, (4 * kilograms) / COUNTED_BED_M2) });
  return `Water: ${said} ${JUG[reader.units]} in a bed of ${BED[reader.units]}: ${gain}. Four times as many: leaf low about ${temperature(more, reader.units)}. Stand them in the sun by day.`;
}

/** As `coverStack` takes where nothing is said: 20 kg m⁻². */
const DEFAULT_KG = 20 * COUNTED_BED_M2;

function heatLine({ covers, understood: { measures }, night, reader }: Telling): string | undefined {
  const heatWPerM2 = measures?.heatWPerM2;
  if (heatWPerM2 === undefined) return undefined;
  const watts = Math.round(heatWPerM2 * COUNTED_BED_M2);
  const gain = brings(low(night, { covers }), low(night, { covers, heatWPerM2: 0 }), reader);
  return `Heat: ${watts} W on a bed of ${BED[reader.units]} (${Math.round(heatWPerM2)} W per m²): ${gain}.`;
}

function soilLine({ covers, understood: { measures }, night, reader }: Telling): string | undefined {
  const soil = measures?.soil;
  if (soil === 'bench') {
    return 'Pots and trays on a bench: this is the low of the leaves. Roots in pots freeze long before roots in the ground: set them on the soil, close together, and pack straw between.';
  }
  if (soil !== 'watered' && soil !== 'dry') return undefined;
  const gain = brings(low(night, { covers, soilKind: 'moist' }), low(night, { covers, soilKind: 'dry' }), reader);
  return `Watering dry soil by noon: ${gain}. Soil that is moist already gains nothing; keep leaves and covers dry.`;
}

function placeLine({ covers, understood: { exposure }, night, reader }: Telling): string | undefined {
  const open = night.inTheOpen?.();
  if (open === undefined || (exposure !== 'wall' && exposure !== 'tree' && exposure !== 'sheltered')) return undefined;
  const what = { wall: 'The wall', tree: 'The tree', sheltered: 'The shelter' }[exposure];
  return `${what}: ${brings(low(night, { covers }), low(open, { covers }), reader)}, where it hides a good part of the sky.`;
}
