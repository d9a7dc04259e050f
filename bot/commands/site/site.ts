import type { Command } from '../command.ts';
import { CHANGE_SITE } from './change-site.ts';
import { COMPARE_SITES } from './compare-sites.ts';
import { LIST_SITES, USE_SITE } from './list-sites.ts';
import { REMOVE_SITE } from './remove-site.ts';
import { SET_SITE } from './set-site.ts';

export const SITE: Command = {
  name: 'site',
  description: 'Where you grow: the bot keeps it to itself',
  actions: {
    set: SET_SITE,
    list: LIST_SITES,
    compare: COMPARE_SITES,
    change: CHANGE_SITE,
    default: USE_SITE,
    remove: REMOVE_SITE,
  },
};
