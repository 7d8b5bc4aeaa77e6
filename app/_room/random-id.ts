import { newEntryId, newPanelId, newStrokeId } from "../../lib/sheet";

const chance = (bytes: number): Uint8Array => crypto.getRandomValues(new Uint8Array(bytes));

export const freshPanelId = (): string => newPanelId(chance);
export const freshStrokeId = (): string => newStrokeId(chance);
export const freshEntryId = (): string => newEntryId(chance);
