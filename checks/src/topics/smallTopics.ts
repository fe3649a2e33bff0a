/** Topics of which this version computes a few rows or none yet: they stand in the ledger as not covered. */
import { decibelsPerSUnit, meansOf, swr } from "@feedpath/engine";
import type { Topic } from "../ledger/topic";

const on50 = (resistance: number): number => swr({ re: resistance, im: 0 }, 50);

export const bandsMetersCoils: Topic = {
  name: "bandsMetersCoils",
  title: "Bands, S-meter, coils",
  evaluators: [{ rows: /^smeter\.step$/, compute: () => ({ "": decibelsPerSUnit }) }],
};

export const practice: Topic = {
  name: "practice",
  title: "Facts of practice",
  evaluators: [
    { rows: /^practice\.arith$/, compute: () => ({ "": meansOf(30, 77).arithmetic }) },
    { rows: /^practice\.geom$/, compute: () => ({ "": meansOf(30, 77).geometric }) },
    { rows: /^practice\.swr70$/, compute: () => ({ "": on50(70) }) },
    { rows: /^practice\.swr100$/, compute: () => ({ "": on50(100) }) },
    { rows: /^practice\.swr35$/, compute: () => ({ "": on50(35) }) },
  ],
};

export const exposure: Topic = { name: "exposure", title: "Exposure limits", evaluators: [] };
export const safety: Topic = { name: "safety", title: "Electrical safety: sources of cautions", evaluators: [] };
