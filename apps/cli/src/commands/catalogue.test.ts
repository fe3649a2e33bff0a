import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { lineCatalogue, lineFamilies } from "@feedpath/station-file";
import { afterAll, describe, expect, it } from "vitest";
import { exampleText } from "../files/examples";
import { runInProcess as feedpath } from "../testing/runInProcess";

const folder = mkdtempSync(join(tmpdir(), "feedpath-catalogue-"));
afterAll(() => rmSync(folder, { recursive: true }));
const at = (name: string): string => join(folder, name);

describe("feedpath catalogue", () => {
  it("lists all lines by family, one row each", async () => {
    const { out, status } = await feedpath("catalogue");
    expect(status).toBe(0);
    const rows = out.split("\n");
    for (const family of lineFamilies) expect(rows).toContain(family);
    for (const { designation } of lineCatalogue) {
      expect(rows.filter((row) => row.startsWith(`  ${designation}  `))).toHaveLength(1);
    }
  });

  it("compares named lines at a frequency, with every source", async () => {
    const { out } = await feedpath(
      "catalogue",
      "rg-213/u",
      "450-ohm window line",
      "--at",
      "10 MHz",
      "--length",
      "30 m",
    );
    expect(out).toContain("Feed lines at 10 MHz");
    // The sheet's point: 0.62 dB per 100 ft is 2.03 dB per 100 m; the fit meets its points within 5 %.
    expect(out).toMatch(/\n {2}RG-213\/U +\S+ +\S+ +2(\.1)? /);
    for (const line of lineCatalogue.filter(({ designation }) => designation === "RG-213/U")) {
      expect(line.sources.length).toBeGreaterThan(5);
      for (const { status } of line.sources) expect(out.replaceAll(/\s+/g, " ")).toContain(status);
    }
    expect(out).not.toContain("RG-58C/U");
  });

  it("prints one document, null where a further mode can travel", async () => {
    const { out } = await feedpath("catalogue", "RG-218/U", "--at", "100 MHz", "--at", "20 GHz", "--json");
    const { lines, compared } = JSON.parse(out);
    expect(lines[0]).toMatchObject({ designation: "RG-218/U", own: false, jacketDiameter: 0.0221 });
    expect(compared).toMatchObject({ at: 1e8, frequencies: [1e8, 2e10], length: null });
    expect(compared.rows[0].losses[1]).toBeNull();
  });

  it("takes frequency, length and own lines from a station", async () => {
    writeFileSync(at("quarry.yaml"), exampleText("quarry-cottage"));
    const { out } = await feedpath("catalogue", "--station", at("quarry.yaml"), "--json");
    const { compared } = JSON.parse(out);
    expect(compared.at).toBe(7.1e6);
    expect(compared.length).toBe(25);
    const names = compared.rows.map(({ designation }: { designation: string }) => designation);
    expect(names.slice(0, 3)).toEqual(["RG-213/U", "loft cable", "farm drop cable"]);
    expect(names.filter((name: string) => name === "RG-213/U")).toHaveLength(1);
  });

  it("writes a page that draws up to four lines", async () => {
    await feedpath("catalogue", "RG-213/U", "RG-58C/U", "--page", at("two.html"), "--quiet");
    const html = readFileSync(at("two.html"), "utf8");
    expect(html).toContain("<svg");
    expect(html).toContain("MIL-DTL-17 sheet M17/74");
    expect(html).not.toMatch(/<script|https?:/);
  });

  it.each([
    [["RG213"], "RG-213/U"],
    [["ladder line"], "450-ohm window line"],
    [["RG-213/U", "--at", "7.1"], "7.1 MHz"],
    [["RG-213/U", "--length", "7 MHz"], "is a frequency"],
    [["RG-213/U", "--length", "10 m to 20 m"], "--length"],
    [["--page", "nowhere/x.html"], "no folder"],
    [["--units", "cubits"], "metric"],
  ])("%j is answered with what would mend it", async (args, says) => {
    const { status, err } = await feedpath("catalogue", ...args);
    expect(status).toBe(2);
    expect(err).toContain(says);
    expect(existsSync(at("nowhere"))).toBe(false);
  });
});
