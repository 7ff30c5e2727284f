// Workbooks as LibreOffice Calc works them out: every formula anew, whatever value the file brought along.
import { spawnSync } from "node:child_process";
import { existsSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { strFromU8, strToU8, unzipSync, zipSync } from "fflate";

/** Always to work out formulas on loading, in a locale whose decimal mark and list separator are not those of the file. */
const SETTINGS = `<?xml version="1.0" encoding="UTF-8"?>
<oor:items xmlns:oor="http://openoffice.org/2001/registry" xmlns:xs="http://www.w3.org/2001/XMLSchema" xmlns:xsi="http://www.w3.org/2001/XMLSchema-instance">
<item oor:path="/org.openoffice.Office.Calc/Formula/Load"><prop oor:name="OOXMLRecalcMode" oor:op="fuse"><value>0</value></prop></item>
<item oor:path="/org.openoffice.Setup/L10N"><prop oor:name="ooSetupSystemLocale" oor:op="fuse"><value>de-DE</value></prop></item>
</oor:items>`;

/** What a cell shows: its number, its text, or its error such as "#N/A". */
export type Shown = number | string;

/** The cells of each sheet of a workbook: `Sum!B5`. */
export type Cells = ReadonlyMap<string, Shown>;

const plain = (text: string): string =>
  text
    .replace(/&lt;/gu, "<")
    .replace(/&gt;/gu, ">")
    .replace(/&quot;/gu, '"')
    .replace(/&apos;/gu, "'")
    .replace(/&amp;/gu, "&");

/** The values a workbook holds, as it was saved. */
export function cellsOf(bytes: Uint8Array): Cells {
  const files = unzipSync(bytes);
  const text = (path: string): string => strFromU8(files[path] ?? new Uint8Array());
  const strings = [...text("xl/sharedStrings.xml").matchAll(/<si>([\s\S]*?)<\/si>/gu)].map(([, one = ""]) =>
    plain([...one.matchAll(/<t[^>]*>([^<]*)<\/t>/gu)].map(([, part = ""]) => part).join("")),
  );
  const names = [...text("xl/workbook.xml").matchAll(/<sheet name="([^"]*)"/gu)].map(([, name = ""]) => plain(name));
  const cells = new Map<string, Shown>();
  for (const [at, name] of names.entries()) {
    const sheet = text(`xl/worksheets/sheet${String(at + 1)}.xml`);
    for (const [, attributes = "", inside = ""] of sheet.matchAll(/<c ([^>]*[^/])>([\s\S]*?)<\/c>/gu)) {
      const address = /\br="([A-Z]+\d+)"/u.exec(attributes)?.[1] ?? "";
      const type = /\bt="(\w+)"/u.exec(attributes)?.[1] ?? "n";
      const value = /<v>([^<]*)<\/v>/u.exec(inside)?.[1];
      const inline = /<t[^>]*>([^<]*)<\/t>/u.exec(inside)?.[1];
      if (value === undefined && inline === undefined) continue;
      const shown =
        type === "s"
          ? (strings[Number(value)] ?? "")
          : type === "n" || type === "b"
            ? Number(value)
            : plain(value ?? inline ?? "");
      cells.set(`${name}!${address}`, shown);
    }
  }
  return cells;
}

/** The workbook with other numbers, or other words, typed into some of its cells; all the rest as it was saved. */
export function typedInto(bytes: Uint8Array, entries: ReadonlyMap<string, Shown>): Uint8Array {
  const files = unzipSync(bytes);
  const names = [...strFromU8(files["xl/workbook.xml"] ?? new Uint8Array()).matchAll(/<sheet name="([^"]*)"/gu)];
  for (const [at, value] of entries) {
    const [name, address = ""] = at.split("!");
    const path = `xl/worksheets/sheet${String(names.findIndex(([, one]) => one === name) + 1)}.xml`;
    const before = strFromU8(files[path] ?? new Uint8Array());
    const after = before.replace(
      new RegExp(`<c r="${address}"( s="\\d+")[^>]*>(?:(?!</c>).)*</c>`, "u"),
      (_, style: string) =>
        typeof value === "number"
          ? `<c r="${address}"${style}><v>${String(value)}</v></c>`
          : `<c r="${address}"${style} t="inlineStr"><is><t>${value}</t></is></c>`,
    );
    if (after === before) throw new Error(`there is no cell ${at} to type into`);
    files[path] = strToU8(after);
  }
  return zipSync(files);
}

/** All the workbooks in one run of the program, each opened, worked out anew and saved. */
export function recalculated(soffice: string, books: readonly Uint8Array[]): readonly Cells[] {
  const folder = mkdtempSync(join(tmpdir(), "thrum-calc-"));
  try {
    mkdirSync(join(folder, "profile/user"), { recursive: true });
    writeFileSync(join(folder, "profile/user/registrymodifications.xcu"), SETTINGS);
    const paths = books.map((bytes, at) => {
      const path = join(folder, `${String(at)}.xlsx`);
      writeFileSync(path, bytes);
      return path;
    });
    const out = join(folder, "out");
    const profile = `-env:UserInstallation=file://${join(folder, "profile")}`;
    spawnSync(soffice, [profile, "--headless", "--convert-to", "xlsx", "--outdir", out, ...paths]);
    // The program ends with 0 even where it could not read a file.
    return books.map((_, at) => {
      const path = join(out, `${String(at)}.xlsx`);
      if (!existsSync(path)) throw new Error(`Calc could not open workbook ${String(at)}`);
      return cellsOf(readFileSync(path));
    });
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}
