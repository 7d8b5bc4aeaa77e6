import { describe, expect, it } from "vitest";
import { isPassing, spokenChange, stateWords } from "../../../app/_people/ink-words";

describe("the words of the ink's state", () => {
  it("says saved only for saved", () => {
    const others = [
      ...(["opening", "saving", "not-saved", "kept", "unwritten", "unwritten-kept"] as const),
      ...(["offline", "refused", "shut", "in-hand", "in-hand-unsaved"] as const),
    ];
    expect(stateWords("saved", "draw").words).toBe("all ink saved");
    for (const state of others) {
      expect(stateWords(state, "draw").words).not.toMatch(/all ink saved/);
    }
  });

  it("asks to stay while ink is in this tab alone", () => {
    expect(stateWords("not-saved", "owner").words).toMatch(/stay on this page/);
  });

  it("tells who only looks that they only look, and still says when the line is down", () => {
    expect(stateWords("saved", "view").words).toBe("view only");
    expect(stateWords("saved", "critique").words).toMatch(/does not draw/);
    expect(stateWords("offline", "view").words).toMatch(/offline/);
  });
});

describe("the words of a door that is shut", () => {
  const causes = [
    ...([
      "revoked",
      "gone",
      "elsewhere",
      "newer-version",
      "misheard",
      "shut-out",
      "no-way-in",
    ] as const),
  ];

  it("are others for every cause, seen and heard", () => {
    const seen = causes.map((cause) => stateWords("shut", "draw", cause).words);
    expect(new Set(seen).size).toBe(causes.length);
    for (const [index, cause] of causes.entries()) {
      expect(spokenChange("saved", "shut", cause)).toContain(seen[index]);
    }
  });

  it("say first of all that not everything was saved, where it was not", () => {
    for (const cause of causes) {
      const { words, why } = stateWords("shut", "draw", cause, true);
      expect(words).toMatch(/^not all ink saved/);
      expect(words).toContain(stateWords("shut", "draw", cause).words);
      expect(why).toMatch(/saves it as a file/);
    }
    expect(stateWords("saved", "draw", null, true).words).toBe("all ink saved");
  });

  it("tell whose server is too old what to do", () => {
    expect(stateWords("shut", "owner", "newer-version").why).toMatch(
      /made by a newer Heelstrip; update this server to open it/,
    );
  });
});

describe("what is said aloud about the ink", () => {
  it("is silent while ink is drawn and saved", () => {
    expect(spokenChange("saved", "saving")).toBeNull();
    expect(spokenChange("saving", "saved")).toBeNull();
    expect(spokenChange("opening", "saved")).toBeNull();
  });

  it("speaks on the way into trouble and out of it", () => {
    expect(spokenChange("saving", "not-saved")).toMatch(/not saved/);
    expect(spokenChange("saved", "offline")).toMatch(/offline/);
    expect(spokenChange("offline", "saved")).toMatch(/back.*all ink saved/);
    expect(spokenChange("saving", "kept")).toMatch(/kept on this machine/);
    expect(spokenChange("saving", "unwritten")).toMatch(/not saved/);
    expect(spokenChange("saving", "unwritten-kept")).toMatch(/the server cannot write/);
    expect(spokenChange("unwritten", "saved")).toMatch(/writes again.*all ink saved/);
  });

  it("takes a state on the way for no end of what was told before", () => {
    for (const state of ["opening", "saving", "in-hand", "in-hand-unsaved"] as const) {
      expect(isPassing(state)).toBe(true);
    }
    for (const state of ["saved", "kept", "not-saved", "offline", "shut"] as const) {
      expect(isPassing(state)).toBe(false);
    }
  });

  it("does not call the line back before all is saved", () => {
    expect(spokenChange("not-saved", "saving")).toBeNull();
    expect(spokenChange("offline", "opening")).toBeNull();
  });
});
