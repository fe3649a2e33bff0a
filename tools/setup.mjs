// First step of `npm start` and `npm test`. Old versions of Node must be able to read this file, so it only checks
// the version and hands over.
const found = process.versions.node;
const [major, minor] = found.split(".").map(Number);

// The page's build tool runs on these (package.json, "engines").
const newEnough = (major === 20 && minor >= 19) || (major === 22 && minor >= 12) || major > 22;

if (!newEnough) {
  process.stderr.write(
    `Feedpath needs Node 20.19 or newer (22.12 or newer of the 22 series); this is Node ${found}.\n` +
      "Install a current Node from https://nodejs.org or with your system's package manager, then run the command again.\n",
  );
  process.exit(1);
}

import("./setup/prepare.mjs").then(({ prepare }) => prepare(process.argv.slice(2)));
