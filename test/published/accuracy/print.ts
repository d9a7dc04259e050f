import { type AccuracyLine, accuracyLine, type Comparison, errorOf, isWithin } from './comparison.ts';
import type { Part } from './comparisons.ts';
import { rangeWidths } from './widths.ts';

const HEAD = ['Quantity', 'Source', 'Standing', 'Rows', 'Compared', 'Bias', 'Mean error', 'Worst', 'Within', 'Excused'];
const FIRST_NUMBER = 3;

/** The table, and what sets the width of a range, as they stand in the README. */
export function asMarkdown(all: readonly Part[]): string {
  const tables = all.flatMap(({ title, about, comparisons }) => [
    `### ${title}`,
    '',
    about,
    '',
    ...markdownTable([HEAD, ...comparisons.map((each) => cells(accuracyLine(each)))], FIRST_NUMBER),
    '',
  ]);
  return [...tables, '### What sets the width of a range', '', ...markdownTable([WIDTH_HEAD, ...widthCells()], 1)].join(
    '\n',
  );
}

const WIDTH_HEAD = ['Cover', 'Forecast', 'Clear and calm', 'Cover, soil, sky', 'In all, tonight', 'In three nights'];

function widthCells(): string[][] {
  return rangeWidths().map(({ covers, forecastK, hardForecastK, modelK, tonightK, inThreeNightsK }) => [
    covers,
    ...[forecastK, hardForecastK, modelK, tonightK, inThreeNightsK].map((sdK) => `${sdK.toFixed(1)} K`),
  ]);
}

/** Columns even, as the formatter of the project wants them. */
function markdownTable(lines: readonly (readonly string[])[], firstNumber: number): string[] {
  const widths = columnWidths(lines);
  const rule = widths.map((width, column) => (column < firstNumber ? '-'.repeat(width) : `${'-'.repeat(width - 1)}:`));
  const [head, ...rest] = lines.map((line) => padded(line, widths, firstNumber));
  return [head ?? [], rule, ...rest].map((line) => `| ${line.join(' | ')} |`);
}

function columnWidths(lines: readonly (readonly string[])[]): number[] {
  return (lines[0] ?? []).map((_, column) => Math.max(...lines.map((line) => line[column]?.length ?? 0)));
}

function padded(line: readonly string[], widths: readonly number[], firstNumber: number): string[] {
  return line.map((cell, column) => {
    const width = widths[column] ?? 0;
    return column < firstNumber ? cell.padEnd(width) : cell.padStart(width);
  });
}

/** The table, then every row that is excused or left out with its reason, then the rows per source. */
export function asText(all: readonly Part[]): string {
  const lines = all.map(({ comparisons }) => [HEAD, ...comparisons.map((each) => cells(accuracyLine(each)))]);
  const widths = columnWidths(lines.flat());
  const tables = all.flatMap(({ title, about }, part) => [
    title,
    about,
    ...(lines[part] ?? []).map((line) => padded(line, widths, FIRST_NUMBER).join('  ')),
    '',
  ]);
  return [...tables, ...reasons(all.flatMap(({ comparisons }) => comparisons))].join('\n');
}

/** One object a line of the table, with its rows. */
export function asJson(all: readonly Comparison[]): string {
  return JSON.stringify(
    all.map((comparison) => ({
      ...accuracyLine(comparison),
      tolerance: comparison.tolerance,
      rowsInFull: comparison.rows,
      leftOut: comparison.leftOut ?? [],
    })),
    null,
    1,
  );
}

/** Rows compared and left out, by line. */
export function rowsPerSource(all: readonly Comparison[]): Readonly<Record<string, number>> {
  return Object.fromEntries(
    all.map((comparison) => [
      `${comparison.quantity} — ${comparison.source} — ${comparison.standing}`,
      accuracyLine(comparison).rows,
    ]),
  );
}

function cells(line: AccuracyLine): string[] {
  const { quantity, unit, source, standing, rows, compared, bias, meanAbsoluteError, worst, within, excused } = line;
  const isOfWords = unit === '–';
  const error = (value: number) => (isOfWords || compared === 0 ? '–' : figure(value));
  return [
    isOfWords ? quantity : `${quantity}, ${unit}`,
    source,
    standing,
    String(rows),
    String(compared),
    error(bias),
    error(meanAbsoluteError),
    error(worst),
    String(within),
    String(excused),
  ];
}

/** Two figures, to a hundredth at most: finer would change with the machine. */
function figure(value: number): string {
  const rounded = Number((Math.round(value * 100) / 100).toPrecision(2));
  return String(rounded === 0 ? 0 : rounded).replace('-', '−');
}

function reasons(all: readonly Comparison[]): string[] {
  return all.flatMap(({ quantity, source, tolerance, rows, leftOut = [] }) => [
    `${quantity} (${source}). Tolerance: ${tolerance}.`,
    ...byReason(
      'outside',
      rows
        .filter((row) => !isWithin(row))
        .map((row) => [row.excuse ?? 'NO REASON IS GIVEN.', `${row.id}, by ${figure(errorOf(row))}`]),
    ),
    ...byReason(
      'not compared',
      leftOut.map(({ id, reason }) => [reason, id]),
    ),
  ]);
}

/** A reason once, with the rows that it stands for. */
function byReason(what: string, reasoned: readonly (readonly [reason: string, id: string])[]): string[] {
  const ids = new Map<string, string[]>();
  for (const [reason, id] of reasoned) ids.set(reason, [...(ids.get(reason) ?? []), id]);
  return [...ids].map(([reason, of]) => `  ${what}: ${reason} Rows: ${of.join('; ')}.`);
}
