import { describe, expect, it } from "vitest";
import { tellApart } from "../../../app/_room/tell-apart";

const here = (...people: (readonly [client: number, name: string])[]) =>
  tellApart(people.map(([client, name]) => ({ client, name })));

describe("what people are called", () => {
  it("is their name, while nobody shares it", () => {
    expect([...here([9, "Ann"], [4, "Ben"]).values()]).toEqual(["Ann", "Ben"]);
  });

  it("has a number where a name is shared, by client id and not by who looks", () => {
    expect(here([9, "Someone"], [4, "Someone"], [6, "Ben"])).toEqual(
      new Map([
        [9, "Someone 2"],
        [4, "Someone 1"],
        [6, "Ben"],
      ]),
    );
    expect(here([4, "Someone"], [9, "Someone"]).get(9)).toBe("Someone 2");
  });

  it("takes names that read the same for the same", () => {
    expect([...here([1, "Ann"], [2, "ann "]).values()]).toEqual(["Ann 1", "ann 2"]);
  });
});
