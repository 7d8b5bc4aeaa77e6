import { type RefObject, useEffect } from "react";

/**
 * Goes on at the rest when what had the focus in an area goes: a button of a remark that is settled or kept takes the
 * keyboard along, which would begin at the top of the page again.
 */
export function useKeptFocus(
  area: RefObject<HTMLElement | null>,
  rest: RefObject<HTMLElement | null>,
): void {
  useEffect(() => {
    const watched = area.current;
    if (watched === null) return;
    let held: Element | null = null;
    const take = ({ target }: FocusEvent) => {
      held = target instanceof Element ? target : null;
    };
    // Whoever leaves by himself leaves something that stays; of what is taken out, some engines tell the same.
    const leave = () => {
      const left = held;
      queueMicrotask(() => {
        if (left?.isConnected && held === left) held = null;
      });
    };
    const look = () => {
      if (held === null || held.isConnected) return;
      held = null;
      if (document.activeElement === document.body) rest.current?.focus();
    };
    const observer = new MutationObserver(look);
    observer.observe(watched, { childList: true, subtree: true });
    watched.addEventListener("focusin", take);
    watched.addEventListener("focusout", leave);
    return () => {
      observer.disconnect();
      watched.removeEventListener("focusin", take);
      watched.removeEventListener("focusout", leave);
    };
  }, [area, rest]);
}
