import { limbJoint, otherSide, type Side } from "../../lib/body";
import type { Walk } from "../../lib/gait";
import { alongOf, panelOf } from "./seeded/posed";
import { travelling } from "./seeding";

/** The foot that stays while the walk sets off: the one that does not land first. */
export function staysIn({ panels }: Walk): Side {
  const first = panels.find(({ pose }) => pose === "contact")?.weightOn;
  if (first == null) throw new Error("the first contact has no side");
  return otherSide(first);
}

/**
 * The walk over the ground, set off from its stand: half-way to the first contact a lead-in, drawn as the passing
 * over the foot that stays, and both on the footprint that it leaves.
 */
export function ledIn(from: Walk): Walk {
  const over = from.travel === "travelling" ? from : travelling(from);
  const side = staysIn(over);
  const contact = over.panels.find(({ pose }) => pose === "contact");
  const stand = over.panels.find(({ pose }) => pose === "stand");
  if (contact === undefined || stand === undefined) throw new Error("no stand to set off from");
  const lead = {
    ...panelOf(over, `${side} passing`),
    id: "lead-in",
    pose: "lead-in" as const,
    frame: Math.round((stand.frame + contact.frame) / 2),
  };
  const panels = [stand, lead, ...over.panels.filter((panel) => panel !== stand)];
  const led = { ...over, panels };
  const onPrint = (id: string) => {
    const ball = limbJoint(side, "ball");
    return alongOf(led, contact.id, ball) - alongOf(led, id, ball);
  };
  const placed = led.panels.map((panel) =>
    panel.id === stand.id || panel.id === lead.id
      ? { ...panel, place: (panel.place ?? 0) + onPrint(panel.id) }
      : panel,
  );
  return { ...led, panels: placed };
}
