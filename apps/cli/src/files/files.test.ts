import {
  chmodSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { callerFolder } from "./callerFolder";
import { readBytes } from "./readBytes";
import { referencedFiles } from "./referencedFiles";
import { checkPlaceForFile, replaceFile } from "./replaceFile";

let folder = "";
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "feedpath-files-"));
});
afterAll(() => rmSync(folder, { recursive: true }));

describe("callerFolder", () => {
  it("is the caller's where npm has moved to the folder of its package.json", () => {
    const env = { npm_package_json: join(folder, "package.json"), INIT_CWD: join(folder, "examples") };
    expect(callerFolder(env, folder)).toBe(join(folder, "examples"));
  });

  it("is the current one anywhere else, whatever an outer npm left behind", () => {
    const env = { npm_package_json: join(folder, "package.json"), INIT_CWD: folder };
    expect(callerFolder(env, join(folder, "stations"))).toBe(join(folder, "stations"));
    expect(callerFolder({}, folder)).toBe(folder);
  });
});

describe("readBytes", () => {
  const write = (name: string, content: string | Buffer): string => {
    writeFileSync(join(folder, name), content);
    return join(folder, name);
  };

  it("reads a file as it is", async () => {
    expect((await readBytes(write("plain.yaml", "station: Düne\n"))).toString()).toBe("station: Düne\n");
  });

  it("says what is wrong with a missing file and a folder", async () => {
    await expect(readBytes(join(folder, "none.yaml"))).rejects.toThrow(/There is no file/);
    await expect(readBytes(folder)).rejects.toThrow(/is a folder/);
  });

  it("stops at a file no station can have", async () => {
    await expect(readBytes(write("huge.yaml", Buffer.alloc(2 * 1024 * 1024 + 1, 0x20)))).rejects.toThrow(
      /larger than 2 MB/,
    );
  });
});

describe("referencedFiles", () => {
  it("reads plain files in the station's folder and below, and nothing else", () => {
    const home = join(folder, "home");
    mkdirSync(join(home, "sweeps"), { recursive: true });
    writeFileSync(join(folder, "secret.s1p"), "secret");
    writeFileSync(join(home, "spring.s1p"), "spring");
    writeFileSync(join(home, "sweeps", "autumn.s1p"), "autumn");
    symlinkSync(join(folder, "secret.s1p"), join(home, "link.s1p"));
    symlinkSync(folder, join(home, "way-out"));
    const read = referencedFiles(join(home, "station.yaml"));
    expect(read("spring.s1p")).toBe("spring");
    expect(read("sweeps/autumn.s1p")).toBe("autumn");
    expect(read("sweeps/../spring.s1p")).toBe("spring");
    for (const name of [
      "../secret.s1p",
      "link.s1p",
      "way-out/secret.s1p",
      join(home, "spring.s1p"),
      "",
      ".",
      "sweeps",
      "no.s1p",
    ]) {
      expect(read(name), name).toBeNull();
    }
  });
});

describe("replaceFile", () => {
  it("writes a new file and replaces an old one, keeping its permissions and leaving nothing beside it", () => {
    const place = join(folder, "out");
    mkdirSync(place);
    const file = join(place, "answer.html");
    replaceFile(file, "first");
    chmodSync(file, 0o600);
    replaceFile(file, "second");
    expect(readFileSync(file, "utf8")).toBe("second");
    expect(statSync(file).mode & 0o777).toBe(0o600);
    expect(readdirSync(place)).toEqual(["answer.html"]);
  });

  it("follows a link instead of replacing it", () => {
    writeFileSync(join(folder, "target.html"), "old");
    symlinkSync(join(folder, "target.html"), join(folder, "to-target.html"));
    replaceFile(join(folder, "to-target.html"), "new");
    expect(readFileSync(join(folder, "target.html"), "utf8")).toBe("new");
  });

  it("refuses a folder that is not there, and a folder in place of a file, before any work is done", () => {
    expect(() => checkPlaceForFile(join(folder, "nowhere", "answer.html"))).toThrow(/there is no folder/);
    expect(() => checkPlaceForFile(folder)).toThrow(/is a folder/);
  });
});
