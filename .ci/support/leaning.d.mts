export const BEGINS_LEANING: string;
export function beginsLeaning(title: string): boolean;
export function leans(title: string): boolean;
