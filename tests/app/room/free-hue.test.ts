import { describe, expect, it } from "vitest";
import { freeHue } from "../../../app/_room/free-hue";
import { HUES } from "../../../app/_room/me";

const [first, second, third] = HUES;

describe("a newcomer's hue", () => {
  it("stays while nobody has it", () => {
    expect(freeHue({ client: 9, hue: first }, [{ client: 4, hue: second }], true)).toBe(first);
  });

  it("gives way to all who are there when they arrive, and later by client id", () => {
    const others = [
      { client: 4, hue: first },
      { client: 5, hue: second },
    ];
    expect(freeHue({ client: 1, hue: first }, others, true)).toBe(third);
    expect(freeHue({ client: 9, hue: first }, others, false)).toBe(third);
    expect(freeHue({ client: 1, hue: first }, others, false)).toBe(first);
  });

  it("is shared when there are more people than hues", () => {
    const others = HUES.map((hue, client) => ({ client, hue }));
    expect(freeHue({ client: 99, hue: second }, others, true)).toBe(second);
  });
});
