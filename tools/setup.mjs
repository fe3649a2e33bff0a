// First step of `npm start` and `npm test`. Old versions of Node must be able to read this file, so it only checks
// the version and hands over.
const least = 20;
const found = process.versions.node;

if (Number(found.split(".")[0]) < least) {
  process.stderr.write(
    `Feedpath needs Node ${least} or newer; this is Node ${found}.\n` +
      "Install a current Node from https://nodejs.org or with your system's package manager, then run the command again.\n",
  );
  process.exit(1);
}

import("./setup/prepare.mjs").then(({ prepare }) => prepare(process.argv.slice(2)));
