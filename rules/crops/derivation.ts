import type { Tolerance } from './crop.ts';
import type { CropId } from './crop-names-table.ts';
import type { HardinessRow } from './hardiness-row.ts';
import { statementSdK } from './limit-fit.ts';
import { limitsOf, wholeFit } from './limits.ts';
import type { Statement } from './statement.ts';
import { listedRows } from './statements.ts';
import { type Subject, subjectsOf } from './subjects.ts';

/** One statement and what it did. */
export interface HeardStatement {
  readonly statement: Statement;
  /** Its whole error. [K] */
  readonly sdK: number;
  /** How far it moved first mark and half lost, at the hardening that it speaks of. [K] */
  readonly movedMarkK: number;
  readonly movedLossK: number;
}

/** How the limits of one organ came about. */
export interface OrganDerivation {
  readonly subject: Subject;
  readonly unhardened: Tolerance;
  readonly hardened: Tolerance;
  readonly heard: readonly HeardStatement[];
  readonly setAside: readonly { readonly row: HardinessRow; readonly reason: string }[];
}

/**
 * How the limits of a crop came about: what each source says, with what error, and what it moved.
 *
 * @param cropId - Key of a crop of the table.
 * @returns The part that is eaten first. The first call fits all crops, about a second.
 * @see limit-statements
 */
export function derivation(cropId: CropId): readonly OrganDerivation[] {
  const { fit, told } = wholeFit();
  return subjectsOf(cropId).map((subject) => {
    const statements = told.find((one) => isSame(one.subject, subject))?.statements ?? [];
    const moved = (statement: Statement, about: Statement['about']) =>
      fit.movedK(statement, subject, about, statement.hardeningIndex);
    return {
      subject,
      ...limitsOf(fit, subject),
      heard: statements.map((statement) => ({
        statement,
        sdK: statementSdK(statement, subject),
        movedMarkK: moved(statement, 'mark'),
        movedLossK: moved(statement, 'loss'),
      })),
      setAside: listedRows(subject).flatMap(({ row, reason }) => (reason === undefined ? [] : [{ row, reason }])),
    };
  });
}

function isSame(a: Subject, b: Subject): boolean {
  return a.cropId === b.cropId && a.part === b.part;
}
