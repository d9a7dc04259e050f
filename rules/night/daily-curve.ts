/** After the warmest hour a quarter of the day's range is lost in two hours, then the night cools exponentially. */
const EVENING_AFTER_PEAK_H = 2;
const LOST_BY_EVENING_FRACTION = 0.25;
const COOLING_EXPONENT = 2.2;
const HOURS_PER_DAY = 24;

export interface DailyCurve {
  readonly lowC: number;
  /** Warmest less coldest. [K, 0…] */
  readonly rangeK: number;
  /** From the morning low to the warmest hour. [h, 1…20] */
  readonly peakAfterH: number;
}

/**
 * Air temperature through a clear or evenly clouded day between two equal morning lows.
 *
 * @param curve - Low, range and hour of the peak.
 * @param sinceLowH - Hours since a morning low; days repeat. [h]
 * @returns Sine up to the peak, quarter cosine down for two hours, exponential to the next low. [°C]
 *
 * @see The model's own generator of reference weather (`judgement`): common shape of clear days, no single source
 */
export function dailyCurveC({ lowC, rangeK, peakAfterH }: DailyCurve, sinceLowH: number): number {
  const hour = ((sinceLowH % HOURS_PER_DAY) + HOURS_PER_DAY) % HOURS_PER_DAY;
  if (hour <= peakAfterH) return lowC + rangeK * Math.sin((Math.PI / 2) * (hour / peakAfterH));
  const highC = lowC + rangeK;
  const eveningH = peakAfterH + EVENING_AFTER_PEAK_H;
  if (hour <= eveningH) {
    const quarter = (Math.PI / 2) * ((hour - peakAfterH) / EVENING_AFTER_PEAK_H);
    return highC - LOST_BY_EVENING_FRACTION * rangeK * (1 - Math.cos(quarter));
  }
  const nightShare = (hour - eveningH) / (HOURS_PER_DAY - eveningH);
  const last = Math.exp(-COOLING_EXPONENT);
  const left = (Math.exp(-COOLING_EXPONENT * nightShare) - last) / (1 - last);
  return lowC + (1 - LOST_BY_EVENING_FRACTION) * rangeK * left;
}
