import type { View } from "../../lib/geometry";
import type { PanelId } from "../../lib/sheet";
import { type Presence, readPresence } from "../../shared/presence";
import type { DocumentLine } from "./document-line";
import { keepMe, type Me, readMe } from "./me";
import { createStore, type Store } from "./store";

/** Somebody else who is connected to this sheet. */
export interface Person extends Presence {
  /** The awareness client id: who a live stroke comes from. */
  readonly client: number;
}

export interface Pointer {
  readonly panel: PanelId;
  readonly view: View;
  /** Panel units. */
  readonly x: number;
  readonly y: number;
}

export interface People {
  readonly me: Store<Me>;
  /** The others, by name. */
  readonly others: Store<readonly Person[]>;
  rename(me: Me): void;
  /** Where this person's pencil points; null when it has left the paper. At most 30 a second. */
  point(at: Pointer | null): void;
  close(): void;
}

const POINTER_GAP_MS = 33; // a pencil that moves 30 times a second looks like a hand

export function openPeople(line: DocumentLine): People {
  const { awareness } = line;
  const me = createStore<Me>(readMe());
  const others = createStore<readonly Person[]>([]);
  let pointer: Pointer | null = null;
  let timer: ReturnType<typeof setTimeout> | null = null;

  const tell = () => {
    const at = pointer === null ? null : ([round(pointer.x), round(pointer.y)] as const);
    awareness.setLocalState({
      ...me.get(),
      panel: pointer?.panel ?? null,
      view: pointer?.view ?? null,
      pointer: at,
    });
  };
  const listen = () => {
    const seen: Person[] = [];
    for (const [client, state] of awareness.getStates()) {
      if (client === awareness.clientID) continue;
      const presence = readPresence(state);
      if (presence !== null) seen.push({ ...presence, client });
    }
    others.set(seen.sort((a, b) => a.name.localeCompare(b.name) || a.client - b.client));
  };
  awareness.on("change", listen);
  tell(); // a state never set is invisible to the others

  return {
    me,
    others,
    rename(next) {
      keepMe(next);
      me.set(next);
      tell();
    },
    point(at) {
      pointer = at;
      timer ??= setTimeout(() => {
        timer = null;
        tell();
      }, POINTER_GAP_MS);
    },
    close() {
      if (timer !== null) clearTimeout(timer);
      awareness.off("change", listen);
    },
  };
}

const round = (panelUnits: number): number => Math.round(panelUnits);
