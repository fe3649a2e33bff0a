/** Lines between feeds begin and end at feeds of their antenna. */
import { feedNames } from "../building/antennas";
import { fault } from "../building/build";
import type { Checked } from "./checked";
import { checkName } from "./references";

export function checkJoined(checked: Checked): void {
  for (const antenna of checked.antennas) {
    const feeds = feedNames(antenna);
    (antenna.written.joined ?? []).forEach((one, index) => {
      const path = [...antenna.path, "joined", index];
      if ("at" in one) {
        checkName(checked, one.at, feeds, "No feed of this antenna", [...path, "at"]);
        return;
      }
      checkName(checked, one.from, feeds, "No feed of this antenna", [...path, "from"]);
      checkName(checked, one.to, feeds, "No feed of this antenna", [...path, "to"]);
      if (one.from !== one.to) return;
      const message =
        "What lies between feeds joins two of them: from and to are the same. On one feed it is a stub, or across.";
      checked.build.report([...path, "to"], "value", fault(message, "another feed"));
    });
  }
}
