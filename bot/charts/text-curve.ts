import { clockTime } from '../ground/times.ts';
import { degrees } from '../ground/units.ts';
import type { ChartCurve, CurveChart } from './curve-chart.ts';
import { hourMarks } from './hour-marks.ts';
import { type Range, scale } from './scale.ts';

/** Columns and rows of the drawing itself, without its labels. */
export interface TextSize {
  readonly columns: number;
  readonly rows: number;
}

const USUAL: TextSize = { columns: 56, rows: 11 };
const SIGNS: Readonly<Record<ChartCurve['role'], string>> = { main: '*', beside: '.', other: 'o' };
const LIMIT_SIGNS = { mark: '-', loss: '=' } as const;
const LABEL_WIDTH = 6;

/** The chart in characters, line by line, for a terminal. */
export function textCurve(chart: CurveChart, { columns, rows }: TextSize = USUAL): string[] {
  const range = valueRange(chart);
  const row = (tempC: number) => Math.round(scale(range, [rows - 1, 0])(tempC));
  const grid = Array.from({ length: rows }, () => new Array<string>(columns).fill(' '));
  const put = (r: number, column: number, sign: string) => {
    const line = grid[r];
    if (line !== undefined && column >= 0 && column < columns) line[column] = sign;
  };
  for (const { tempC, weight } of chart.limits) {
    for (let column = 0; column < columns; column += 1) put(row(tempC), column, LIMIT_SIGNS[weight]);
  }
  // What decides is drawn last, over all others.
  for (const curve of chart.curves.toSorted((one, other) => rank(one) - rank(other))) {
    for (let column = 0; column < columns; column += 1) {
      const tempC = valueAt(curve, instantOf(chart, column, columns));
      if (tempC !== undefined) put(row(tempC), column, SIGNS[curve.role]);
    }
  }
  const margin = rowLabels(chart, range, rows);
  return [
    chart.title,
    ...grid.map((line, index) => `${(margin.get(index) ?? '').padStart(LABEL_WIDTH)} |${line.join('').trimEnd()}`),
    axis(chart, columns),
    ...legend(chart),
    ...noteLines(chart.note ?? '', columns + LABEL_WIDTH),
  ];
}

function rank({ role }: ChartCurve): number {
  return role === 'main' ? 1 : 0;
}

function valueRange({ curves, limits }: CurveChart): Range {
  const values = [
    ...curves.flatMap(({ points }) => points.map(({ tempC }) => tempC)),
    ...limits.map(({ tempC }) => tempC),
  ];
  return [Math.min(...values), Math.max(...values) + 1e-6];
}

function instantOf({ from, to }: CurveChart, column: number, columns: number): number {
  return from.getTime() + ((to.getTime() - from.getTime()) * (column + 0.5)) / columns;
}

function valueAt({ points }: ChartCurve, atMs: number): number | undefined {
  const next = points.findIndex(({ at }) => at.getTime() >= atMs);
  const after = points[next];
  const before = points[next - 1] ?? after;
  if (after === undefined || before === undefined) return undefined;
  const span = after.at.getTime() - before.at.getTime();
  const share = span === 0 ? 0 : (atMs - before.at.getTime()) / span;
  return before.tempC + share * (after.tempC - before.tempC);
}

/** Warmest and coldest at the ends, and each limit on its own line. */
function rowLabels({ units, limits }: CurveChart, range: Range, rows: number): ReadonlyMap<number, string> {
  const row = scale(range, [rows - 1, 0]);
  const label = (tempC: number) => `${degrees(tempC, units)}°`;
  return new Map([
    [0, label(range[1])],
    [rows - 1, label(range[0])],
    ...limits.map(({ tempC }): [number, string] => [Math.round(row(tempC)), label(tempC)]),
  ]);
}

function axis(chart: CurveChart, columns: number): string {
  const line = new Array<string>(columns).fill(' ');
  let free = 0;
  for (const { at, label } of hourMarks(chart)) {
    const share = (at.getTime() - chart.from.getTime()) / (chart.to.getTime() - chart.from.getTime());
    const middle = Math.round(share * columns - label.length / 2);
    // Nights are all named, those at the ends a little aside.
    const start = chart.marks === undefined ? middle : Math.max(0, Math.min(columns - label.length, middle));
    if (start < free || start + label.length > columns) continue;
    [...label].forEach((glyph, index) => {
      line[start + index] = glyph;
    });
    free = start + label.length + 1;
  }
  return `${' '.repeat(LABEL_WIDTH + 2)}${line.join('').trimEnd()}`;
}

function legend({ curves, limits, moments, timeZone, units }: CurveChart): string[] {
  const names = curves.map(({ label, role }) => `${SIGNS[role]} ${label}`);
  const lines = limits.map(({ label, tempC, weight }) => `${LIMIT_SIGNS[weight]} ${label} ${degrees(tempC, units)}°`);
  const times = moments.map(({ label, at }) => `${label} ${clockTime(at, timeZone, units === 'us')}`);
  return [names.join('   '), ...pairs(lines), times.join(', ')]
    .filter((line) => line !== '')
    .map((line) => `  ${line}`);
}

/** Two to a line, so that it stays narrow. */
function pairs(words: readonly string[]): string[] {
  const lines: string[] = [];
  for (let index = 0; index < words.length; index += 2) lines.push(words.slice(index, index + 2).join('   '));
  return lines;
}

/** The note broken between words, no wider than the drawing. */
function noteLines(note: string, columns: number): string[] {
  const lines: string[] = [];
  for (const word of note.split(' ').filter((each) => each !== '')) {
    const last = lines.at(-1);
    if (last !== undefined && last.length + 1 + word.length <= columns) lines[lines.length - 1] = `${last} ${word}`;
    else lines.push(`  ${word}`);
  }
  return lines;
}
