import type { Picture } from '../talk/reply.ts';
import type { CurveChart } from './curve-chart.ts';
import { curveSvg } from './curve-svg.ts';
import { pngOf } from './picture.ts';
import { type RecordChart, recordSvg } from './record-chart.ts';
import { textCurve } from './text-curve.ts';

/** A chart of temperatures as doors show it. */
export async function curvePicture(chart: CurveChart): Promise<Picture> {
  return { name: 'curve.png', png: await pngOf(curveSvg(chart)), altText: chart.altText, text: textCurve(chart) };
}

/** A record of past nights as doors show it; its lines say the same in words. */
export async function recordPicture(chart: RecordChart): Promise<Picture> {
  return { name: 'record.png', png: await pngOf(recordSvg(chart)), altText: chart.altText };
}
