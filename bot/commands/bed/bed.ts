import type { Command } from '../command.ts';
import { ADD_BED } from './add-bed.ts';
import { CHANGE_BED } from './change-bed.ts';
import { PLANT_BED, PULL_BED } from './plant-bed.ts';
import { REMOVE_BED, SHOW_BEDS } from './show-beds.ts';

export const BED: Command = {
  name: 'bed',
  description: 'Your beds: what grows in them and what lies over them',
  actions: {
    add: ADD_BED,
    show: SHOW_BEDS,
    change: CHANGE_BED,
    plant: PLANT_BED,
    pull: PULL_BED,
    remove: REMOVE_BED,
  },
};
