import { spawnSync } from "node:child_process";
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { lockFolder } from "../../../server/store/lock-file";
import { temporaryFolder } from "../../support/hub-under-test";

describe("the lock of a data folder", () => {
  let folder: ReturnType<typeof temporaryFolder>;
  const file = () => join(folder.path, "heelstrip.lock");
  beforeEach(() => {
    folder = temporaryFolder();
  });
  afterEach(() => folder.remove());

  it("is held by one at a time", () => {
    const lock = lockFolder(folder.path);
    expect(() => lockFolder(folder.path)).toThrow(`in use by process ${process.pid}`);
    lock.release();
    lockFolder(folder.path).release();
  });

  it("is taken over from a process that is gone", () => {
    writeFileSync(file(), "process 4194305 started 12345\n"); // above the largest number given out
    const lock = lockFolder(folder.path);
    expect(readFileSync(file(), "utf8")).toContain(`process ${process.pid}`);
    lock.release();
  });

  it("is taken over from a process that is gone where no start is known", () => {
    const { pid } = spawnSync(process.execPath, ["--version"]);
    writeFileSync(file(), `process ${pid} started at no known time\n`);
    lockFolder(folder.path).release();
  });

  it("is taken over where the number now belongs to another process", () => {
    writeFileSync(file(), `process ${process.pid} started 1\n`);
    lockFolder(folder.path).release();
  });

  it("is not released by one who does not hold it any more", () => {
    const lock = lockFolder(folder.path);
    writeFileSync(file(), "process 1 started 1\n");
    lock.release();
    expect(readFileSync(file(), "utf8")).toBe("process 1 started 1\n");
  });
});
