import { CLOSE } from "../shared/close-code";
import { HUB_LIMITS, LIMITS } from "../shared/limits";
import {
  type AwarenessEntry,
  encodeAwareness,
  encodeRelayedLive,
  isUpdateFrame,
  type PageMessage,
  readAwareness,
  readPageMessage,
} from "../shared/protocol";
import { mayWrite, type Role } from "../shared/role";
import type { Claims } from "./claims";
import type { Clock } from "./clock";
import type { Visitor } from "./connection";
import type { Notices } from "./notices";
import { createNewestFirst } from "./pace";
import type { Member, Room } from "./room";
import { createSavedCount } from "./saved-count";

/** Where the frames of one page are read and done. */
export interface PageDesk {
  receive(frame: Uint8Array): void;
  end(): void;
}

export interface PageDeskDeps {
  readonly room: Room;
  readonly member: Member;
  readonly visitor: Visitor;
  /** Asked for every frame anew, for it may rise and fall. */
  readonly role: () => Role;
  readonly clock: Clock;
  readonly claims: Claims;
  readonly notices: Notices;
  readonly close: (code: number, reason: string) => void;
}

export function createPageDesk(deps: PageDeskDeps): PageDesk {
  const { room, member, visitor, role, clock, notices, close } = deps;
  const writes = () => mayWrite(role(), visitor.document);
  const count = createSavedCount(member.send);
  const self = createSelf(deps);
  const live = createNewestFirst<Uint8Array>(
    { perSecond: LIMITS.livePerSecond, burst: LIMITS.liveBurst },
    clock,
    (payload) => room.pass(encodeRelayedLive(self.client() ?? 0, payload), member, "passing"),
    () => notices.coalesced("live"),
  );
  let bad = 0;

  const takeUpdate = (update: Uint8Array, frame: number, limit: number) => {
    const refusal =
      update.length > limit
        ? { code: "size" as const, message: `an update has at most ${limit} bytes` }
        : room.take({
            ...{ member, update, device: visitor.device, mayWrite: writes() },
            committed: () => count.settle(frame),
          });
    if (refusal === null) return notices.updateTaken();
    notices.refused(refusal.code, visitor);
    count.refuse(frame, refusal);
  };
  const handle = (message: PageMessage, frame: number) => {
    switch (message.kind) {
      case "step1":
        return room.answer(member, message.stateVector);
      case "update":
        return takeUpdate(
          message.update,
          frame,
          message.first ? LIMITS.firstAnswerBytes : LIMITS.updateBytes,
        );
      case "awareness":
        return self.speak(message.body);
      case "query-awareness":
        return member.send(encodeAwareness(room.presence.all()), "passing");
      case "live":
        if (writes() && message.payload.length <= LIMITS.liveBytes) live.offer(message.payload);
    }
  };
  return {
    receive(bytes) {
      const frame = isUpdateFrame(bytes) ? count.next() : 0;
      try {
        handle(readPageMessage(bytes), frame);
      } catch {
        // Only what comes from outside can fail here: a frame, a state vector, an awareness body.
        notices.refused("damaged", visitor);
        if (frame > 0) count.refuse(frame, { code: "damaged", message: "the frame is cut short" });
        if (++bad > HUB_LIMITS.badFrames) close(CLOSE.badFrames, "too many frames cannot be read");
      }
    },
    end() {
      live.stop();
      self.end();
    },
  };
}

/** The one client id a connection speaks for. */
function createSelf({ room, member, visitor, clock, claims, notices, close }: PageDeskDeps) {
  const hasPresence = visitor.document === "drawing";
  const told = createNewestFirst<AwarenessEntry>(
    { perSecond: LIMITS.awarenessPerSecond, burst: LIMITS.awarenessPerSecond },
    clock,
    (entry) => {
      notices.awarenessPassed();
      room.pass(encodeAwareness([entry]), member, "presence");
    },
    () => notices.coalesced("awareness"),
  );
  let client: number | null = null;
  const claim = (wanted: number): boolean => {
    if (!claims.take(visitor.sheet, wanted, visitor.device)) {
      close(CLOSE.clientTaken, "another device is present under this client id");
      return false;
    }
    client = wanted;
    return true;
  };
  if (visitor.client !== null) claim(visitor.client);

  return {
    client: () => client,
    speak(body: Uint8Array) {
      const entries = readAwareness(body);
      if (!hasPresence) return;
      const first = entries[0];
      if (client === null && (first === undefined || !claim(first.client))) return;
      const own = entries.find((entry) => entry.client === client);
      if (own === undefined || own.state.length > LIMITS.awarenessBytes) return;
      JSON.parse(own.state); // others would choke on what is not JSON
      if (room.presence.set(own, member)) told.offer(own);
    },
    end() {
      told.stop();
      if (client !== null) claims.release(visitor.sheet, client);
    },
  };
}
