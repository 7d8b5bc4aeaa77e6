export { Button, type ButtonProps } from "./button";
export { Dialog, type DialogProps } from "./dialog";
export { readTheme, THEME_COOKIE, type Theme } from "./theme";
export { ThemeSwitch } from "./theme-switch";
