/** Loads lie on the wire they hang on. */
import type { Shape } from "@feedpath/engine";
import { fault } from "../building/build";
import { formatAmount } from "../units/formatQuantity";
import type { Checked } from "./checked";

export function checkLoads(checked: Checked): void {
  checked.station.antennas.forEach((antenna, index) => {
    const [only, ...more] = antenna.shapes;
    const path = checked.antennas[index]?.path;
    if (!only || !path || more.length > 0) return;
    antenna.loads.forEach((load, at) => {
      const reach = reachOf(only.shape, load.on);
      if (load.fromFeed === "end" || reach === null || load.fromFeed.value < reach) return;
      const message = `This load lies ${formatAmount(load.fromFeed.value, "length")} from the feed; the wire ends at ${formatAmount(reach, "length")}. At the end itself, write: end.`;
      checked.build.report([...path, "loads", at, "from feed"], "value", fault(message, "a spot on the wire"));
    });
  });
}

/** Length from the feed to the end of what a load hangs on, m; null where this is not checked. */
function reachOf(shape: Shape, on: string): number | null {
  switch (shape.kind) {
    case "dipole":
    case "inverted vee":
    case "folded dipole":
      return shape.length.value / 2;
    case "off-centre dipole":
      if (on === "both legs") return Math.min(shape.legs[0].value, shape.legs[1].value);
      return shape.legs[on === "first leg" ? 0 : 1].value;
    case "vertical":
      return shape.sections.reduce((sum, section) => sum + section.length.value, 0);
    default:
      return null;
  }
}
