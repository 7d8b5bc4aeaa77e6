const LOOK_EVERY_MS = 500;

/**
 * npm passes a signal to the shell it runs us in, and the shell ends without passing it on: that our
 * parent is gone is then the only sign that we should go, too. Sends this process what npm was sent.
 */
export function endWithNpm() {
  if (process.env.npm_lifecycle_event === undefined) return; // started by hand
  const parent = process.ppid;
  const timer = setInterval(() => {
    if (process.ppid === parent) return;
    clearInterval(timer);
    process.kill(process.pid, "SIGTERM");
  }, LOOK_EVERY_MS);
  timer.unref();
}
