import type { View } from "../../lib/geometry";
import type { PanelId } from "../../lib/sheet";
import { type Presence, readPresence } from "../../shared/presence";
import type { DocumentLine } from "./document-line";
import { freeHue } from "./free-hue";
import { keepMe, keptMe, type Me, newcomer } from "./me";
import { createStore, type Store } from "./store";
import { tellApart } from "./tell-apart";

/** Somebody else who is connected to this sheet, by a name that nobody else here goes by. */
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
  /** What the others see this person called: their name, with a number if another has it too. */
  readonly called: Store<string>;
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
  const kept = keptMe();
  const me = createStore<Me>(kept ?? newcomer());
  let chosen = kept !== null; // a hue that was chosen is not changed under anybody's hand
  const called = createStore(me.get().name);
  const others = createStore<readonly Person[]>([]);
  let arriving = true;
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
    const mine = { client: awareness.clientID, hue: me.get().hue };
    const hue = freeHue(mine, seen, arriving);
    arriving &&= seen.length === 0;
    if (!chosen && hue !== me.get().hue) {
      me.set({ ...me.get(), hue });
      tell();
    }
    const names = tellApart([...seen, { client: awareness.clientID, name: me.get().name }]);
    const named = seen.map((person) => ({ ...person, name: names.get(person.client) ?? "" }));
    others.set(named.sort((a, b) => a.name.localeCompare(b.name) || a.client - b.client));
    called.set(names.get(awareness.clientID) ?? me.get().name);
  };
  awareness.on("change", listen);
  tell(); // a state never set is invisible to the others

  return {
    me,
    called,
    others,
    rename(next) {
      keepMe(next);
      chosen = true;
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
