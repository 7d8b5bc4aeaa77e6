"use client";
import "./globals.css";
import { Button } from "./_controls";
import { readTheme, THEME_COOKIE } from "./_controls/theme";
import { Notice } from "./_door/notice";
import { door } from "./_words";

/** The layout itself broke: this page brings its own, with the light that was chosen. */
export default function EverythingBroke() {
  return (
    <html lang="en" data-theme={chosenTheme()}>
      <body>
        <title>{door.brokenTitle}</title>
        <Notice title={door.brokenTitle} body={door.brokenBody}>
          <Button look="main" onClick={() => location.reload()}>
            {door.reload}
          </Button>
        </Notice>
      </body>
    </html>
  );
}

function chosenTheme() {
  if (typeof document === "undefined") return undefined;
  const kept = document.cookie.split("; ").find((pair) => pair.startsWith(`${THEME_COOKIE}=`));
  return readTheme(kept?.slice(THEME_COOKIE.length + 1)) ?? undefined;
}
