/**
 * Prints the closing line and sets the exit code. Without a single test run there is no such line:
 * it would read as if something had been looked at.
 */
export function closeWith({ passed, failed, skipped }) {
  if (passed + failed + skipped === 0) throw new Error("no test ran");
  console.log(`${passed} passed, ${failed} failed, ${skipped} skipped`);
  process.exitCode = failed === 0 && passed > 0 ? 0 : 1;
}
