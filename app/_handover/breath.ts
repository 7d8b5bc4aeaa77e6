/**
 * Lets everything else have its turn before long work goes on: the pen, other people's ink, the button
 * that stops it.
 *
 * Errors:  AbortError when it was stopped
 */
export async function breath(signal: AbortSignal): Promise<void> {
  signal.throwIfAborted();
  await new Promise((resolve) => setTimeout(resolve));
  signal.throwIfAborted();
}
