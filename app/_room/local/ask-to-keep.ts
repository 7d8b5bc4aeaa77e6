const KEY = "heelstrip.asked-to-keep";

/**
 * Asks the browser, once in its life, not to clear what is kept here when its disk is full. Called when ink
 * lies here alone for the first time: some browsers pass the question on to the person.
 */
export function askToKeep(): void {
  try {
    if (localStorage.getItem(KEY) !== null) return;
    localStorage.setItem(KEY, "yes");
    void navigator.storage.persist().catch(() => {});
  } catch {
    // A browser that remembers nothing, or knows no such promise, keeps as long as it keeps.
  }
}
