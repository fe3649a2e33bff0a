import type { Antenna } from "@feedpath/engine";

/** Feeds of all antennas together: an antenna without explicit feeds has one. */
export const feedCount = (antennas: readonly Antenna[]): number =>
  antennas.reduce((sum, antenna) => sum + Math.max(1, antenna.feeds.length), 0);
