import { Desk } from './desk.ts';
import { FORECAST_SERVICES, type ForecastDesk, type ForecastService } from './forecast.ts';
import { MetnoSource } from './metno.ts';
import { NwsSource } from './nws.ts';
import { OpenMeteoSource } from './openmeteo.ts';
import { Transport, type TransportOptions } from './transport.ts';

export interface DeskOptions extends TransportOptions {
  /** Services to ask, in this order, instead of the usual one. */
  readonly order?: readonly ForecastService[] | undefined;
}

/** The three services behind one desk: the National Weather Service in its area, then MET Norway, then Open-Meteo. */
export function forecastDesk(options: DeskOptions): ForecastDesk {
  const transport = new Transport(options);
  const nws = new NwsSource(transport, options.clockMs);
  return new Desk({
    sources: { nws, metno: new MetnoSource(transport), openmeteo: new OpenMeteoSource(transport) },
    warnings: nws,
    order: options.order ?? FORECAST_SERVICES,
    close: () => transport.close(),
  });
}
