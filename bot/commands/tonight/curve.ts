import { PlainProblem } from '../../ground/errors.ts';
import { NIGHT_NAMES, type NightName, namedNight } from '../../outlook/named-night.ts';
import type { Site } from '../../store/port/sites.ts';
import { ownBed } from '../bed/own-beds.ts';
import type { ButtonHandler } from '../command.ts';
import { readerFor, storeOf } from '../kept-for.ts';
import { forecastsOf } from '../site/site-weather.ts';
import { CURVE_PREFIX, curveAsked, curveReply, nightPicture } from './curve-button.ts';
import { siteNight } from './own-nights.ts';

/** The curve of one of the pressing member's beds, worked out anew. */
export const CURVE_BUTTON: ButtonHandler = {
  prefix: CURVE_PREFIX,
  private: true,
  async press(press, services) {
    const { day, bedId } = curveAsked(press.buttonId);
    const store = storeOf(services);
    const bed = await ownBed(store, press.memberId, bedId);
    const night = nightOf(day, press.now, bed.site);
    const reader = await readerFor(press, services);
    const at = await siteNight(bed.site, { night, reader, now: press.now }, store, forecastsOf(services));
    const outlook = at.outlook.beds.find((each) => at.bedOf.get(each.bed)?.id === bed.id);
    if (outlook === undefined) throw new PlainProblem(`${bed.label} has no crop in it now.`);
    return curveReply(await nightPicture(at.outlook, outlook, reader));
  },
};

function nightOf(day: string, now: Date, site: Site): NightName {
  const name = NIGHT_NAMES.find((each) => namedNight(each, now, site)?.day === day);
  if (name === undefined) throw new PlainProblem('That was for a night that is over. For the coming one: /tonight.');
  return name;
}
