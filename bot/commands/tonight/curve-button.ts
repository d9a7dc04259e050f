import { nightChart } from '../../charts/night-chart.ts';
import { curvePicture } from '../../charts/pictures.ts';
import type { BedOutlook, NightOutlook } from '../../outlook/night-outlook.ts';
import type { Button, Picture, Reply } from '../../talk/reply.ts';
import type { Reader } from '../../text/reader.ts';

export const CURVE_PREFIX = 'curve:';
/** More would bury the answer. */
const MOST_CURVES = 4;

/** The night of one bed as a picture. */
export function nightPicture(outlook: NightOutlook, bed: BedOutlook, reader: Reader): Promise<Picture> {
  return curvePicture(nightChart(outlook, bed, reader));
}

/**
 * Buttons that show the curves of further beds.
 *
 * @param day - Local day of the evening, `2026-12-31`.
 * @param beds - With their ids, most urgent first.
 */
export function curveButtons(day: string, beds: readonly { readonly id: string; readonly name: string }[]): Button[] {
  return beds
    .slice(0, MOST_CURVES)
    .map(({ id, name }) => ({ id: `${CURVE_PREFIX}${day}:${id}`, label: `Curve: ${name}` }));
}

/** The day and the bed that a button names. */
export function curveAsked(buttonId: string): { readonly day: string; readonly bedId: string } {
  const [day = '', bedId = ''] = buttonId.slice(CURVE_PREFIX.length).split(':');
  return { day, bedId };
}

/** A picture alone; its words are its caption. */
export function curveReply(picture: Picture): Reply {
  return { headline: picture.altText, sections: [], picture, private: true };
}
