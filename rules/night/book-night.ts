/** What forecast and physics alone say of a night, and how far off they may be. */
export interface BookNight {
  /** [°C] */
  readonly outsideLowC: number;
  /** 0 where the low was named by the asker. [K, ≥ 0] */
  readonly outsideSdK: number;
  /** Of a thermometer among the leaves. [°C] */
  readonly underCoverLowC: number;
  /** Everything included. [K, > 0] */
  readonly underCoverSdK: number;
}
