interface Output {
  readonly output_type: string;
  readonly text?: string;
  readonly data?: Readonly<Record<string, string>>;
}

export interface Notebook {
  readonly cells: readonly { readonly cell_type: string; readonly outputs?: readonly Output[] }[];
}

export function notebooks(): readonly (readonly [name: string, notebook: Notebook])[];
export function typeFaults(name: string, notebook: Notebook): string;
export function outputsOf(notebook: Notebook, jupyter: string): readonly (readonly Output[])[];
