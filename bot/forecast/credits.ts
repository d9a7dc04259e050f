import type { Credit, ForecastService } from './forecast.ts';

/** What each licence asks to be shown beside the data: public domain with a courtesy, CC BY 4.0, CC BY 4.0. */
export const CREDITS: Readonly<Record<ForecastService, Credit>> = {
  nws: { text: 'National Weather Service', url: 'https://www.weather.gov/' },
  metno: { text: 'Data from MET Norway', url: 'https://api.met.no/' },
  openmeteo: { text: 'Weather data by Open-Meteo.com', url: 'https://open-meteo.com/' },
};

/** How a sentence names each service. */
export const SERVICE_TITLES: Readonly<Record<ForecastService, string>> = {
  nws: 'the National Weather Service',
  metno: 'MET Norway',
  openmeteo: 'Open-Meteo',
};
