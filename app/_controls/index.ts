export { Button, type ButtonProps } from "./button";
export { Choice, type ChoiceProps } from "./choice";
export { Dialog, type DialogProps } from "./dialog";
export { Row, type RowProps } from "./row";
export { readTheme, THEME_COOKIE, type Theme } from "./theme";
export { ThemeSwitch } from "./theme-switch";
