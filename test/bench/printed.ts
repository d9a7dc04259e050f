import type { Row } from './row.ts';

/** The longest names are those of `learning`. */
const NAME_WIDTH = 68;

/** Figures as lines to read or, for a program, one JSON object a line. */
export function printed(section: string, rows: readonly Row[], json: boolean): void {
  if (!json) console.log(`\n${section}`);
  for (const row of rows) console.log(json ? JSON.stringify({ section, ...row }) : lineOf(row));
}

function lineOf({ name, value, unit, ratio }: Row): string {
  const shown = value >= 100 || Number.isInteger(value) ? value.toFixed(0) : value.toPrecision(3);
  return `  ${name.padEnd(NAME_WIDTH)} ${shown.padStart(9)} ${unit}${ratio === undefined ? '' : `   (${ratio.toFixed(2)} times)`}`;
}
