export { PictureGroup } from "./picture-group";
export { PictureJobLine } from "./picture-job-line";
export { PictureMover } from "./picture-mover";
export { ReferenceLayer } from "./reference-layer";
export { useIncomingPictures } from "./use-incoming-pictures";
