import type { Problem, Understood } from './understood.ts';

/** Nothing was understood, for this reason. */
export function declined(problem: Problem): Understood {
  return {
    intent: 'decline',
    asked: 'decline',
    crops: [],
    unknownCrops: [],
    unknownCovers: [],
    beds: { mine: false, numbers: [], named: [] },
    readAs: [],
    cautionTopics: [],
    choices: [],
    assumptions: [],
    problem,
  };
}
