export type FindingState =
  | 'good'
  /** The bot does its work, but a host should know. */
  | 'look'
  /** The bot cannot do its work so. */
  | 'fix';

/** What one look found. No sentence of it holds a secret, a place or anything that a member wrote. */
export interface Finding {
  readonly topic: 'Settings' | 'Discord' | 'Database' | 'Clock' | 'Forecasts';
  readonly state: FindingState;
  readonly says: string;
  /** What a host should do. */
  readonly todo?: string;
}

/** Makes the findings of one topic. */
export function findingsOn(topic: Finding['topic']) {
  return {
    good: (says: string): Finding => ({ topic, state: 'good', says }),
    look: (says: string, todo: string): Finding => ({ topic, state: 'look', says, todo }),
    fix: (says: string, todo?: string): Finding => ({ topic, state: 'fix', says, ...(todo !== undefined && { todo }) }),
  };
}

/** How it is shown: the state as a word, never by colour. */
export function findingLines(findings: readonly Finding[]): readonly string[] {
  return findings.flatMap(({ topic, state, says, todo }) => [
    `${topic.padEnd(10)} ${state.padEnd(5)} ${says}`,
    ...(todo === undefined ? [] : [`${' '.repeat(17)}→ ${todo}`]),
  ]);
}

export function closingLine(findings: readonly Finding[]): string {
  const count = (state: FindingState) => findings.filter((each) => each.state === state).length;
  const [fixes, looks] = [count('fix'), count('look')];
  if (fixes > 0) return `${fixes} to put right${looks > 0 ? `, ${looks} to look at` : ''}. Then run this again.`;
  return looks > 0 ? `The bot can run; ${looks} to look at.` : 'Everything that was looked at is in order.';
}
