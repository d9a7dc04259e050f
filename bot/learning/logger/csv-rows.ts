import { CsvError, parse } from 'csv-parse/sync';

/** The fields of a line of a file; the first line is 1. */
export interface CsvRow {
  readonly line: number;
  readonly fields: readonly string[];
}

const DELIMITERS = [';', '\t', ','] as const;
/** Enough lines to tell by. */
const LOOKED_AT = 20;
const LONGEST_RECORD = 20_000;

/** The lines of a separated text with anything in them. A quotation mark that is never closed counts as any other letter. */
export function csvRows(text: string): readonly CsvRow[] {
  const delimiter = delimiterOf(text);
  const rows = parsed(text, delimiter, true) ?? parsed(text, delimiter, false) ?? [];
  return rows.flatMap((fields, index) => (fields.every((field) => field === '') ? [] : { line: index + 1, fields }));
}

function parsed(text: string, delimiter: string, quoted: boolean): string[][] | undefined {
  try {
    return parse(text, {
      delimiter,
      bom: true,
      quote: quoted ? '"' : false,
      relax_quotes: true,
      relax_column_count: true,
      trim: true,
      max_record_size: LONGEST_RECORD,
    });
  } catch (error) {
    if (error instanceof CsvError) return undefined;
    throw error;
  }
}

/** What splits most of the first lines; a comma may be the decimal sign where semicolons or tabs split. */
function delimiterOf(text: string): string {
  const lines = text.slice(0, LONGEST_RECORD).split('\n', LOOKED_AT);
  const splits = (sign: string) => lines.filter((line) => line.includes(sign)).length;
  return DELIMITERS.find((sign) => splits(sign) > lines.length / 2) ?? ',';
}
