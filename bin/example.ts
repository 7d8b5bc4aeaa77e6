import { randomBytes } from "node:crypto";
import {
  brindleExample,
  capturedExample,
  type HandedSheet,
  newPanelId,
  sheetFileText,
} from "../lib/sheet";
import { EXAMPLES, type ExampleName } from "../shared/api-answers";
import { counted } from "./counted";
import { onOneLine } from "./on-one-line";
import { parseOptions } from "./options";
import { type Io, Trouble } from "./trouble";
import { writeWhole } from "./write-whole";

const USAGE = `heelstrip example [--name ${EXAMPLES.join("|")}] -o SHEET.json`;

const MAKERS: Readonly<Record<ExampleName, (newId: () => string) => HandedSheet>> = {
  "captured-walk": capturedExample,
  brindle: brindleExample,
};

/** `heelstrip example`: writes a captured walk, or the drawn demo, as a sheet file. Errors: Trouble */
export async function writeExample(args: readonly string[], io: Io): Promise<number> {
  const { values, positionals } = parseOptions(
    args,
    { output: { type: "string", short: "o" }, name: { type: "string", default: EXAMPLES[0] } },
    USAGE,
  );
  const { output } = values;
  if (output === undefined || positionals.length > 0) {
    throw new Trouble(`expected where to write; usage: ${USAGE}`);
  }
  const sheet = MAKERS[nameOf(values.name)](() => newPanelId(randomBytes));
  await writeWhole(output, sheetFileText(sheet));
  io.out(onOneLine(`${output}: ${sheet.head.title}, ${counted(sheet.panels.length, "panel")}`));
  return 0;
}

function nameOf(asked: string): ExampleName {
  const found = EXAMPLES.find((name) => name === asked);
  if (found !== undefined) return found;
  throw new Trouble(`expected --name ${EXAMPLES.join(" or ")}, got "${asked}"`);
}
