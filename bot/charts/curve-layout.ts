import { clockTime } from '../ground/times.ts';
import { celsiusFrom, degrees, fahrenheitFrom, type UnitSystem } from '../ground/units.ts';
import type { ChartCurve, ChartLimit, CurveChart, CurvePoint } from './curve-chart.ts';
import { hourMarks } from './hour-marks.ts';
import { FRAME, MARGIN, TEXT_SIZE, WIDTH } from './look.ts';
import { type Range, roundTicks, type Scale, scale, spreadApart } from './scale.ts';
import type { Point } from './svg.ts';
import { textWidth } from './text-width.ts';

/** A text with its middle (or start) and the box it fills; lines of one label stand under each other. */
export interface PlacedLabel {
  readonly lines: readonly string[];
  readonly anchor: 'start' | 'middle' | 'end';
  /** Base line of the first line. */
  readonly at: Point;
  readonly box: Box;
}

export interface Box {
  readonly left: number;
  readonly right: number;
  readonly top: number;
  readonly bottom: number;
}

export interface PlacedCurve {
  readonly curve: ChartCurve;
  readonly points: readonly Point[];
  /** Upper edge, then lower edge backwards; empty without a range. */
  readonly band: readonly Point[];
  readonly label: PlacedLabel;
}

export interface PlacedLimit {
  readonly limit: ChartLimit;
  readonly y: number;
  readonly label: PlacedLabel;
}

/** Where everything of a chart stands, in pixels. */
export interface CurveLayout {
  readonly chart: CurveChart;
  readonly night: Range | undefined;
  readonly grid: readonly { readonly y: number; readonly label: PlacedLabel }[];
  readonly hours: readonly { readonly x: number; readonly label: PlacedLabel }[];
  readonly curves: readonly PlacedCurve[];
  readonly limits: readonly PlacedLimit[];
  readonly moments: readonly { readonly x: number; readonly label: PlacedLabel }[];
}

/** A line of text from base line to base line. */
export const LINE_HEIGHT = TEXT_SIZE + 3;
/** Capitals rise so far above the base line, tails hang so far below it, as shares of the size. */
const ASCENT = 0.76;
const DESCENT = 0.22;
/** Between labels that stand side by side. */
const GAP = 14;
/** Room above and below the curves. [K] */
const HEADROOM_K = 1.2;
/** Room for a name above the highest curve. [K] */
const NAME_ROOM_K = 2.5;
/** The same for the name of a limit, as a share of all that is drawn. */
const NAME_ROOM_SHARE = 0.1;
const MOMENT_BASE = 124;

/** Places everything of a chart so that no two labels meet. */
export function curveLayout(chart: CurveChart): CurveLayout {
  const x = scale([chart.from.getTime(), chart.to.getTime()], [FRAME.left, FRAME.right]);
  const range = valueRange(chart);
  const y = scale(range, [FRAME.bottom, FRAME.top]);
  const night = chart.night && ([clamp(x(chart.night.from.getTime())), clamp(x(chart.night.to.getTime()))] as const);
  const curves = placedCurves(chart, x, y);
  return {
    chart,
    night,
    grid: gridLines(chart.units, range, y),
    hours: hourMarks(chart).map(({ at, label }) => ({
      x: x(at.getTime()),
      label: placed([label], 'middle', { x: x(at.getTime()), y: FRAME.bottom + LINE_HEIGHT }),
    })),
    curves,
    limits: placedLimits(chart, y, curves),
    moments: placedMoments(chart, x),
  };
}

/** Coldest and warmest that must be seen, with some room. [°C] */
function valueRange({ curves, limits }: CurveChart): Range {
  const values = [
    ...curves.flatMap((curve) =>
      curve.points.flatMap((point) =>
        curve.role === 'main' ? [point.tempC - bandK(curve, point), point.tempC + bandK(curve, point)] : [point.tempC],
      ),
    ),
    ...limits.map(({ tempC }) => tempC),
  ];
  const [lowC, highC] = [Math.min(...values), Math.max(...values)];
  const nameRoomK = NAME_ROOM_SHARE * (highC - lowC);
  const room = (endC: number) => (isCrowded(endC, limits, nameRoomK) ? Math.max(HEADROOM_K, nameRoomK) : HEADROOM_K);
  const named = curves.some(({ role }) => role === 'other');
  return [lowC - room(lowC), highC + Math.max(room(highC), named ? NAME_ROOM_K : 0)];
}

function bandK({ halfBandK = 0 }: ChartCurve, point: CurvePoint): number {
  return point.halfBandK ?? halfBandK;
}

/** Two limits so near the end that the name of one must stand beyond them. */
function isCrowded(endC: number, limits: CurveChart['limits'], nameRoomK: number): boolean {
  return limits.filter(({ tempC }) => Math.abs(tempC - endC) < nameRoomK).length > 1;
}

function gridLines(units: UnitSystem, [lowC, highC]: Range, y: Scale): CurveLayout['grid'] {
  const shown = (tempC: number) => (units === 'us' ? fahrenheitFrom(tempC) : tempC);
  const celsius = (value: number) => (units === 'us' ? celsiusFrom(value) : value);
  return roundTicks([shown(lowC), shown(highC)]).flatMap((value) => {
    const at = y(celsius(value));
    // So near to the hours that their labels would meet.
    if (at > FRAME.bottom - LINE_HEIGHT / 2) return [];
    const label = `${degrees(celsius(value), units)}°`;
    return { y: at, label: placed([label], 'end', { x: FRAME.left - 8, y: at + (ASCENT * TEXT_SIZE) / 2 }) };
  });
}

function placedCurves({ curves }: CurveChart, x: Scale, y: Scale): PlacedCurve[] {
  const drawn = curves.map((curve) => {
    const points = curve.points.map(({ at, tempC }) => ({ x: x(at.getTime()), y: y(tempC) }));
    const edge = (sign: number) =>
      curve.points.map((point) => ({ x: x(point.at.getTime()), y: y(point.tempC + sign * bandK(curve, point)) }));
    const isBanded = curve.role === 'main' && curve.points.some((point) => bandK(curve, point) > 0);
    return { curve, points, band: isBanded ? [...edge(1), ...edge(-1).reverse()] : [] };
  });
  const beside = drawn.filter(({ curve }) => curve.role !== 'other');
  const middles = spreadApart(
    beside.map(({ points }) => ({ wanted: points.at(-1)?.y ?? FRAME.bottom, size: LINE_HEIGHT })),
    [FRAME.top, FRAME.bottom],
  );
  return drawn.map((each) => {
    const middle = middles[beside.indexOf(each)];
    return { ...each, label: middle === undefined ? abovePeak(each) : besideEnd(each, middle) };
  });
}

function besideEnd({ curve }: Pick<PlacedCurve, 'curve'>, middle: number): PlacedLabel {
  return placed([curve.label], 'start', { x: FRAME.right + 8, y: middle + (ASCENT * TEXT_SIZE) / 2 - 2 });
}

/** The same bed handled otherwise runs near the first curve: it is named where they are furthest apart. */
function abovePeak({ curve, points }: Pick<PlacedCurve, 'curve' | 'points'>): PlacedLabel {
  const peak = points.toSorted((one, other) => one.y - other.y)[0] ?? { x: FRAME.left, y: FRAME.top };
  return placed([curve.label], 'middle', { x: peak.x, y: peak.y - 12 });
}

/** On their lines, wherever curves and other labels leave most room. */
function placedLimits({ limits, units }: CurveChart, y: Scale, curves: readonly PlacedCurve[]): PlacedLimit[] {
  const points = curves.flatMap((each) => each.points);
  const lines = limits.map(({ tempC }) => y(tempC));
  const taken: Box[] = curves.map(({ label }) => label.box);
  return limits.map((limit) => {
    const at = y(limit.tempC);
    const cost = ({ label: { box }, rows }: LimitPlace) =>
      crossed(box, points) +
      LINE_COST * lines.filter((line) => isCrossed(line, at, box)).length +
      ROW_COST * rows +
      LABEL_COST * taken.filter((other) => overlap(box, other)).length +
      (box.bottom > FRAME.bottom + BELOW_FRAME || box.top < FRAME.top - ABOVE_FRAME ? EDGE_COST : 0);
    const places = limitPlaces(`${limit.label} ${degrees(limit.tempC, units)}°`, at);
    const [{ label } = places[0]] = places.toSorted((one, other) => cost(one) - cost(other));
    taken.push(label.box);
    return { limit, y: at, label };
  });
}

/** A point of a curve behind a label counts one; struck through by another limit, it would be read as that one’s name. */
const LINE_COST = 300;
const ROW_COST = 12;
const LABEL_COST = 1000;
const EDGE_COST = 10_000;
/** So far names may reach beyond the frame without meeting the times above it or the hours below. */
const ABOVE_FRAME = 18;
const BELOW_FRAME = 4;
/** So many that four limits at one temperature find their places. */
const MOST_ROWS = 7;

interface LimitPlace {
  readonly label: PlacedLabel;
  /** Further than next to its line. */
  readonly rows: number;
}

/** Above the line and below it, at the left, the right and in the middle; the usual place first. */
function limitPlaces(words: string, y: number): readonly [LimitPlace, ...LimitPlace[]] {
  const above = y - 8;
  const below = y + ASCENT * TEXT_SIZE + 6;
  const start = (base: number) => placed([words], 'start', { x: FRAME.left + 10, y: base });
  const row = (base: number, rows: number) => [
    { rows, label: start(base) },
    { rows, label: placed([words], 'end', { x: FRAME.right - 10, y: base }) },
    { rows, label: placed([words], 'middle', { x: (FRAME.left + FRAME.right) / 2, y: base }) },
  ];
  const further = Array.from({ length: MOST_ROWS }, (_, rows) => [
    ...row(above - rows * LINE_HEIGHT, rows),
    ...row(below + rows * LINE_HEIGHT, rows),
  ]);
  return [{ rows: 0, label: start(above) }, ...further.flat()];
}

export function overlap(one: Box, other: Box): boolean {
  return one.left < other.right && other.left < one.right && one.top < other.bottom && other.top < one.bottom;
}

/** Through the label, or between it and its own line. */
function isCrossed(line: number, own: number, { top, bottom }: Box): boolean {
  return line !== own && line > Math.min(own, top) && line < Math.max(own, bottom);
}

function crossed({ left, right, top, bottom }: Box, points: readonly Point[]): number {
  return points.filter(({ x, y }) => x >= left && x <= right && y >= top - 3 && y <= bottom + 3).length;
}

function placedMoments(chart: CurveChart, x: Scale): CurveLayout['moments'] {
  const labels = chart.moments.map(({ label, at }) => {
    const lines = [label, clockTime(at, chart.timeZone, chart.units === 'us')];
    return { lines, wanted: clamp(x(at.getTime())), size: widest(lines) + GAP };
  });
  const middles = spreadApart(labels, [MARGIN - GAP / 2, WIDTH - MARGIN + GAP / 2]);
  return labels.map(({ lines, wanted }, index) => ({
    x: wanted,
    label: placed(lines, 'middle', { x: middles[index] ?? wanted, y: MOMENT_BASE }),
  }));
}

export function placed(lines: readonly string[], anchor: PlacedLabel['anchor'], at: Point): PlacedLabel {
  const width = widest(lines);
  const left = anchor === 'start' ? at.x : anchor === 'end' ? at.x - width : at.x - width / 2;
  const last = at.y + (lines.length - 1) * LINE_HEIGHT;
  return {
    ...{ lines, anchor, at },
    box: { left, right: left + width, top: at.y - ASCENT * TEXT_SIZE, bottom: last + DESCENT * TEXT_SIZE },
  };
}

function widest(lines: readonly string[]): number {
  return Math.max(...lines.map((line) => textWidth(line, TEXT_SIZE)));
}

function clamp(x: number): number {
  return Math.max(FRAME.left, Math.min(FRAME.right, x));
}
