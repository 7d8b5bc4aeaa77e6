/** The id of a panel's group of remarks in the margin, to find the way there. */
export const groupId = (panel: string): string => `remarks-${panel}`;
