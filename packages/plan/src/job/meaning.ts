/** By the key, or by the way to it below the group; `*` stands for a name or a number of the weaver's own. */
export type Meanings = Readonly<Record<string, string>>;
