import type { Command } from '../command.ts';
import { JOIN_WARNINGS, LEAVE_WARNINGS } from './membership.ts';
import { CHANGE_WARNINGS, PAUSE_WARNINGS, SHOW_WARNINGS, START_WARNINGS, STOP_WARNINGS } from './subscription.ts';

export const WARNINGS: Command = {
  name: 'warnings',
  description: 'Nightly warnings in a channel, early enough to act',
  actions: {
    start: START_WARNINGS,
    show: SHOW_WARNINGS,
    change: CHANGE_WARNINGS,
    pause: PAUSE_WARNINGS,
    stop: STOP_WARNINGS,
    join: JOIN_WARNINGS,
    leave: LEAVE_WARNINGS,
  },
};
