import { BUILD_CORPUS } from './build-corpus.ts';
import { BUILD_FIFTH_CORPUS } from './build-fifth-corpus.ts';
import { BUILD_FOURTH_CORPUS } from './build-fourth-corpus.ts';
import { BUILD_SECOND_CORPUS } from './build-second-corpus.ts';
import { BUILD_THIRD_CORPUS } from './build-third-corpus.ts';
import type { CorpusQuestion } from './corpus-question.ts';
import { REPORT_CORPUS } from './report-corpus.ts';
import { REPORT_FRESH_CORPUS } from './report-fresh-corpus.ts';

/** Every row must hold. */
export const BUILT_ON: readonly CorpusQuestion[] = [
  ...BUILD_CORPUS,
  ...BUILD_SECOND_CORPUS,
  ...BUILD_THIRD_CORPUS,
  ...BUILD_FOURTH_CORPUS,
  ...BUILD_FIFTH_CORPUS,
];

/** Only the score counts. */
export const REPORTED: readonly CorpusQuestion[] = [...REPORT_CORPUS, ...REPORT_FRESH_CORPUS];
