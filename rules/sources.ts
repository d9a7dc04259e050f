/** One published source, cited once. `standing` says how the figures from it may be used. */
export interface Source {
  readonly title: string;
  /** READ: the figure stood in a stored copy of the document. MEMORY: remembered, to be checked. JUDGEMENT: ours. */
  readonly standing: 'READ' | 'MEMORY' | 'JUDGEMENT';
}

/** Every source of a number in `rules/`, by key. Add a block per folder; keep each block sorted. */
export const SOURCES = {
  'common-practice': { title: 'Common practice among growers, no source', standing: 'JUDGEMENT' },
  judgement: { title: 'Judgement of the developers', standing: 'JUDGEMENT' },
} as const satisfies Record<string, Source>;

export type SourceKey = keyof typeof SOURCES;
