import type { Command } from '../command.ts';
import { COMPARE_COVERS } from './compare-covers.ts';
import { COMPARE_FRAME } from './compare-frame.ts';

export const COMPARE: Command = {
  name: 'compare',
  description: 'Covers side by side, or what other walls and a steeper light would change',
  actions: { covers: COMPARE_COVERS, frame: COMPARE_FRAME },
};
