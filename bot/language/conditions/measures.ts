import type { SaidMeasures } from '../understood.ts';
import { matchesIn, type SpanText, spansOfMatch } from './span-text.ts';

export interface MeasuresRead {
  readonly measures?: SaidMeasures;
  /** Spans of counts and powers: none of them is a low. */
  readonly at: readonly number[];
}

const KG_PER: Readonly<Record<string, number>> = { gallon: 3.8, litre: 1 };
/** Usual sizes of vessels where none is said: a milk jug, a drinks bottle, a drum, a bucket (common practice). [kg of water] */
const KG_OF_VESSEL: Readonly<Record<string, number>> = {
  jug: 3.8,
  bottle: 2,
  barrel: 200,
  drum: 200,
  butt: 200,
  bucket: 15,
  container: 20,
};
const COUNTED =
  / (\d+)(?: x)?(?: (?:(\d+(?:\.\d+)?) )?(gallons?|gal|litres?|liters?|l))?(?: (?:plastic|black|milk|water|big|full|filled|clear|painted|large|small|dark|old|of|rain|warm|hot|soda|pop)){0,3} (jugs?|milk jugs?|water jugs?|bottles?|barrels?|drums?|butts?|buckets?|containers?)\b/g;
const SIZED =
  / (\d+(?:\.\d+)?|one|two|five) (gallons?|gal|litres?|liters?|l)(?: \S+){0,2} (?:jugs?|bottles?|barrels?|drums?|butts?|buckets?|containers?|of water|water)\b/g;
const WATER =
  / (?:jugs?|bottles?|barrels?|drums?|butts?|containers?)\S* | (?:water|milk|gallon)[^ ]* jugs?| jugs? | (?:of|with) water(?= )/;
const HOT = / (?:hot|boiling|kettle)(?= )/;
const WARM = / (?:warm|lukewarm|tap)(?= )/;
/** Hot and warm water from the tap (common practice). [°C] */
const HOT_C = 50;
const WARM_C = 35;

const WATTS = / (\d+(?:\.\d+)?) ?(?:watts?|w)(?: (?:per|a|\/) (?:square |sq )?(foot|ft|m|metre|meter|m2|ft2))?(?= )/g;
const HEAT =
  / (?:heat|heating|heated|soil|warming|propagation|seedling|electric|christmas|xmas|fairy|string|incandescent|c9|c7)(?: \S+)? (?:cables?|mats?|wires?|tapes?|lights?|bulbs?|heater|lamp)\b| (?:light ?bulbs?|lightbulbs?|bulb|lamp|heater|cables?)(?= )/;
const M2_PER_FT2 = 0.0929;
/** A soil cable as sold: 10 W per square foot (common practice). [W m⁻²] */
const USUAL_CABLE_W_PER_M2 = 108;
const CABLE = / (?:heat|heating|soil|soil heating|soil warming) cables?(?= )| (?:heat|heating) mats?(?= )/;
/** Bed that a count or a power is spread over where none is said: 4 by 8 ft, as the common frame. [m²] */
export const COUNTED_BED_M2 = 3;

const OPENINGS: readonly (readonly [keyof typeof OPENING_SIZES, RegExp])[] = [
  [
    'open',
    / (?:left|leave|leaving|stays?|wide|forgot to (?:shut|close)|forgot to|lid|lids|door|doors|with the lid|with the door) (?:\S+ ){0,3}(?:open|off|up)(?= )| wide open(?= )/,
  ],
  [
    'end',
    / (?:one end|an end|the end|ends?|both ends|door|doors|sides?|flaps?) (?:\S+ ){0,2}(?:open|up|off|rolled up|unzipped|missing)(?= )| open ends?(?= )/,
  ],
  [
    'ajar',
    / (?:ajar|cracked|propped|cracked open|propped open|vented|open a crack|an inch open|slightly open|open an inch)(?= )/,
  ],
  [
    'hole',
    / (?:holes?|a hole|torn|tear|tears|rip|rips|ripped|gap|gaps|broken pane|missing pane|cracked pane|split|holey)(?= )/,
  ],
];
/** Opening per area of floor, and its height (judgement): a lid off its frame, an end of a tunnel, a hand's breadth, a rip. */
export const OPENING_SIZES = {
  open: { areaRatio: 0.6, heightM: 0.3 },
  end: { areaRatio: 0.12, heightM: 0.4 },
  ajar: { areaRatio: 0.06, heightM: 0.1 },
  hole: { areaRatio: 0.015, heightM: 0.1 },
} as const;

const SOILS: readonly (readonly [NonNullable<SaidMeasures['soil']>, RegExp])[] = [
  [
    'watered',
    / (?:water(?:ing)? (?:the |my )?(?:soil|bed|beds|ground)|moist soil|moisten|damp soil|wet soil|soak(?:ing)? (?:the |my )?(?:soil|bed|ground)|wet the (?:soil|bed|ground)|watering|should i water|do i water|irrigate)(?= )/,
  ],
  ['dry', / (?:dry soil|dry ground|soil is dry|soil is bone dry|bone dry|dry bed|very dry)(?= )/],
  ['raised-bed', / raised beds?(?= )/],
  ['bench', / (?:on|in) (?:a |the |my )?(?:\S+ )?(?:bench|benches|shelf|shelves|table|staging|rack)(?= )/],
];

/** What a grower does before the night besides covering: water, heat, moist soil; and what stands open. */
export function readMeasures(read: SpanText): MeasuresRead {
  const { text } = read;
  const heat = HEAT.test(text) ? matchesIn(read, WATTS) : [];
  const counts = matchesIn(read, COUNTED);
  const sizes = WATER.test(text) ? matchesIn(read, SIZED) : [];
  const opening = firstThatHolds(OPENINGS, text);
  const soil = firstThatHolds(SOILS, text);
  const waterKg = waterOf(counts, sizes);
  const heatWPerM2 = heat[0] ? heatOf(heat[0]) : CABLE.test(text) ? USUAL_CABLE_W_PER_M2 : undefined;
  const waterAtDuskC = WATER.test(text) ? warmthOf(text) : undefined;
  const measures: SaidMeasures = {
    ...(waterKg !== undefined && { waterKg }),
    ...(waterAtDuskC !== undefined && { waterAtDuskC }),
    ...(heatWPerM2 !== undefined && { heatWPerM2 }),
    ...(opening && { opening }),
    ...(soil && { soil }),
  };
  const at = [...heat, ...counts, ...sizes].flatMap((match) => spansOfMatch(read, match));
  return Object.keys(measures).length === 0 ? { at } : { measures, at: numbersAmong(read, at) };
}

function firstThatHolds<T>(rows: readonly (readonly [T, RegExp])[], text: string): T | undefined {
  return rows.find(([, words]) => words.test(text))?.[0];
}

function warmthOf(text: string): number | undefined {
  if (HOT.test(text)) return HOT_C;
  return WARM.test(text) ? WARM_C : undefined;
}

function numbersAmong({ spans }: SpanText, at: readonly number[]): readonly number[] {
  return at.filter((place) => spans[place]?.value !== undefined);
}

function waterOf(counts: readonly RegExpExecArray[], sizes: readonly RegExpExecArray[]): number | undefined {
  const [counted] = counts;
  const [sized] = sizes;
  const said = sized && Number(sized[1]) * (KG_PER[sized[2]?.startsWith('l') ? 'litre' : 'gallon'] ?? 1);
  if (counted === undefined) return said;
  const [, count = '1', size, unit, vessel = 'jug'] = counted;
  // "55 gallon barrel" is one of 55 gallons, "6 gallon jugs" are six of one gallon.
  if (unit !== undefined && size === undefined && !vessel.endsWith('s')) return said ?? Number(count) * 3.8;
  const each =
    unit === undefined
      ? vesselKg(vessel)
      : Number(size ?? 1) * (KG_PER[unit.startsWith('l') ? 'litre' : 'gallon'] ?? 1);
  return Number(count) * each;
}

function vesselKg(vessel: string): number {
  return Object.entries(KG_OF_VESSEL).find(([name]) => vessel.includes(name))?.[1] ?? 3.8;
}

function heatOf([, watts = '0', per]: RegExpExecArray): number {
  const value = Number(watts);
  if (per === undefined) return value / COUNTED_BED_M2;
  return per.startsWith('f') ? value / M2_PER_FT2 : value;
}
