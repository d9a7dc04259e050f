import { ASK, ASK_CHOICE } from './ask/ask.ts';
import { BED } from './bed/bed.ts';
import { CHECK } from './check.ts';
import type { ButtonHandler, Command } from './command.ts';
import { helpOn } from './help.ts';
import { ERASE_BUTTON, MYDATA } from './mydata.ts';
import { SHED } from './shed.ts';
import { REMOVE_SITE_BUTTON } from './site/remove-site.ts';
import { SITE } from './site/site.ts';
import { COVERED_BUTTON } from './tonight/covered.ts';
import { MY_BEDS_BUTTON, TONIGHT } from './tonight/tonight.ts';
import { UNITS } from './units.ts';
import { WARNINGS } from './warnings/warnings.ts';

const WITHOUT_HELP: readonly Command[] = [ASK, CHECK, TONIGHT, SITE, BED, SHED, WARNINGS, UNITS, MYDATA];

/** Every command, in the order in which help tells them. */
export const COMMANDS: readonly Command[] = [...WITHOUT_HELP, helpOn(WITHOUT_HELP)];

export const BUTTONS: readonly ButtonHandler[] = [
  ASK_CHOICE,
  COVERED_BUTTON,
  MY_BEDS_BUTTON,
  REMOVE_SITE_BUTTON,
  ERASE_BUTTON,
];
