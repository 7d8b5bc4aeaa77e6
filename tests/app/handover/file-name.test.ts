import { describe, expect, it } from "vitest";
import { fileName } from "../../../app/_handover/file-name";

describe("a file named after the title", () => {
  it.each([
    ["Brindle carries the parcels", "Brindle carries the parcels.png"],
    ["walk: take 2/3 <final>?", "walk take 2 3 final.png"],
    ["../../etc/passwd", "etc passwd.png"],
    ["Gänsemarsch, Einstellung 7", "Gänsemarsch, Einstellung 7.png"],
    ["歩き", "歩き.png"],
    ["tab\tand\nline", "tab and line.png"],
    ["right\u202Egnp.exe", "right gnp.exe.png"],
  ])("turns %j into %j", (title, name) => {
    expect(fileName(title, ".png")).toBe(name);
  });

  it.each(["", "   ", "...", "///"])("calls the nameless %j a walk", (title) => {
    expect(fileName(title, ".svg")).toBe("walk.svg");
  });

  it.each(["CON", "aux", "Lpt1"])("does not take %s, which Windows keeps for itself", (title) => {
    expect(fileName(title, ".png")).not.toMatch(/^(con|aux|lpt1)\.png$/i);
  });

  it("keeps letters whole when it cuts a long title", () => {
    const name = fileName("🚶".repeat(100), ".heelstrip.json");
    expect(name).toBe(`${"🚶".repeat(80)}.heelstrip.json`);
  });
});
