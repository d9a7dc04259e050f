/** One hour of a forecast cell as last known; a cell is a service's grid place under a key of the forecast side. */
export interface CellHour {
  readonly at: Date;
  readonly airC: number;
  readonly dewPointC: number | undefined;
  readonly cloudFraction: number | undefined;
  readonly wind10MPerS: number | undefined;
  readonly globalWPerM2: number | undefined;
}

/** A service's whole answer for a cell, shared by all processes and still there after a restart. */
export interface CellForecast {
  readonly cellId: string;
  readonly service: string;
  readonly fetchedAt: Date;
  /** Until when the service asks not to be asked again. */
  readonly freshUntil: Date;
  readonly text: string;
}

export interface Weather {
  /** Newer values replace older ones of the same hour; a late older fetch changes nothing. */
  keepHours(cellId: string, hours: readonly CellHour[], fetchedAt: Date): Promise<void>;
  /** From the first instant to before the last, in order. */
  hours(cellId: string, from: Date, before: Date): Promise<readonly CellHour[]>;
  keepForecast(forecast: CellForecast): Promise<void>;
  forecast(cellId: string): Promise<CellForecast | undefined>;
  /** Drops hours and forecasts from before the instant. */
  forget(before: Date): Promise<void>;
}
