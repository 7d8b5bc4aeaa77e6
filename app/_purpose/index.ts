export { KeepButton } from "./keep-button";
export { keptAt } from "./kept-at";
export { KeptBadge } from "./kept-badge";
export { KeptLayer } from "./kept-layer";
export { KeptList } from "./kept-list";
export { KeptSign } from "./kept-sign";
