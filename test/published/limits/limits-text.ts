import type { Tolerance } from '../../../rules/crops/crop.ts';
import { CROP_NAMES } from '../../../rules/crops/crop-names-table.ts';
import type { Told } from '../../../rules/crops/limit-fit.ts';
import { limitsOf, wholeFit } from '../../../rules/crops/limits.ts';
import type { Subject } from '../../../rules/crops/subjects.ts';

const HEAD = `/** First mark, half lost, killed [°C of the organ] and their spread [K]. */
type Line = readonly [firstMarkC: number, lt50C: number, killC: number, sdK: number];

/** Limits of one organ. */
export interface LimitsOfOrgan {
  readonly unhardened: Line;
  /** Absent where cold does not harden it. */
  readonly hardened?: Line;
}

export interface LimitsRow extends LimitsOfOrgan {
  /** How many statements of sources speak of the part that is eaten. */
  readonly statementCount: number;
  readonly other?: LimitsOfOrgan;
}

/** The limits that the statements of all sources come to (\`limit-statements\`). Written by \`npm run limits\`: change the rows instead. */
export const LIMITS: Readonly<Record<string, LimitsRow>> = {
`;

/** The table of fitted limits as it stands in the source. */
export function limitsTable(): string {
  const { told } = wholeFit();
  const rows = CROP_NAMES.map(({ id }) => {
    const [eaten, other] = told.filter(({ subject }) => subject.cropId === id);
    if (eaten === undefined) throw new Error(`${id} has no organ`);
    const more = other === undefined ? '' : `, other: { ${organText(other.subject)} }`;
    return `  '${id}': { ${organText(eaten.subject)}, statementCount: ${ownStatements(eaten)}${more} },\n`;
  });
  return `${HEAD}${rows.join('')}};\n`;
}

/** Statements that name the crop itself. */
function ownStatements({ subject, statements }: Told): number {
  return subject.rows.length === 0 ? 0 : statements.length;
}

function organText(subject: Subject): string {
  const { unhardened, hardened } = limitsOf(wholeFit().fit, subject);
  return [`unhardened: ${lineText(unhardened)}`, ...(subject.hardens ? [`hardened: ${lineText(hardened)}`] : [])].join(
    ', ',
  );
}

function lineText({ firstMarkC, lt50C, killC, sdK }: Tolerance): string {
  return `[${[firstMarkC, lt50C, killC, sdK].map((value) => Number(value.toFixed(2))).join(', ')}]`;
}
