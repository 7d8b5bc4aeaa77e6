import type { Metadata, Viewport } from "next";
import localFont from "next/font/local";
import { cookies } from "next/headers";
import type { ReactNode } from "react";
import { readTheme, THEME_COOKIE } from "./_controls/theme";
import "./globals.css";

// Each request carries its own nonce; a page made beforehand would not hydrate under it.
export const dynamic = "force-dynamic";

export const metadata: Metadata = {
  title: { default: "Heelstrip", template: "%s · Heelstrip" },
  description: "Plan a character's walk together, pose by pose, and see what will not hold up.",
};

export const viewport: Viewport = { width: "device-width", initialScale: 1 };

const typeface = localFont({
  src: [
    {
      path: "../node_modules/@expo-google-fonts/atkinson-hyperlegible-next/400Regular/AtkinsonHyperlegibleNext_400Regular.ttf",
      weight: "400",
    },
    {
      path: "../node_modules/@expo-google-fonts/atkinson-hyperlegible-next/600SemiBold/AtkinsonHyperlegibleNext_600SemiBold.ttf",
      weight: "600",
    },
    {
      path: "../node_modules/@expo-google-fonts/atkinson-hyperlegible-next/700Bold/AtkinsonHyperlegibleNext_700Bold.ttf",
      weight: "700",
    },
  ],
  display: "swap",
  variable: "--typeface",
});

export default async function RootLayout({ children }: { children: ReactNode }) {
  const theme = readTheme((await cookies()).get(THEME_COOKIE)?.value);
  return (
    <html lang="en" className={typeface.variable} data-theme={theme ?? undefined}>
      <body>{children}</body>
    </html>
  );
}
