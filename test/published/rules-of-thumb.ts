/**
 * What became of each rule of thumb in the compiled list. `compared`: held against our own answer in a test of this folder.
 * `used`: a number of `rules/` comes from it. `said`: one of the cautions or warnings to growers. `left`: nothing of ours answers to it.
 */
export interface ThumbUse {
  readonly kind: 'compared' | 'used' | 'said' | 'left';
  readonly where: string;
}

const compared = (where: string): ThumbUse => ({ kind: 'compared', where });
const used = (where: string): ThumbUse => ({ kind: 'used', where });
const said = (where: string): ThumbUse => ({ kind: 'said', where });
const left = (where: string): ThumbUse => ({ kind: 'left', where });

const OPENING = 'when to open follows from the computed day and a limit, not from the outside air';
const BY_DAY = 'rise in shut covers in the sun';
const TEN_HOURS = 'first and last day under ten hours';
const HARDENING = 'hardening and softening';
const DURATION = 'minutes and hours below a limit are not counted: limits come from whole nights';
const CLASSES = 'verdicts are made of odds, not of classes';
const NITRATE = 'the caution speaks of no figures: babies and a doctor';

export const THUMB_USES: Readonly<Record<string, ThumbUse>> = {
  R001: left(OPENING),
  R002: used('spinach is opened at 60 °F'),
  R003: left(OPENING),
  R004: compared(BY_DAY),
  R005: compared(BY_DAY),
  R006: left('neither date nor sky is told, and its outside is a tunnel'),
  R007: compared(BY_DAY),
  R008: left('tender crops in spring; the low authority of one forum'),
  R009: left(OPENING),
  R010: used('shutting time'),
  R011: compared('facts of the trade: two hours before sunset'),
  R012: compared('dry film after sunset'),
  R013: used('hardened greens are opened at 60 °F on mild days'),
  R014: used('the dark weeks begin under ten hours'),
  R015: compared(TEN_HOURS),
  R016: compared(TEN_HOURS),
  R017: compared(TEN_HOURS),
  R018: compared(TEN_HOURS),
  R019: compared(TEN_HOURS),
  R020: compared(TEN_HOURS),
  R021: compared(TEN_HOURS),
  R022: compared(HARDENING),
  R023: compared(HARDENING),
  R024: used('the week whose lows harden'),
  R025: compared(HARDENING),
  R026: compared(HARDENING),
  R027: left('the calendar is left out: the lows of January do it'),
  R028: compared(HARDENING),
  R029: compared(HARDENING),
  R030: left('water of the plant is not known'),
  R031: compared(HARDENING),
  R032: left('the weeks before hardening are not known'),
  R033: used('full pace of hardening below 2 °C, none above 15 °C'),
  R034: left('one morning, weather not told; thaw is computed from the morning’s own'),
  R035: said('frozen leaves'),
  R036: used('a leaf that touches its cover is judged 1.5 K more tender'),
  R037: used('small rosettes and big heads are judged 1.5 K apart from the rest'),
  R038: left(DURATION),
  R039: left(DURATION),
  R040: left(CLASSES),
  R041: left(CLASSES),
  R042: left(CLASSES),
  R043: used('wet then frozen, wind and the third freeze in a row count 1.5 K each'),
  R044: compared('share of the gain left after a sunless day'),
  R045: left('no number; listed with what is not computed'),
  R046: used('a clear night counts as calm below 2 m/s'),
  R047: compared('gain under a cover: high tunnel in December 2022'),
  R048: compared('wind that takes tunnels'),
  R049: said('wind'),
  R050: said('snow load'),
  R051: left('how far apart bows stand is not asked'),
  R052: compared('weight of snow'),
  R053: compared('snow that must come off'),
  R054: left('when to mulch for the winter is no question of a night'),
  R055: left('when to mulch for the winter is no question of a night'),
  R056: left('straw is taken as 10 cm, as it lies'),
  R057: used('a row of the hardiness table'),
  R058: left('water before frost is advice, not a number'),
  R059: left('growth by soil temperature is not computed'),
  R060: compared('winter greens in Indiana'),
  R061: left('one tunnel, no sizes; the slow weeks are the same that R062 counts'),
  R062: compared('days longer than the packet'),
  R063: said('rhubarb'),
  R064: said('potato'),
  R065: left(NITRATE),
  R066: left(NITRATE),
  R067: left(NITRATE),
  R068: left(NITRATE),
  R069: said('fuel heat'),
  R070: said('electric heat'),
  R071: said('old paint, treated timber, glass'),
  R072: left('the life of a film is not asked'),
  R073: compared('canopy air below the shelter'),
  R074: used('cloud decides the sky’s longwave'),
  R075: left('wet fabric is not computed; listed with what is not'),
  R076: left('one sentence on all covers; each has its own gain'),
};
