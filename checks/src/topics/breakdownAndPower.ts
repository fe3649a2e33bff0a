/** Air with altitude, gaps and glowing wires, and what standing waves make of current and voltage. */
import {
  cableDielectric,
  coronaOnsetField,
  paschenVoltage,
  peekReference,
  relativeDensity,
  standardAir,
} from "@feedpath/engine";
import { input, type PublishedRow } from "../ledger/publishedRow";
import type { Topic } from "../ledger/topic";

function airAt(row: PublishedRow) {
  const air = standardAir(input(row, "altitude_m"));
  const sea = standardAir(0);
  return {
    p_Pa: air.pressure,
    p_rel: air.pressure / sea.pressure,
    T_K: air.temperature,
    density_rel_to_sea_level: relativeDensity(air, sea.temperature),
    delta_Peek_25C_ref: relativeDensity(air, peekReference),
  };
}

/** Pa m in a Torr cm. */
const torrCentimetre = 101_325 / 760 / 100;

const gap = (row: PublishedRow) => ({ "": paschenVoltage(input(row, "pd_Torr_cm") * torrCentimetre) });

/** Onset on a smooth wire at sea level and 25 degrees Celsius, in kV/cm. */
function glow(row: PublishedRow) {
  const radius = input(row, "radius_cm") / 100;
  const [pair, coaxial] = (["parallel wires", "coaxial"] as const).map((of) => coronaOnsetField(radius, 1, of) / 1e5);
  return { "parallel_wires_kV/cm_peak": pair!, "coaxial_kV/cm_peak": coaxial! };
}

export const breakdownAndPower: Topic = {
  name: "breakdownAndPower",
  title: "Breakdown and power rating",
  evaluators: [
    { rows: /^bd\.air$/, compute: () => ({ "": cableDielectric("air")!.breakdown / 1e6 }) },
    { rows: /^air\.density\./, compute: airAt },
    { rows: /^air\.paschen\.(?!0\.2$)/, compute: gap },
    { rows: /^air\.peek\./, compute: glow },
    { rows: /^bd\.paschen\.min$/, compute: gap },
  ],
};
