import { isInside, type ToldAndMeasured } from '../../rules/index.ts';
import { celsiusFrom, degrees, EIGHTY_PERCENT_Z, fahrenheitFrom, type UnitSystem } from '../ground/units.ts';
import { LINE_HEIGHT, type PlacedLabel, placed } from './curve-layout.ts';
import { card, gridLine, HALO, written } from './curve-svg.ts';
import { FRAME, LOOK, TEXT_SIZE } from './look.ts';
import { type Range, roundTicks, scale, spreadApart } from './scale.ts';
import { element } from './svg.ts';

/** Past nights as they were told and as they came. */
export interface RecordChart {
  readonly title: string;
  readonly subtitle: string;
  readonly units: UnitSystem;
  /** In order; `label` is the day of the month. */
  readonly nights: readonly (ToldAndMeasured & { readonly label: string })[];
  readonly altText: string;
}

export interface PlacedNight {
  readonly x: number;
  /** Upper and lower end of the range told. */
  readonly top: number;
  readonly bottom: number;
  readonly told: number;
  readonly measured: number;
  readonly inside: boolean;
}

export interface RecordLayout {
  readonly nights: readonly PlacedNight[];
  readonly width: number;
  readonly grid: readonly { readonly y: number; readonly label: PlacedLabel }[];
  readonly dates: readonly PlacedLabel[];
  /** Beside the last night: what its marks mean. */
  readonly names: readonly PlacedLabel[];
}

/** Without moments above it there is more room. */
const TOP = 110;
const WIDEST_BAR = 34;
const HEADROOM_K = 1;

/** Places everything of a record so that no two labels meet. */
export function recordLayout({ nights, units }: RecordChart): RecordLayout {
  const half = ({ toldSdK }: ToldAndMeasured) => EIGHTY_PERCENT_Z * toldSdK;
  const values = nights.flatMap((night) => [
    night.toldLowC - half(night),
    night.toldLowC + half(night),
    night.measuredLowC,
  ]);
  const range: Range = [Math.min(...values) - HEADROOM_K, Math.max(...values) + HEADROOM_K];
  const y = scale(range, [FRAME.bottom, TOP]);
  const step = (FRAME.right - FRAME.left) / Math.max(1, nights.length);
  const x = (index: number) => FRAME.left + step * (index + 0.5);
  const placedNights = nights.map((night, index) => ({
    x: x(index),
    top: y(night.toldLowC + half(night)),
    bottom: y(night.toldLowC - half(night)),
    told: y(night.toldLowC),
    measured: y(night.measuredLowC),
    inside: isInside(night),
  }));
  return {
    nights: placedNights,
    width: Math.min(WIDEST_BAR, step * 0.6),
    grid: grid(units, range, y),
    dates: dates(
      nights.map(({ label }) => label),
      x,
    ),
    names: names(placedNights.at(-1)),
  };
}

function grid(units: UnitSystem, [lowC, highC]: Range, y: (value: number) => number): RecordLayout['grid'] {
  const shown = (tempC: number) => (units === 'us' ? fahrenheitFrom(tempC) : tempC);
  const celsius = (value: number) => (units === 'us' ? celsiusFrom(value) : value);
  return roundTicks([shown(lowC), shown(highC)]).map((value) => {
    const at = y(celsius(value));
    const words = `${degrees(celsius(value), units)}°`;
    return { y: at, label: placed([words], 'end', { x: FRAME.left - 8, y: at + 0.38 * TEXT_SIZE }) };
  });
}

/** As many dates as there is room for, the last one always. */
function dates(labels: readonly string[], x: (index: number) => number): PlacedLabel[] {
  const found: PlacedLabel[] = [];
  for (let index = labels.length - 1; index >= 0; index -= 1) {
    const label = placed([labels[index] ?? ''], 'middle', { x: x(index), y: FRAME.bottom + LINE_HEIGHT });
    const next = found.at(-1);
    if (next === undefined || label.box.right + 12 < next.box.left) found.push(label);
  }
  return found.reverse();
}

function names(last: PlacedNight | undefined): PlacedLabel[] {
  if (last === undefined) return [];
  const wanted = [
    { words: ['told'], at: last.told },
    { words: ['read'], at: last.measured },
  ];
  const middles = spreadApart(
    wanted.map(({ at }) => ({ wanted: at, size: LINE_HEIGHT })),
    [TOP, FRAME.bottom],
  );
  return wanted.map(({ words }, index) =>
    placed(words, 'start', { x: FRAME.right + 8, y: (middles[index] ?? 0) + 0.38 * TEXT_SIZE }),
  );
}

/** The record as SVG: the range told as a bar with its middle, what came as a dot, hollow where it fell outside. */
export function recordSvg(chart: RecordChart): string {
  const {
    grid: lines,
    dates: days,
    nights,
    width,
    names: [told, read],
  } = recordLayout(chart);
  return card(chart.title, chart.subtitle, [
    ...lines.map(({ y, label }) => gridLine(y) + written(label, { fill: LOOK.quiet })),
    ...days.map((label) => written(label, { fill: LOOK.quiet })),
    ...nights.map((night) => bar(night, width)),
    ...nights.map(dot),
    told === undefined ? '' : written(told, { fill: LOOK.leaf, ...HALO }),
    read === undefined ? '' : written(read, { fill: LOOK.ink, ...HALO }),
  ]);
}

function bar({ x, top, bottom, told }: PlacedNight, width: number): string {
  const box = { x: x - width / 2, y: top, width, height: bottom - top, rx: 6 };
  const middle = { x1: x - width / 2, x2: x + width / 2, y1: told, y2: told, stroke: LOOK.leaf, 'stroke-width': 5 };
  return element('rect', { ...box, fill: LOOK.band }) + element('line', middle);
}

function dot({ x, measured, inside }: PlacedNight): string {
  const look = inside
    ? { r: 9, fill: LOOK.ink, stroke: LOOK.paper, 'stroke-width': 3 }
    : { r: 9, fill: LOOK.paper, stroke: LOOK.limit, 'stroke-width': 5 };
  return element('circle', { cx: x, cy: measured, ...look });
}
