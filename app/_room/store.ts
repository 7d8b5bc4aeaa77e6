/** The smallest thing that React can follow: a value, and who wants to hear of the next. */
export interface Store<T> {
  get(): T;
  subscribe(onChange: () => void): () => void;
}

export interface WritableStore<T> extends Store<T> {
  set(value: T): void;
}

export function createStore<T>(initial: T): WritableStore<T> {
  let value = initial;
  const listeners = new Set<() => void>();
  return {
    get: () => value,
    set(next) {
      if (Object.is(next, value)) return;
      value = next;
      for (const listener of [...listeners]) listener();
    },
    subscribe(onChange) {
      listeners.add(onChange);
      return () => listeners.delete(onChange);
    },
  };
}
