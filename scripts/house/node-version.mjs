/** The oldest Node that everything in package.json runs on; the same as its `engines`. */
const OLDEST = [20, 19];

/** Ends the process with one clear line when this Node is too old to go on. */
export function requireNode(version = process.versions.node) {
  if (isRecent(version)) return;
  console.error(`Heelstrip needs Node ${OLDEST.join(".")} or newer; this is ${version}.`);
  process.exit(1);
}

function isRecent(version) {
  const [major, minor] = version.split(".").map(Number);
  return major > OLDEST[0] || (major === OLDEST[0] && minor >= OLDEST[1]);
}
