import type { CurveChart } from './curve-chart.ts';
import {
  type CurveLayout,
  curveLayout,
  LINE_HEIGHT,
  type PlacedCurve,
  type PlacedLabel,
  type PlacedLimit,
} from './curve-layout.ts';
import { FRAME, HEIGHT, LOOK, MARGIN, TEXT_SIZE, TITLE_SIZE, WIDTH } from './look.ts';
import { FONT_FAMILY } from './picture.ts';
import { element, type Point, pathThrough, textAt } from './svg.ts';
import { fitted } from './text-width.ts';

type Attributes = Readonly<Record<string, string | number>>;

const STROKES: Readonly<Record<'main' | 'beside' | 'other', Attributes>> = {
  main: { stroke: LOOK.leaf, 'stroke-width': 6 },
  beside: { stroke: LOOK.ink, 'stroke-width': 3.5, 'stroke-dasharray': '3 8', 'stroke-linecap': 'round' },
  other: { stroke: LOOK.leaf, 'stroke-width': 4, 'stroke-dasharray': '14 8' },
};
const INKS = { main: LOOK.leaf, beside: LOOK.ink, other: LOOK.leaf } as const;
const LIMIT_STROKES: Readonly<Record<'mark' | 'loss', Attributes>> = {
  mark: { 'stroke-width': 3, 'stroke-dasharray': '12 7' },
  loss: { 'stroke-width': 4.5 },
};

/** A chart as SVG. */
export function curveSvg(chart: CurveChart): string {
  const layout = curveLayout(chart);
  return card(chart.title, chart.subtitle, [
    nightShade(layout),
    ...layout.grid.map(({ y, label }) => gridLine(y) + written(label, { fill: LOOK.quiet })),
    ...layout.hours.map(({ x, label }) => hourTick(x) + written(label, { fill: LOOK.quiet })),
    ...layout.moments.map(({ x, label }) => leader(x, label) + written(label, { fill: LOOK.ink })),
    ...layout.curves.map(({ band }) => shaded(band)),
    ...layout.limits.map(limitLine),
    ...layout.curves.map(({ points, curve }) => line(points, STROKES[curve.role])),
    ...(chart.night === undefined ? [] : layout.curves.map(lowDot)),
    ...(chart.marks === undefined ? [] : layout.curves.flatMap(nightDots)),
    ...layout.limits.map(({ label }) => written(label, { fill: LOOK.limit, ...HALO })),
    ...layout.curves.map(({ label, curve }) => written(label, { fill: INKS[curve.role], ...HALO })),
  ]);
}

/** Letters stand clear of the lines behind them. */
export const HALO: Attributes = {
  stroke: LOOK.paper,
  'stroke-width': 6,
  'paint-order': 'stroke',
  'stroke-linejoin': 'round',
};

/** The paper with title and subtitle; whatever is drawn on it comes in the order given. */
export function card(title: string, subtitle: string, drawn: readonly string[]): string {
  const room = WIDTH - 2 * MARGIN;
  const bold = { 'font-size': TITLE_SIZE, 'font-weight': 700, fill: LOOK.ink };
  const paper = { x: 0, y: 0, width: WIDTH, height: HEIGHT, fill: LOOK.paper, stroke: LOOK.edge };
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      width: WIDTH,
      height: HEIGHT,
      viewBox: `0 0 ${WIDTH} ${HEIGHT}`,
      'font-family': FONT_FAMILY,
      'font-size': TEXT_SIZE,
    },
    [
      element('rect', { ...paper, 'stroke-width': 4 }),
      textAt({ x: MARGIN, y: 46 }, fitted(title, TITLE_SIZE, room, true), bold),
      textAt({ x: MARGIN, y: 80 }, fitted(subtitle, TEXT_SIZE, room), { fill: LOOK.ink }),
      ...drawn,
    ].join(''),
  );
}

export function written({ lines, anchor, at }: PlacedLabel, attributes: Attributes): string {
  return lines
    .map((words, index) =>
      textAt({ x: at.x, y: at.y + index * LINE_HEIGHT }, words, { 'text-anchor': anchor, ...attributes }),
    )
    .join('');
}

function nightShade({ night }: CurveLayout): string {
  if (night === undefined) return '';
  const [left, right] = night;
  const box = { x: left, y: FRAME.top, width: right - left, height: FRAME.bottom - FRAME.top };
  return element('rect', { ...box, fill: LOOK.night });
}

export function gridLine(y: number): string {
  return element('line', { x1: FRAME.left, x2: FRAME.right, y1: y, y2: y, stroke: LOOK.grid, 'stroke-width': 2 });
}

function hourTick(x: number): string {
  const ends = { x1: x, x2: x, y1: FRAME.bottom, y2: FRAME.bottom + 8 };
  return element('line', { ...ends, stroke: LOOK.quiet, 'stroke-width': 2 });
}

/** From the words down to the time that they speak of. */
function leader(x: number, { at, box }: PlacedLabel): string {
  const points = [
    { x: at.x, y: box.bottom + 2 },
    { x, y: FRAME.top - 2 },
    { x, y: FRAME.bottom },
  ];
  return line(points, { stroke: LOOK.edge, 'stroke-width': 2 });
}

function shaded(band: readonly Point[]): string {
  return band.length === 0
    ? ''
    : element('path', { d: `${pathThrough(band)}Z`, fill: LOOK.band, 'fill-opacity': 0.75 });
}

function line(points: readonly Point[], attributes: Attributes): string {
  return element('path', { d: pathThrough(points), fill: 'none', 'stroke-linejoin': 'round', ...attributes });
}

function limitLine({ y, limit }: PlacedLimit): string {
  const ends = { x1: FRAME.left, x2: FRAME.right, y1: y, y2: y };
  return element('line', { ...ends, stroke: LOOK.limit, ...LIMIT_STROKES[limit.weight] });
}

/** A dot for each night. */
function nightDots({ points, curve }: PlacedCurve): string[] {
  return points.map(({ x, y }) =>
    element('circle', { cx: x, cy: y, r: 8, fill: INKS[curve.role], stroke: LOOK.paper, 'stroke-width': 3 }),
  );
}

/** A dot where what decides is coldest. */
function lowDot({ points, curve }: PlacedCurve): string {
  const low = points.reduce<Point | undefined>(
    (coldest, each) => (coldest && coldest.y >= each.y ? coldest : each),
    undefined,
  );
  if (curve.role !== 'main' || low === undefined) return '';
  return element('circle', { cx: low.x, cy: low.y, r: 9, fill: LOOK.leaf, stroke: LOOK.paper, 'stroke-width': 3 });
}
