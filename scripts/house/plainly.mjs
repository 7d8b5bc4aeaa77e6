/** Runs a script's work; an error ends it with its message and code 1, without a stack. */
export async function plainly(work) {
  try {
    await work();
  } catch (error) {
    console.error(error instanceof Error ? error.message : error);
    process.exit(1);
  }
}
