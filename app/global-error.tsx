"use client";
import "./globals.css";
import { Notice } from "./_door/notice";
import { door } from "./_words";

/** The layout itself broke: this page brings its own. */
export default function EverythingBroke() {
  return (
    <html lang="en">
      <body>
        <Notice title={door.brokenTitle} body={door.brokenBody} />
      </body>
    </html>
  );
}
