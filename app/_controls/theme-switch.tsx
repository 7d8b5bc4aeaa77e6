"use client";
import { useEffect, useState } from "react";
import { Button } from "./button";
import { readTheme, THEME_COOKIE, type Theme } from "./theme";

const NEXT: Record<"system" | Theme, Theme | null> = { system: "day", day: "dim", dim: null };
const YEAR_S = 365 * 24 * 3600;

export interface ThemeSwitchProps {
  readonly words: Readonly<Record<"system" | Theme, string>>;
}

/** Goes from the system's light to day to dim and round again; the choice is kept in a cookie. */
export function ThemeSwitch({ words }: ThemeSwitchProps) {
  const [theme, setTheme] = useState<Theme | null>(null);
  useEffect(() => setTheme(readTheme(document.documentElement.dataset.theme)), []);
  const turn = () => {
    const next = NEXT[theme ?? "system"];
    setTheme(next);
    if (next === null) delete document.documentElement.dataset.theme;
    else document.documentElement.dataset.theme = next;
    const kept = next === null ? "; max-age=0" : `${next}; max-age=${YEAR_S}`;
    document.cookie = `${THEME_COOKIE}=${kept}; path=/; samesite=lax`;
  };
  return (
    <Button small onClick={turn}>
      {words[theme ?? "system"]}
    </Button>
  );
}
