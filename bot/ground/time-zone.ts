import tzLookup from '@photostructure/tz-lookup';

/** IANA zone of a place, looked up offline. Near a border it may be the neighbour's, which keeps the same time or an hour off. */
export function timeZoneOf(latitudeDeg: number, longitudeDeg: number): string {
  return tzLookup(latitudeDeg, longitudeDeg);
}
