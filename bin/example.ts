import { randomBytes } from "node:crypto";
import { capturedExample, newPanelId, sheetFileText } from "../lib/sheet";
import { parseOptions } from "./options";
import { type Io, Trouble } from "./trouble";
import { writeWhole } from "./write-whole";

const USAGE = "heelstrip example -o SHEET.json";

/** `heelstrip example`: writes a captured walk as a sheet file. Errors: Trouble */
export async function writeExample(args: readonly string[], io: Io): Promise<number> {
  const { values, positionals } = parseOptions(
    args,
    { output: { type: "string", short: "o" } },
    USAGE,
  );
  const { output } = values;
  if (output === undefined || positionals.length > 0) {
    throw new Trouble(`expected where to write; usage: ${USAGE}`);
  }
  const sheet = capturedExample(() => newPanelId(randomBytes));
  await writeWhole(output, sheetFileText(sheet));
  io.out(`${output}: ${sheet.head.title}, ${sheet.panels.length} panels`);
  return 0;
}
